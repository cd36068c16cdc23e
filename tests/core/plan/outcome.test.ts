import { describe, expect, it } from 'vitest';
import { outcomeOf } from '../../../src/core/plan/outcome';
import { demoPlan } from '../../drawing/demo-plan';

const { plan } = demoPlan();

describe('what a plan comes to', () => {
  it('is what its summary says, and sheets as its order has them (each summed by itself)', () => {
    const outcome = outcomeOf(plan);
    const { toPay, whole, hours, putRight } = plan.summary();
    expect(outcome).toMatchObject({ toPay, cost: whole, putRight });
    expect(outcome.hours).toBeCloseTo(hours, 9);
    expect(outcome.bought.reduce((sum, { buy }) => sum + buy, 0)).toBe(outcome.sheets);
    expect(outcome.sheets).toBe(plan.orders.reduce((sum, { buy }) => sum + buy, 0));
  });

  it('has weight and adhesive of all pairs, and none where one style has none', () => {
    const grams = plan.costs.reduce((sum, { weight = NaN, run }) => sum + weight * run.pairs, 0);
    const ml = plan.costs.reduce((sum, { adhesive = NaN, run }) => sum + adhesive * run.pairs, 0);
    expect(outcomeOf(plan).weight).toBeCloseTo(grams / 1000, 9);
    expect(outcomeOf(plan).adhesive).toBeCloseTo(ml / 1000, 9);
    const [first, ...others] = plan.possible.costs;
    const costs = [{ ...first!, weight: undefined }, ...others];
    expect(outcomeOf({ possible: { ...plan.possible, costs }, checks: [] }).weight).toBeUndefined();
  });
});
