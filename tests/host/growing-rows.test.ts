import { describe, expect, it } from 'vitest';
import { byTable, inGrownTable } from '../../src/host/growing-rows';

const cell = (row: number, table = 'Offcuts') => ({ table, row, column: 0, value: row });

describe('inGrownTable', () => {
  it('leaves cells where they are while the table has their rows', () => {
    expect(inGrownTable('Offcuts', [cell(0), cell(4)], 5)).toEqual({
      table: 'Offcuts',
      missing: 0,
      cells: [cell(0), cell(4)],
    });
  });

  it('puts new rows above the last, whose own cells move along', () => {
    const { missing, cells } = inGrownTable('Offcuts', [cell(3), cell(4), cell(5), cell(6)], 5);
    expect(missing).toBe(2);
    expect(cells.map(({ value, row }) => [value, row])).toEqual([
      [3, 3],
      [4, 6],
      [5, 4],
      [6, 5],
    ]);
  });
});

describe('byTable', () => {
  it('keeps the order of a table’s cells', () => {
    const all = [cell(1), cell(1, 'Pairage'), cell(2)];
    expect([...byTable(all)]).toEqual([
      ['Offcuts', [cell(1), cell(2)]],
      ['Pairage', [cell(1, 'Pairage')]],
    ]);
  });
});
