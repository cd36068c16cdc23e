import { describe, expect, it } from 'vitest';
import { finished } from '../../../src/core/stepwise';
import { readPlan } from '../../../src/tables/plan-input';
import { workshop } from '../../benchmarks/plan-workshop';
import { forgetPlans } from '../forget';

/** All that a plan comes to. */
function comesTo(cells: Parameters<typeof readPlan>[0]) {
  const { plan } = readPlan(cells);
  return JSON.stringify([
    plan.layouts.stocks.map(({ stock, layout, least, ground }) => [stock.code, layout, least, ground]),
    plan.possible,
    plan.checks,
    plan.batches,
  ]);
}

describe('a plan worked out step by step', () => {
  // A hide with an outline of its own, and a shelf of offcuts: every way to lay pieces.
  const hide = [
    ['Code', 'Role', 'x', 'y'],
    ['Hide', 'sheet', 0, 0],
    ['Hide', 'sheet', 1300, 60],
    ['Hide', 'sheet', 1250, 900],
    ['Hide', 'sheet', 100, 850],
  ];
  const offcuts = [
    ['Offcut', 'Stock', 'Length', 'Width'],
    ['F1', 'Foam 10', 500, 400],
  ];
  const shop = (seed: number) => {
    // Three sizes: a hide's pieces are held against each other, each against each.
    const { stock, pairage, ...others } = workshop(3, seed);
    const [head = [], ...rows] = stock;
    const outline = rows.map((row) => [...row, row[0] === 'Bend 4' ? 'Hide' : '']);
    return {
      ...others,
      pairage: pairage.map((row) => row.slice(0, 4)),
      stock: [[...head, 'Outline'], ...outline],
      outlines: hide,
      offcuts,
    };
  };

  it.each([3, 8])('comes to the same as at once, whoever works on it and whoever gives it up (workshop %i)', (seed) => {
    forgetPlans();
    const cells = shop(seed);
    const { plan, problems } = readPlan(cells);
    expect(problems).toEqual([]);
    const [one, other] = [plan.upTo('checks'), plan.upTo('order')];
    for (let steps = 0; steps < 60; steps++) (steps % 3 === 0 ? other : one).next();
    // One of the two is given up; the other goes on with what both have done.
    let steps = 60;
    while (!one.next().done) steps++;
    expect(steps).toBeGreaterThan(100);
    const stepwise = comesTo(cells);
    forgetPlans();
    expect(comesTo(cells)).toBe(stepwise);
  });

  it('has nothing more to do once it is done', () => {
    const { plan } = readPlan(shop(3));
    finished(plan.upTo('checks'));
    const before = plan.layouts;
    let steps = 0;
    for (const _ of plan.upTo('checks')) steps++;
    expect(steps).toBeLessThan(40);
    expect(plan.layouts).toBe(before);
  });
});
