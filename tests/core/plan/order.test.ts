import { describe, expect, it } from 'vitest';
import { order, priceOfSheet } from '../../../src/core/plan/order';
import { Plan } from '../../../src/core/plan/plan';
import { CORK_7, inputOf, type Named, stockOf, USUAL_TABLES } from '../samples';

const cork = (named: Named) =>
  USUAL_TABLES.stock.map((one) => (one.Stock === 'Cork 7' ? { ...CORK_7, ...named } : one));
const line = (named: Named) => {
  const { stocks } = new Plan(inputOf({ stock: cork(named) })).cutting;
  return order(stocks).find(({ cutting }) => cutting.stock.code === 'Cork 7');
};
const need = line({})?.need ?? 0;

describe('order', () => {
  it('buys what is lacking, in whole packs and no fewer than the least that is sold', () => {
    expect(need).toBeGreaterThan(1);
    expect(line({})?.buy).toBe(need);
    expect(line({ 'On hand': need })?.buy).toBe(0);
    expect(line({ 'On hand': need - 1 })?.buy).toBe(1);
    expect(line({ Pack: 5, 'On hand': need - 1 })?.buy).toBe(5);
    expect(line({ Pack: 5, Minimum: 12 })?.buy).toBe(15);
    expect(line({ Minimum: 12, 'On hand': need })?.buy).toBe(0);
  });

  it('asks for what is bought, not for what is on the shelf', () => {
    expect(line({ Price: 12, 'On hand': 1 })?.toPay).toBe(12 * (need - 1));
    expect(line({})?.toPay).toBeUndefined();
  });

  it('says what a stock is for, once', () => {
    expect(line({})?.uses).toEqual([{ style: 'Betony', part: 'lift' }]);
  });
});

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
