import { describe, expect, it } from 'vitest';
import type { Outcome } from '../../../src/core/plan/outcome';
import { sheetSteps, stepInWords, type Tried } from '../../../src/tables/what-if/steps';

const tried = (value: number, bought: Readonly<Record<string, number>> | undefined): Tried => ({
  value,
  ...(bought && {
    outcome: { bought: Object.entries(bought).map(([stock, buy]) => ({ stock, buy })) } as unknown as Outcome,
  }),
});

describe('steps of the sheets', () => {
  it('are where a stock asks for other sheets than at the value before, named with both numbers (worked by hand)', () => {
    const steps = sheetSteps([
      tried(44, { 'Cork 6': 5, 'Foam 10': 2 }),
      tried(45, { 'Cork 6': 5, 'Foam 10': 2 }),
      tried(46, { 'Cork 6': 6, 'Foam 10': 2 }),
      tried(47, { 'Cork 6': 6, 'Foam 10': 1 }),
    ]);
    expect(steps.map(stepInWords)).toEqual([
      '45 to 46: Cork 6 from 5 to 6 sheets',
      '46 to 47: Foam 10 from 2 to 1 sheet',
    ]);
  });

  it('pass over values that have no plan, and see a stock that comes or goes', () => {
    const steps = sheetSteps([tried(1, { 'Cork 6': 1 }), tried(2, undefined), tried(3, { 'Cork 4': 2 })]);
    expect(steps).toEqual([
      {
        from: 1,
        to: 3,
        changes: [
          { stock: 'Cork 6', from: 1, to: 0 },
          { stock: 'Cork 4', from: 0, to: 2 },
        ],
      },
    ]);
  });
});
