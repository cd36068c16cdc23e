import { describe, expect, it } from 'vitest';
import { convertUnit, unitNames } from '../../src/core/units';

/** Every unit in the unit used inside, with where it is fixed. */
const FIXED: Readonly<Record<string, readonly [size: number, inside: string, source: string]>> = {
  mm: [1, 'mm', 'SI'],
  cm: [10, 'mm', 'SI'],
  m: [1000, 'mm', 'SI'],
  in: [25.4, 'mm', 'international yard and pound, 1959: 1 yd = 0.9144 m'],
  ft: [304.8, 'mm', 'international yard and pound, 1959: a third of 0.9144 m'],
  iron: [0.5291666666666667, 'mm', 'US Federal Test Method Standard 311, 3.2.114: 1/48 in'],
  ounce: [0.396875, 'mm', 'common practice: 1/64 in'],
  mm2: [1, 'mm2', 'SI'],
  cm2: [100, 'mm2', 'SI'],
  dm2: [10_000, 'mm2', 'SI'],
  m2: [1_000_000, 'mm2', 'SI'],
  in2: [645.16, 'mm2', 'NIST Special Publication 811, appendix B'],
  ft2: [92_903.04, 'mm2', 'NIST Special Publication 811, appendix B'],
  g: [1, 'g', 'SI'],
  kg: [1000, 'g', 'SI'],
  oz: [28.349523125, 'g', 'NIST Special Publication 811, appendix B: a sixteenth of the pound'],
  lb: [453.59237, 'g', 'international yard and pound, 1959'],
  ml: [1, 'ml', 'SI'],
  l: [1000, 'ml', 'SI'],
  usgal: [3785.411784, 'ml', 'NIST Special Publication 811, appendix B: 231 cubic inches'],
  deg: [1, 'deg', 'SI'],
  rad: [57.29577951308232, 'deg', 'SI: 180 / π'],
  min: [1, 'min', 'SI'],
  h: [60, 'min', 'SI'],
};

describe('convertUnit', () => {
  it.each(Object.entries(FIXED).map(([name, fixed]) => [name, ...fixed] as const))(
    'has 1 %s at %d %s (%s)',
    (name, size, inside) => {
      expect(convertUnit(1, name, inside) / size).toBeCloseTo(1, 14);
      expect(convertUnit(size, inside, name)).toBeCloseTo(1, 14);
    },
  );

  it('knows just the units whose size is fixed above', () => {
    expect([...unitNames].sort()).toEqual(Object.keys(FIXED).sort());
  });

  it('has 48 irons to the inch: 12 iron are 6.35 mm and 16 ounces (US Federal Test Method Standard 311, 3.2.114)', () => {
    expect(convertUnit(12, 'iron', 'mm')).toBeCloseTo(6.35, 12);
    expect(convertUnit(12, 'iron', 'ounce')).toBeCloseTo(16, 12);
  });

  it('has 4 mm at 7.56 iron and 10.08 ounces, 8 ounces at 3.175 mm (derived)', () => {
    expect(convertUnit(4, 'mm', 'iron')).toBeCloseTo(7.56, 2);
    expect(convertUnit(4, 'mm', 'ounce')).toBeCloseTo(10.08, 2);
    expect(convertUnit(8, 'ounce', 'mm')).toBeCloseTo(3.175, 12);
  });

  it('has a square foot at 9.2903 dm² (derived)', () => {
    expect(convertUnit(1, 'ft2', 'dm2')).toBeCloseTo(9.2903, 4);
  });

  it('knows units whatever their capitals and whichever way they are squared', () => {
    expect(convertUnit(1, ' FT² ', 'in2')).toBeCloseTo(144, 9);
    expect(convertUnit(1, 'M', 'mm')).toBe(1000);
  });

  it('converts nothing, less than nothing and any number of digits', () => {
    expect(convertUnit(0, 'kg', 'g')).toBe(0);
    expect(convertUnit(-3, 'h', 'min')).toBe(-180);
    expect(convertUnit(180, 'deg', 'rad')).toBeCloseTo(Math.PI, 12);
  });

  it('names an unknown unit, its argument and the units there are', () => {
    expect(() => convertUnit(1, 'ell', 'mm')).toThrow(`from_unit: "ell" is not a unit; use one of mm, cm,`);
    expect(() => convertUnit(1, 'mm', '')).toThrow('to_unit: "" is not a unit');
    expect(() => convertUnit(1, 'constructor', 'mm')).toThrow('is not a unit');
  });

  it('refuses two units of different kinds: an ounce of leather is a thickness, oz a mass', () => {
    expect(() => convertUnit(1, 'ounce', 'oz')).toThrow('to_unit: oz measures mass, ounce measures length');
  });

  it('refuses units of every two kinds, and takes every two of one kind, there and back', () => {
    let [refused, taken] = [0, 0];
    for (const a of unitNames) {
      for (const b of unitNames) {
        if (FIXED[a]?.[1] === FIXED[b]?.[1]) {
          taken += 1;
          expect(convertUnit(convertUnit(7.3, a, b), b, a)).toBeCloseTo(7.3, 9);
        } else {
          refused += 1;
          expect(() => convertUnit(1, a, b)).toThrow(new RegExp(`^to_unit: ${b} measures \\w+, ${a} measures \\w+$`));
        }
      }
    }
    // 7 lengths, 6 areas, 4 masses, 3 volumes, 2 angles and 2 times.
    expect([taken, refused]).toEqual([49 + 36 + 16 + 9 + 4 + 4, 24 * 24 - 118]);
  });
});
