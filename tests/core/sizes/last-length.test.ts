import { describe, expect, it } from 'vitest';
import { lastLength } from '../../../src/core/sizes/last-length';

describe('lastLength', () => {
  it('is two thirds of a centimetre a continental size (Wikipedia, "Shoe size")', () => {
    for (const [size, mm] of [
      [16, 106.67],
      [24, 160],
      [38, 253.33],
      [48, 320],
    ] as const) {
      expect(lastLength(size, 'EU')).toBeCloseTo(mm, 2);
    }
  });

  it('is 4 in at child 0 and 279.4 mm at adult 8 (Wikipedia, "Shoe size"; A Manual of Shoemaking, 1912: "nearly eleven inches")', () => {
    expect(lastLength(0, 'UKCHILD')).toBeCloseTo(101.6, 9);
    expect(lastLength(8, 'UK')).toBeCloseTo(279.4, 9);
  });

  it('takes another toe allowance, also none and a negative one', () => {
    expect(lastLength(270, 'MONDO', 15)).toBe(285);
    expect(lastLength(270, 'MONDO', 0)).toBe(270);
    expect(lastLength(270, 'MONDO', -2)).toBe(268);
  });
});
