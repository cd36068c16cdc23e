import { describe, expect, it } from 'vitest';
import { finished } from '../../../src/core/stepwise';
import { MOST_WORK, PlanWork } from '../../../src/core/plan/plan-work';
import { readPlan } from '../../../src/tables/plan-input';
import { workshop } from '../../benchmarks/plan-workshop';

type Cells = ReturnType<typeof workshop>;

function timesPairs({ pairage: [headings = [], ...rows], ...rest }: Cells, by: number): Cells {
  return {
    ...rest,
    pairage: [headings, ...rows.map(([style = '', ...pairs]) => [style, ...pairs.map((n) => Number(n) * by)])],
  };
}

function workOf(cells: Cells): number {
  const { plan } = readPlan(cells);
  const work = new PlanWork(plan.input.stock, plan.input.offcuts);
  for (const run of plan.runs.styles) work.add(run.sizes);
  return work.total;
}

describe('PlanWork', () => {
  it('grows with every style and with every pair', () => {
    const { plan } = readPlan(workshop(6, 5));
    const work = new PlanWork(plan.input.stock, []);
    const totals = plan.runs.styles.map((run) => {
      work.add(run.sizes);
      return work.total;
    });
    expect(totals.length).toBe(6);
    totals.forEach((total, i) => expect(total).toBeGreaterThan(totals[i - 1] ?? 0));
    const sizes = [1, 2, 10, 100].map((by) => workOf(timesPairs(workshop(3, 5), by)));
    sizes.forEach((size, i) => expect(size).toBeGreaterThan(sizes[i - 1] ?? 0));
  });

  it('takes what is the same for once: twice the style is no more than its pieces twice', () => {
    const { plan } = readPlan(workshop(1, 5));
    const [run] = plan.runs.styles;
    if (!run) throw new Error('Nothing is wanted.');
    const work = new PlanWork(plan.input.stock, []);
    work.add(run.sizes);
    const once = work.total;
    work.add(run.sizes);
    expect(work.total).toBeGreaterThan(once);
    expect(work.total).toBeLessThan(1.2 * once);
  });

  it('takes longer where a sheet has an outline of its own, or offcuts may be used first', () => {
    const { plan } = readPlan(workshop(2, 5));
    const { stock } = plan.input;
    const of = (stocks: typeof stock, offcuts: ConstructorParameters<typeof PlanWork>[1] = []) => {
      const work = new PlanWork(stocks, offcuts);
      for (const run of plan.runs.styles) work.add(run.sizes);
      return work.total;
    };
    const matched = stock.map((one) => ({ ...one, pairs: 'side by side' as const }));
    expect(of(matched)).toBeGreaterThan(2 * of(stock));
    const offcut = { row: 1, code: 'A', stock: stock[0]?.code ?? '', length: 300, width: 300 };
    expect(of(stock, [offcut])).toBeGreaterThan(of(stock));
  });
});

describe('a plan that is too much', () => {
  it('names the styles to plan apart, and plans those before them', () => {
    const cells = workshop(40, 11);
    const rows = Array.from({ length: 40 }, (_, i) => timesPairs(cells, i < 25 ? 1 : 4000).pairage[i + 1] ?? []);
    const { plan } = readPlan({ ...cells, pairage: [cells.pairage[0] ?? [], ...rows] });
    const { styles, problems } = plan.runs;
    const next = plan.input.styles[styles.length];
    expect(styles.length).toBeGreaterThanOrEqual(25);
    expect(styles.length).toBeLessThan(40);
    const left = 39 - styles.length;
    expect(problems.map(({ message }) => message)).toEqual([
      `row ${styles.length + 1} of Styles, Style: this is more work than one plan can take; plan ${next?.code} and the ${left} styles after it apart`,
    ]);
    expect(() => plan.pieces).toThrow('more work than one plan can take');
    expect(
      workOf({ ...cells, pairage: [cells.pairage[0] ?? [], ...rows.slice(0, styles.length)] }),
    ).toBeLessThanOrEqual(MOST_WORK);
  });

  it('is the same whichever style is asked for first', () => {
    const cells = timesPairs(workshop(40, 11), 4000);
    const inOrder = readPlan(cells).plan.runs.styles.map(({ style }) => style.code);
    const { plan } = readPlan(cells);
    for (const step of [...plan.steps].filter(({ stage }) => stage === 'bottoms').reverse()) finished(step.work());
    expect(plan.runs.styles.map(({ style }) => style.code)).toEqual(inOrder);
    expect(inOrder.length).toBeLessThan(40);
  });

  it('asks for fewer pairs where one style alone is too much', () => {
    const cells = timesPairs(workshop(1, 12), 9999);
    const all = cells.pairage[1]?.map((n, i) => (i === 0 ? n : 9999)) ?? [];
    const { plan } = readPlan({ ...cells, pairage: [cells.pairage[0] ?? [], all] });
    expect(plan.runs.styles).toEqual([]);
    expect(plan.runs.problems[0]?.message).toMatch(/its \d+ pairs alone are; plan fewer pairs at a time$/);
  });

  it('names the stock whose matching pairs make most of the work', () => {
    const cells = workshop(24, 12);
    const [headings = [], ...rows] = cells.stock;
    const stock = [[...headings, 'Pairs'], ...rows.map((row) => [...row, row[0] === 'Rubber 4' ? 'side by side' : ''])];
    const { plan } = readPlan({ ...timesPairs(cells, 9), stock });
    expect(plan.runs.problems[0]?.message).toMatch(
      /; or plan what is cut from Rubber 4 apart, which is most of the work$/,
    );
  });
});
