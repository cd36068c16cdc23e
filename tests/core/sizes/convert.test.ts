import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { convertSize, markedStep } from '../../../src/core/sizes/convert';
import { SIZE_SYSTEMS } from '../../../src/core/sizes/systems';
import { evenly } from '../../evenly';

describe('convertSize', () => {
  it('is EU 42.5, UK 8.89 and US men 9.89 for a foot of 270 mm (ISO/TS 19407, values as quoted second-hand)', () => {
    expect(convertSize(270, 'MONDO', 'EU')).toBeCloseTo(42.5, 9);
    expect(convertSize(270, 'MONDO', 'UK')).toBeCloseTo(8.89, 2);
    expect(convertSize(270, 'MONDO', 'USMEN')).toBeCloseTo(9.89, 2);
  });

  it('rounds to halves, wholes or millimetres, halves up', () => {
    expect(convertSize(8, 'UK', 'EU', 0.5)).toBe(41.5);
    expect(convertSize(8, 'UK', 'EU', 1)).toBe(41);
    expect(convertSize(270, 'MONDO', 'EU', 1)).toBe(43);
    expect(convertSize(42, 'EU', 'MONDO', 5)).toBe(265);
  });

  it('rounds up what is halfway in decimals though binary has it a hair below: UK 8.25 is 8.249999999999996 there', () => {
    expect(convertSize(8.25, 'UK', 'UK', 0.5)).toBe(8.5);
    expect(convertSize(8.25, 'UK', 'USMEN', 0.5)).toBe(9.5);
  });

  it('comes back to the same size by way of any other system (derived)', () => {
    const system = fc.constantFrom(...SIZE_SYSTEMS);
    fc.assert(
      fc.property(evenly(100, 330), system, system, (foot, a, b) => {
        const size = convertSize(foot, 'MONDO', a);
        expect(convertSize(convertSize(size, a, b), b, a)).toBeCloseTo(size, 9);
      }),
      { seed: 1 },
    );
  });

  it('grows with the size', () => {
    for (const to of SIZE_SYSTEMS) expect(convertSize(39, 'EU', to)).toBeGreaterThan(convertSize(38, 'EU', to));
  });

  it('refuses what is no size', () => {
    expect(() => convertSize(-1, 'EU', 'UK')).toThrow('is no size of EU');
  });
});

describe('markedStep', () => {
  it('is half a size, 5 mm or half a centimetre (ISO 9407:2019; JIS S 5037; common practice)', () => {
    expect((['EU', 'UK', 'MONDO', 'JP', 'CN'] as const).map(markedStep)).toEqual([0.5, 0.5, 5, 0.5, 5]);
  });
});
