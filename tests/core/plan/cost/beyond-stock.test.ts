import { describe, expect, it } from 'vitest';
import { beyondStock } from '../../../../src/core/plan/cost/beyond-stock';
import { Plan } from '../../../../src/core/plan/plan';
import { inputOf, type Named, RATES, STOCKS, USUAL_TABLES } from '../../samples';

describe('what a pair costs beyond its stock', () => {
  const input = (rates: readonly Named[]) =>
    inputOf({
      rates,
      stock: STOCKS.map((one) => ({ ...one, Price: 10 })),
      styles: USUAL_TABLES.styles,
      pairage: [{ Style: 'Betony', 38: 3 }],
    });

  it('is what the style costs in a run of one size, less its stock and what of that is spoiled', () => {
    const given = input(RATES);
    const plan = new Plan(given);
    const [run] = plan.runs.styles;
    const [cost] = plan.costs;
    const [size] = run?.sizes ?? [];
    if (!run || !size || !cost) throw new Error('There is no run of one size.');
    const beyond = beyondStock(run, size, given);
    expect(beyond.pair).toBeCloseTo(cost.pair - 1.04 * cost.stock, 9);
    expect(beyond).toMatchObject({ minutes: 20, work: 10 });
    expect(beyond.sundries).toBeCloseTo(2.3, 9);
    expect(beyond.adhesive).toBeCloseTo(cost.adhesive ?? NaN, 9);
  });

  it('counts nothing for what has no rate', () => {
    const given = input([]);
    const [run] = new Plan(given).runs.styles;
    if (!run?.sizes[0]) throw new Error('There is no run.');
    expect(beyondStock(run, run.sizes[0], given)).toEqual({
      adhesive: undefined,
      paste: 0,
      adhesiveCost: 0,
      sundries: 0,
      minutes: 0,
      work: 0,
      spoilage: 0,
      pair: 0,
    });
  });
});
