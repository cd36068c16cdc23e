import { describe, expect, it } from 'vitest';
import { heelHeight, platform } from '../../../src/core/bottom/heel-height';

describe('heelHeight', () => {
  it('is last, platform and outsole together: stacks of 57 and 12 differ by a last of 45 (derived)', () => {
    expect(heelHeight(45, 12)).toBe(57);
    expect(heelHeight(45, 8)).toBe(53);
    expect(heelHeight(45, 8, 4)).toBe(57);
  });
});

describe('platform', () => {
  it('of a last of 40 on an outsole of 4 is 26 for a finished heel of 70 (derived)', () => {
    expect(platform(70, 40, 4)).toBe(26);
    expect(platform(44, 40, 4)).toBe(0);
  });

  it('refuses a heel that last and outsole pass already', () => {
    expect(() => platform(43, 40, 4)).toThrow('stand 44 mm high; ask for that or more');
  });
});
