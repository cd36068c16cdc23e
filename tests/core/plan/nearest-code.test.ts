import { describe, expect, it } from 'vitest';
import { nearestCode } from '../../../src/core/plan/nearest-code';

const CODES = ['Cork 6', 'Cork 4', 'Rubber 4', 'Kid 1', 'Bend 4'];

describe('nearestCode', () => {
  it('is the code that differs by blanks, signs or a letter or two', () => {
    expect(nearestCode('cork6', CODES)).toBe('Cork 6');
    expect(nearestCode('Cork-4', CODES)).toBe('Cork 4');
    expect(nearestCode('Ruber 4', CODES)).toBe('Rubber 4');
    expect(nearestCode('Kit 1', CODES)).toBe('Kid 1');
  });

  it('is none of another thickness, and none that is far off', () => {
    expect(nearestCode('Cork 9', CODES)).toBeUndefined();
    expect(nearestCode('Bend 5', CODES)).toBeUndefined();
    expect(nearestCode('Leather', CODES)).toBeUndefined();
    expect(nearestCode('', CODES)).toBeUndefined();
  });
});
