import { describe, expect, it } from 'vitest';
import { outcomeOf } from '../../../src/core/plan/outcome';
import { INPUT_TABLES } from '../../../src/tables/input-tables';
import type { PlanCells } from '../../../src/tables/plan-input';
import { readPlan } from '../../../src/tables/plan-input';
import { type TriedCell, triedCell, withTried } from '../../../src/tables/what-if/tried-cell';
import { planArguments } from '../../demo-cells';

const cells = Object.fromEntries(
  Object.keys(INPUT_TABLES).map((name, i) => [name, planArguments()[i]]),
) as unknown as PlanCells;
const at = (argument: keyof PlanCells, code: string, heading: string | number): TriedCell | string => {
  const table = cells[argument] ?? [];
  const column = (table[0] ?? []).findIndex((one) => String(one).split('\n')[0] === String(heading));
  const row = table.findIndex((line, i) => i > 0 && line[0] === code);
  return triedCell(INPUT_TABLES[argument].name, table, row, column);
};

describe('a cell in which numbers are tried', { timeout: 120_000 }, () => {
  it('is one that takes a number, called by its row and its heading', () => {
    expect(at('stock', 'Cork 6', 'Price')).toMatchObject({ name: 'Cork 6, Price', now: 13.6, whole: false });
    expect(at('pairage', 'Betony', 38)).toMatchObject({ name: 'Betony, pairs in 38', now: 3, whole: true });
    expect(at('lasts', 'Round 45', 'Heel height')).toMatchObject({ unit: 'mm', now: 45 });
    expect(at('rates', 'Bench', 'Value')).toMatchObject({ unit: 'hours a day', now: 7 });
  });

  it('is none that takes words, sums pairs, or has nothing beside it: a sentence says what to select', () => {
    expect(at('stock', 'Cork 6', 'Material')).toMatch(/takes no number/);
    expect(at('pairage', 'Betony', 'Pairs')).toMatch(/is a sum; select one of its numbers/);
    expect(at('pairage', 'nobody', 38)).toMatch(/^Select a number below a heading/);
    expect(triedCell('Bottom stock', cells.stock, cells.stock.length - 1, 3)).toMatch(
      /row of Bottom stock that is filled in/,
    );
    expect(triedCell('Notes', [['a'], ['b']], 1, 0)).toMatch(/^Select a number/);
  });

  it('has another number in a plan of its own, and the tables stay as they are: a price that doubles pays for double', () => {
    const price = at('stock', 'Cork 6', 'Price') as TriedCell;
    const before = JSON.stringify(cells);
    const [now, dear] = [13.6, 27.2].map((value) => outcomeOf(readPlan(withTried(cells, price, value)).plan));
    expect(JSON.stringify(cells)).toBe(before);
    expect(outcomeOf(readPlan(cells).plan)).toEqual(now);
    expect(dear?.sheets).toBe(now?.sheets);
    expect(dear?.toPay).toBeGreaterThan(now?.toPay ?? 0);
  });
});
