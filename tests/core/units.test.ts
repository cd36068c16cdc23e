import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { convertUnit, unitNames } from '../../src/core/units';

describe('convertUnit', () => {
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

  it('comes back to the same value through any unit of the kind', () => {
    const unit = fc.constantFrom(...unitNames);
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), unit, unit, (value, a, b) => {
        let there: number;
        try {
          there = convertUnit(value, a, b);
        } catch {
          return;
        }
        expect(convertUnit(there, b, a)).toBeCloseTo(value, 6);
      }),
      { seed: 3 },
    );
  });
});
