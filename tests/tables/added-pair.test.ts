import { describe, expect, it } from 'vitest';
import { addedPair } from '../../src/tables/added-pair';
import { planCells } from '../../src/tables/plan-cells';
import { readPlan } from '../../src/tables/plan-input';
import { tableCells } from '../../src/workbook/table-cells';

const withPairage = (...rows: readonly unknown[][]) =>
  new Map([...Object.entries(tableCells()), ['Pairage', rows] as const]);
const cellFor = (tables: ReadonlyMap<string, readonly unknown[][]>, size: number) => {
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
  it('adds to the first row of the style that has the size and is not cut', () => {
    const tables = withPairage(
      ['Style', 'Cut', 38, 39],
      ['Teasel', 2, 2, ''],
      ['Teasel', '', '', 1],
      ['Teasel', '', 4, 1],
    );
    expect(cellFor(tables, 38)).toEqual({ table: 'Pairage', row: 3, column: 2, value: 5 });
    expect(cellFor(tables, 39)).toEqual({ table: 'Pairage', row: 2, column: 3, value: 2 });
  });

  it('says where there is no row to add to', () => {
    const tables = withPairage(['Style', 'Cut', 38], ['Teasel', 2, 2]);
    expect(() => cellFor(tables, 38)).toThrow('Pairage: it has no row of Teasel in 38 to add a pair to');
  });
});
