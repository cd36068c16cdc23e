import { describe, expect, it } from 'vitest';
import { Problem } from '../../../src/core/problem';
import { convertSize } from '../../../src/core/sizes/convert';
import { footLength, sizeOfFoot } from '../../../src/core/sizes/foot-length';
import { SIZE_SYSTEMS } from '../../../src/core/sizes/systems';

describe('footLength', () => {
  it('is 262.47 mm for UK 8 and 228.6 mm for UK 4 (ISO/TS 19407, values as quoted second-hand)', () => {
    expect(footLength(8, 'UK')).toBeCloseTo(262.47, 2);
    expect(footLength(4, 'UK')).toBeCloseTo(228.6, 2);
  });

  it('is 233.3 mm for EU 37 (Wikipedia, "Shoe size")', () => {
    expect(footLength(37, 'EU')).toBeCloseTo(233.33, 2);
  });

  it('runs on from child 13 to adult 1 (English scale, common practice)', () => {
    expect(footLength(14, 'UKCHILD')).toBeCloseTo(footLength(1, 'UK'), 9);
  });

  it('takes half sizes, sizes below the scale and the ends of what feet can be', () => {
    expect(footLength(0, 'UK')).toBeCloseTo((23 * 25.4) / 3, 9);
    expect(footLength(-1, 'UK')).toBeLessThan(footLength(0, 'UK'));
    expect(footLength(60, 'MONDO')).toBe(60);
    expect(footLength(400, 'MONDO')).toBe(400);
  });

  it('refuses a size that no foot has and says from where to where the scale runs', () => {
    for (const size of [59.9, 400.1, 0, -5, 1e9]) {
      expect(() => footLength(size, 'MONDO')).toThrow('is no size of MONDO, which runs from about 90 to 330');
    }
    expect(() => footLength(8, 'EU')).toThrow(
      'size: 8 is no size of EU, which runs from about 16 to 52; UK 8 is about EU 41.5',
    );
  });

  it('tells what a size of another system comes to, by the rule of SIZECONVERT, and no size below nought (derived)', () => {
    expect(() => footLength(39, 'UK')).toThrow(
      '39 is no size of UK, which runs from about 0 to 16; EU 39 is about UK 6',
    );
    expect(convertSize(39, 'EU', 'UK', 0.5)).toBe(6);
    // 265 is a foot in mm, and no EU size.
    expect(() => footLength(265, 'UK')).toThrow(`; MONDO 265 is about UK ${convertSize(265, 'MONDO', 'UK', 0.5)}`);
    expect(() => footLength(1e6, 'UK')).toThrow(/to 16$/);
  });

  it('names the argument that it is told', () => {
    let caught: unknown;
    try {
      footLength(0, 'EU', 'from_size');
    } catch (error) {
      caught = error;
    }
    expect(caught).toBeInstanceOf(Problem);
    expect((caught as Problem).place).toEqual({ argument: 'from_size' });
  });
});

describe('sizeOfFoot', () => {
  it('is the inverse of footLength in every system (derived)', () => {
    for (const system of SIZE_SYSTEMS) {
      for (const foot of [100, 187.3, 262.5, 300]) {
        expect(footLength(sizeOfFoot(foot, system), system)).toBeCloseTo(foot, 9);
      }
    }
  });
});
