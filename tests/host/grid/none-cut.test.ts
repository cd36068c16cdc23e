import type { ICellData, IWorkbookData } from '@univerjs/core';
import { describe, expect, it } from 'vitest';
import { withNoneCut } from '../../../src/host/grid/none-cut';
import { snapshotOf } from '../../../src/host/grid/snapshot';
import { demo } from '../../../src/workbook/demo';

type Rows = Record<number, Record<number, ICellData>>;

const rowsOf = ({ sheets, sheetOrder }: IWorkbookData) => sheets[sheetOrder[0]!]!.cellData as Rows;
const headed = (rows: Rows, heading: string) => {
  for (const [row, cells] of Object.entries(rows)) {
    for (const [column, { v }] of Object.entries(cells)) {
      if (String(v).split('\n')[0] === heading) return { row: Number(row), column: Number(column) };
    }
  }
  throw new Error(`Nothing is headed ${heading}.`);
};

describe('a workbook of which none is cut', () => {
  const booked = snapshotOf(demo, 'workbook');
  const rows = rowsOf(booked);
  const [cut, stock] = ['Cut', 'Stock cut'].map((heading) => headed(rows, heading)) as [
    ReturnType<typeof headed>,
    ReturnType<typeof headed>,
  ];
  const write = (row: number, column: number, v: number) => ((rows[row] ??= {})[column] = { ...rows[row]![column], v });
  write(cut.row + 1, cut.column, 4);
  write(stock.row + 1, stock.column, 31.5);
  const next = withNoneCut(booked);

  it('has nothing under Cut and Stock cut, and the cells’ looks', () => {
    const after = rowsOf(next)[cut.row + 1]!;
    expect(after[cut.column]).toEqual({ s: rows[cut.row + 1]![cut.column]!.s ?? null });
    expect(after[stock.column]?.v).toBeUndefined();
  });

  it('has all else as it was', () => {
    const blanked = structuredClone(booked);
    for (const { row, column } of [cut, stock]) {
      const at = rowsOf(blanked)[row + 1]!;
      at[column] = { s: at[column]!.s ?? null };
    }
    expect(JSON.stringify(withNoneCut(blanked))).toBe(JSON.stringify(next));
    const { row, column } = cut;
    expect(rowsOf(next)[row]![column]).toEqual(rows[row]![column]);
    expect(rowsOf(next)[row + 1]![0]).toEqual(rows[row + 1]![0]);
    expect(Object.keys(next.sheets)).toEqual(Object.keys(booked.sheets));
    expect(rows[row + 1]![column]!.v).toBe(4);
  });
});
