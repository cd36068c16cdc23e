import { describe, expect, it } from 'vitest';
import { Plan } from '../../../src/core/plan/plan';
import { inputOf, USUAL_TABLES } from '../samples';

const plan = new Plan(
  inputOf({
    styles: [{ ...USUAL_TABLES.styles[0], Insole: 'Board 2', Welt: 'Bend 4', Cover: 'Calf 1' }],
    rates: [
      { Item: 'Open', Value: 12, Unit: 'minutes open' },
      { Item: 'Open', Value: 20, Unit: 'minutes open', For: 'Rubber' },
      { Item: 'Coats', Value: 2, Unit: 'coats', For: 'Cork 7' },
    ],
  }),
);

describe('ticket', () => {
  it('goes from the last downward, then round the edge, size by size', () => {
    const parts = plan.ticket('sorrel', 38).map(({ layer }) => layer.part);
    expect([parts[0], ...parts.slice(-4)]).toEqual(['insole', 'platform', 'outsole', 'welt', 'cover']);
    expect(new Set(parts.slice(1, -4))).toEqual(new Set(['lift']));
    expect([...new Set(plan.ticket('Sorrel').map(({ sizeRun }) => sizeRun.size))]).toEqual([37, 38, 39]);
  });

  it('cuts for both feet of every pair', () => {
    expect(plan.ticket('Sorrel', 38).every(({ cut }) => cut === 6)).toBe(true);
  });

  it('gives times and coats of the stock before those of all', () => {
    const steps = plan.ticket('Sorrel', 38);
    const of = (stock: string) => steps.find(({ layer }) => layer.stock === stock);
    expect(of('Rubber 4')).toMatchObject({ open: 20, coats: 1, pressed: undefined });
    expect(of('Cork 7')).toMatchObject({ open: 12, coats: 2 });
  });

  it('says which styles and sizes there are', () => {
    expect(() => plan.ticket('Teasel')).toThrow('"Teasel" has no pairs in this run; its styles are Sorrel');
    expect(() => plan.ticket('Sorrel', 45)).toThrow('45 is not in the run of Sorrel');
  });
});
