import { describe, expect, it } from 'vitest';
import { readAdhesive, readWeight } from '../../src/functions/bench-arguments';

describe('an area on a sheet that is made by hand', () => {
  it('is not taken for mm² where it is likelier the cm² of Pieces', () => {
    for (const few of [180, 499.9, '42,5', 1])
      expect(() => readAdhesive(few, 2, 3.5), String(few)).toThrow(
        /smaller than any piece; give mm².* such as ".* cm2"/,
      );
    expect(() => readWeight(180, 6, 250)).toThrow('180 mm² is smaller than any piece');
  });

  it('is what its unit says, however small', () => {
    expect(readAdhesive('180 cm2', 2, 3.5)[0]).toBeCloseTo(18_000, 9);
    expect(readWeight('400 mm2', 6, 250)[0]).toBe(400);
  });

  it('is taken as it is from the size of a small piece on, and where there is none', () => {
    expect(readWeight(500, 6, 250)[0]).toBe(500);
    expect(readAdhesive(40_000, 2, 3.5)[0]).toBe(40_000);
    expect(readAdhesive(0, 2, 3.5)[0]).toBe(0);
  });
});
