import { describe, expect, it } from 'vitest';
import { Plan } from '../../../src/core/plan/plan';
import { amountInWords, besideSheets } from '../../../src/drawing/paper/beside-sheets';
import { PAPERS } from '../../../src/drawing/paper/page';
import { shoppingList, shoppingText } from '../../../src/drawing/paper/shopping-list';
import { inputOf, STOCKS } from '../../core/samples';
import { demoJob } from './jobs';

describe('what is wanted beside the sheets', () => {
  const job = demoJob();
  const lines = besideSheets(job);
  const { runs } = job.plan;

  it('has the adhesive and the paste that the plan’s costs have, by their kind', () => {
    const costs = (job.plan as Plan).costs;
    const wanted = costs.reduce((sum, line) => sum + ((line.adhesive ?? 0) + (line.paste ?? 0)) * line.run.pairs, 0);
    const adhesives = lines.filter(({ unit }) => unit === 'ml');
    expect(adhesives.reduce((sum, { amount }) => sum + (amount ?? NaN), 0)).toBeCloseTo(wanted, 6);
    const money = costs.reduce((sum, line) => sum + line.adhesiveCost * line.run.pairs, 0);
    expect(adhesives.reduce((sum, { total }) => sum + (total ?? NaN), 0)).toBeCloseTo(money, 6);
    expect(wanted).toBeGreaterThan(100);
    expect(adhesives.map(({ what }) => what)).toContain('Paste');
  });

  it('has what is paid by the pair, as the costs have it', () => {
    const costs = (job.plan as Plan).costs;
    const items = lines.filter(({ unit }) => unit === 'pairs');
    const money = costs.reduce((sum, line) => sum + line.sundries * line.run.pairs, 0);
    expect(items.length).toBeGreaterThan(0);
    expect(items.reduce((sum, { total }) => sum + (total ?? NaN), 0)).toBeCloseTo(money, 6);
    for (const { amount } of items)
      expect(amount).toBeLessThanOrEqual(runs.styles.reduce((sum, one) => sum + one.pairs, 0));
    expect(shoppingText(shoppingList(job), '€', true, lines)).toContain(`Beside the sheets\n${lines[0]?.what}: `);
  });

  it('is told in litres, millilitres and pairs, and where it is not known', () => {
    const line = { what: '', total: undefined, unit: 'ml' } as const;
    expect(amountInWords({ ...line, amount: 1250 })).toBe('1.25 l');
    expect(amountInWords({ ...line, amount: 249.2 })).toBe('250 ml');
    expect(amountInWords({ ...line, amount: undefined })).toMatch(/^not known/);
    expect(amountInWords({ ...line, unit: 'pairs', amount: 1 })).toBe('1 pair');
  });
});

describe('a sheet on the shopping list', () => {
  it('is ordered as thick as it is sold, not as it was measured', () => {
    const stock = STOCKS.map((one) =>
      one.Stock === 'Cork 6' ? { ...one, Thick: 6, Measured: 6.2, 'Face loss': 0.5, 'On hand': 0 } : one,
    );
    const plan = new Plan(inputOf({ stock }));
    const list = shoppingList({ plan, run: '', date: '', paper: PAPERS.A4 });
    const cork = list.flatMap(({ lines }) => lines).find((one) => one.stock === 'Cork 6');
    expect(plan.input.stock.find(({ code }) => code === 'Cork 6')?.thickness).toBeCloseTo(5.7, 9);
    expect(cork?.thick).toBe(6);
  });
});
