import { describe, expect, it } from 'vitest';
import { Plan } from '../../src/core/plan/plan';
import { makeOrBuySection } from '../../src/taskpane/make-or-buy-section';
import { inputOf, RATES, STOCKS, USUAL_TABLES } from '../core/samples';
import { words } from './words-of';

/** What is said of the usual style with a price of bought units. */
function said(offer: object, priced: boolean): string {
  const stock = STOCKS.map((one) => (priced ? { ...one, Price: 10 } : { ...one, Price: '' }));
  const { cutting, orders, costs, checks } = new Plan(
    inputOf({ stock, rates: RATES, styles: [{ ...USUAL_TABLES.styles[0], ...offer }] }),
  );
  const results = { cuttings: cutting.stocks, orders, costs, checks };
  return words(makeOrBuySection({ results, money: '€' }, () => undefined)).replace(/\s+/g, ' ');
}

describe('whether to build or buy', () => {
  it('is told a style, with the way to Cost, where a price of bought units is given', () => {
    expect(said({ 'Bought price': 1 }, true)).toMatch(/buying is cheaper by \S+ € a pair\..*Show in Cost/);
    expect(said({}, true)).toBe('');
  });

  it('is left open where a price of what is built from is missing', () => {
    expect(said({ 'Bought price': 1 }, false)).toContain('what it costs built lacks what Checks names');
  });
});
