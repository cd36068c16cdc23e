import { describe, expect, it } from 'vitest';
import { working } from '../../../src/workings/workings';
import { INPUT_TABLES } from '../../../src/tables/input-tables';
import { costTable } from '../../../src/tables/results/cost';
import { cellsOf, type Named, RATES, STOCKS, USUAL_TABLES } from '../../core/samples';

describe('the working of a pair’s minutes', () => {
  const tables = {
    ...USUAL_TABLES,
    rates: [
      ...RATES,
      { Item: 'Cutting', Value: 2, Unit: 'minutes a piece' },
      { Item: 'Skiving', Value: 3, Unit: 'minutes a skive' },
    ],
  };
  const args = Object.keys(INPUT_TABLES).map((name) => cellsOf(tables[name as keyof typeof tables]));
  const column = costTable.columns.findIndex(({ heading }) => heading === 'Work');
  const found = working('COST', args, { row: 1, column });

  it('tells sizes that are alike once, and what the minutes are made of (added up by hand)', () => {
    const steps = found?.steps ?? [];
    expect(found?.given.filter(({ meaning }) => meaning.startsWith('Pairs in'))).toEqual([
      expect.objectContaining({ meaning: 'Pairs in EU 37 to 39, 3 sizes', value: 6 }),
    ]);
    expect(steps.filter(({ what }) => what.startsWith('A pair in'))).toHaveLength(1);
    const parts = steps.filter(({ what }) => what.startsWith('Of a pair: '));
    // Ten pieces and eight skives a foot at 2 and 3 minutes, and Finishing, which names no step.
    expect(parts.map(({ what, value }) => [what, value])).toEqual([
      ['Of a pair: cutting and preparing, 10 steps', 40],
      ['Of a pair: skiving, 8 steps', 48],
      ['Of a pair: work of no step', 20],
    ]);
    expect(steps.at(-1)?.value).toBe(108);
  });
});

describe('the working of spoilage', () => {
  const args = (...more: readonly Named[]) => {
    const tables = { ...USUAL_TABLES, stock: STOCKS.map((one) => ({ ...one, Price: 10 })), rates: [...RATES, ...more] };
    return Object.keys(INPUT_TABLES).map((name) => cellsOf(tables[name as keyof typeof tables]));
  };
  const share = (value: number, scope: string) => ({
    Item: 'Spoilage',
    Value: value,
    Unit: 'share spoiled',
    For: scope,
  });
  const workingOf = (...more: readonly Named[]) => {
    const column = costTable.columns.findIndex(({ heading }) => heading === 'Spoilage');
    return working('COST', args(...more), { row: 1, column });
  };

  it('names the rows of its sheets where some have a share of their own, and comes to their sum', () => {
    const found = workingOf(share(0.1, 'cork'));
    expect(found?.given.map(({ value }) => value)).toEqual(expect.arrayContaining([0.1, 0.04]));
    const value = (symbol: string) =>
      [...(found?.given ?? []), ...(found?.steps ?? [])].find((one) => one.symbol === symbol)?.value;
    const [q, stock, g, f] = ['q', 'Q', 'g', 'f'].map((symbol) => Number(value(symbol)));
    expect(q).toBeCloseTo(stock! + g! * f!, 9);
    expect(q).toBeGreaterThan(Number(workingOf()?.steps.at(-1)?.value));
  });
});
