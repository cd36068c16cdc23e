import { describe, expect, it } from 'vitest';
import { order } from '../../../src/core/plan/order';
import { Plan } from '../../../src/core/plan/plan';
import { CORK_6, inputOf, type Named, USUAL_TABLES } from '../samples';

const cork = (named: Named) =>
  USUAL_TABLES.stock.map((one) => (one.Stock === 'Cork 6' ? { ...CORK_6, ...named } : one));
const line = (named: Named) => {
  const { stocks } = new Plan(inputOf({ stock: cork(named) })).cutting;
  return order(stocks).find(({ cutting }) => cutting.stock.code === 'Cork 6');
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
