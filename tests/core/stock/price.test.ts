import { describe, expect, it } from 'vitest';
import { priceOfSheet, pricePerArea } from '../../../src/core/stock/price';
import { type Named, stockOf } from '../samples';

describe('priceOfSheet', () => {
  const sheet = (named: Named) => priceOfSheet(stockOf({ Price: 4, ...named }));

  it('of a sheet of 1000 × 500 is 0.5 m², 5.382 ft², and at 3 mm of 250 kg/m³ 0.375 kg (derived)', () => {
    expect(sheet({})).toBe(4);
    expect(sheet({ 'Sold by': 'm²' })).toBeCloseTo(2, 9);
    expect(sheet({ 'Sold by': 'ft²' })).toBeCloseTo(4 * 5.38196, 4);
    expect(sheet({ 'Sold by': 'kg', Thick: 3 })).toBeCloseTo(4 * 0.375, 9);
  });

  it('of a bend of 10 ft² is ten times its price (derived: 1 ft² = 9.2903 dm²)', () => {
    expect(sheet({ 'Sold by': 'ft²', Length: 1200, Width: 774.192 })).toBeCloseTo(40, 5);
  });

  it('needs the density of what is sold by kg', () => {
    expect(() => sheet({ 'Sold by': 'kg', Density: '' })).toThrow(
      'what is sold by kg needs its density; enter it in kg/m³',
    );
  });
});

describe('pricePerArea', () => {
  const perArea = (named: Named) => pricePerArea(stockOf({ Price: 4, ...named }));

  it('is money for a m² whatever it is sold by: a sheet of 1000 × 500 is 0.5 m² (derived)', () => {
    expect(perArea({})).toBeCloseTo(8, 9);
    expect(perArea({ 'Sold by': 'm²' })).toBeCloseTo(4, 9);
    expect(perArea({ 'Sold by': 'ft²' })).toBeCloseTo(4 / 0.09290304, 9);
    // 6 mm of 250 kg/m³ weigh 1.5 kg a m².
    expect(perArea({ 'Sold by': 'kg' })).toBeCloseTo(6, 9);
  });

  it('is dearer where less of a sheet can be used', () => {
    expect(perArea({ 'Usable share': 0.8 })).toBeCloseTo(10, 9);
  });

  it('is unknown without a price, and without the density of what is sold by kg', () => {
    expect(perArea({ Price: '' })).toBeUndefined();
    expect(perArea({ 'Sold by': 'kg', Density: '' })).toBeUndefined();
  });
});
