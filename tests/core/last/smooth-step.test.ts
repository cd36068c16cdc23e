import { describe, expect, it } from 'vitest';
import { smoothStep } from '../../../src/core/last/smooth-step';

describe('smoothStep', () => {
  it('goes from 0 to 1, half way at a half, level at both ends and beyond', () => {
    expect([-3, 0, 0.5, 1, 7].map(smoothStep)).toEqual([0, 0, 0.5, 1, 1].map((y) => expect.closeTo(y, 12)));
    expect(smoothStep(0.001)).toBeLessThan(1e-5);
    expect(1 - smoothStep(0.999)).toBeLessThan(1e-5);
  });
});
