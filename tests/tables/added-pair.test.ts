import { describe, expect, it } from 'vitest';
import { addedPair } from '../../src/tables/added-pair';
import { planCells } from '../../src/tables/plan-cells';
import { readPlan } from '../../src/tables/plan-input';
import { tableCells } from '../../src/workbook/table-cells';

const withPairage = (...rows: readonly unknown[][]) =>
  new Map([...Object.entries(tableCells()), ['Pairage', rows] as const]);
const cellsFor = (tables: ReadonlyMap<string, readonly unknown[][]>, size: number) => {
  const { plan } = readPlan(planCells(tables));
  const [run] = plan.runs.styles;
  return addedPair(
    tables,
    plan.input,
    run!,
    run!.sizes.find((one) => one.size === size)!,
  );
};

describe('addedPair', () => {
  it('adds to the first row of the style that is for no customer and is not cut', () => {
    const tables = withPairage(
      ['Style', 'Customer', 'Cut', 38, 39],
      ['Teasel', '', 2, 2, ''],
      ['Teasel', 'Orrin', '', 1, 1],
      ['Teasel', '', '', '', 1],
      ['Teasel', '', '', 4, 1],
    );
    expect(cellsFor(tables, 38)).toEqual([{ table: 'Pairage', row: 3, column: 3, value: 1 }]);
    expect(cellsFor(tables, 39)).toEqual([{ table: 'Pairage', row: 3, column: 4, value: 2 }]);
  });

  it('begins a row of its own, so that no customer has a pair that he has not ordered: above the sums', () => {
    const ordered = ['Teasel', 'Orrin', '', 1];
    const tables = withPairage(['Style', 'Customer', 'Cut', 38], ordered, ['', '', '', ''], ['All', '', '', 1]);
    expect(cellsFor(tables, 38)).toEqual([
      { table: 'Pairage', row: 2, column: 0, value: 'Teasel' },
      { table: 'Pairage', row: 2, column: 3, value: 1 },
    ]);
    expect(cellsFor(withPairage(['Style', 'Customer', 38], ['Teasel', 'Orrin', 1]), 38)).toEqual([
      { table: 'Pairage', row: 2, column: 0, value: 'Teasel' },
      { table: 'Pairage', row: 2, column: 2, value: 1 },
    ]);
  });

  it('asks for a blank row above the sums rather than write where they do not count it', () => {
    const full = withPairage(['Style', 'Customer', 38], ['Teasel', 'Orrin', 1], ['All', '', 1], ['', '', '']);
    expect(() => cellsFor(full, 38)).toThrow(/no blank row above All to add a pair in; insert one/);
  });

  it('names the system of a size that is not the last’s', () => {
    const tables = withPairage(['Style', 'Customer', 'System', 5], ['Teasel', 'Orrin', 'UK', 1], ['', '', '', '']);
    expect(cellsFor(tables, 5)).toContainEqual({ table: 'Pairage', row: 2, column: 2, value: 'UK' });
  });

  it('takes a row that is cut for none to add to', () => {
    const tables = withPairage(['Style', 'Cut', 38], ['Teasel', 2, 2]);
    expect(cellsFor(tables, 38).map(({ row, value }) => [row, value])).toEqual([
      [2, 'Teasel'],
      [2, 1],
    ]);
  });
});
