import { describe, expect, it } from 'vitest';
import { readAdhesive, readWeight } from '../../src/functions/bench-arguments';

describe('an area on a sheet that is made by hand', () => {
  it('is not taken for mm² where it is likelier the cm² of Pieces', () => {
    for (const few of [180, 499.9, '42,5', 1])
      expect(() => readAdhesive(few, 2, 3.5), String(few)).toThrow(
        /give the unit too: ".* cm2", or ".* mm2" if it is so small/,
      );
    expect(() => readWeight(180, 6, 250)).toThrow(
      'area: 180 mm² is seldom a face, and 180 cm² often; give the unit too: "180 cm2", or "180 mm2" if it is so small',
    );
  });

  it('is what its unit says, however small', () => {
    expect(readAdhesive('180 cm2', 2, 3.5)[0]).toBeCloseTo(18_000, 9);
    expect(readWeight('400 mm2', 6, 250)[0]).toBe(400);
    // The base of a slender heel that was tried, 0.88 cm² (review, doi 10.1155/2021/6618581, table 4).
    expect(readAdhesive('88 mm²', 1, 3.5)[0]).toBe(88);
  });

  it('is taken as it is from the size of a small piece on, and where there is none', () => {
    expect(readWeight(500, 6, 250)[0]).toBe(500);
    expect(readAdhesive(40_000, 2, 3.5)[0]).toBe(40_000);
    expect(readAdhesive(0, 2, 3.5)[0]).toBe(0);
  });
});

describe('a density', () => {
  it('is asked for again where it is in g/cm³', () => {
    expect(() => readWeight(18_000, 6, 0.23)).toThrow(
      'density: no sheet is as light as 0.23 kg/m³; in g/cm³, take it times 1000: 230',
    );
    expect(() => readWeight(18_000, 6, 0)).toThrow(/density/);
  });

  it('may be that of the lightest foam, 15 kg/m³ (common practice), and of lead, 11,340', () => {
    expect(readWeight(18_000, 6, 15)[2]).toBe(15);
    expect(readWeight(18_000, 6, 11_340)[2]).toBe(11_340);
  });
});
