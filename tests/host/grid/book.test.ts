import type { ICellData, IWorkbookData } from '@univerjs/core';
import { describe, expect, it } from 'vitest';
import { readBook } from '../../../src/exchange/xlsx/read';
import { writeBook } from '../../../src/exchange/xlsx/write';
import { bookOfGrid } from '../../../src/host/grid/book-of-grid';
import { gridOfBook } from '../../../src/host/grid/grid-of-book';
import { namesIn, resourcesOf, rulesIn, snapshotOf } from '../../../src/host/grid/snapshot';
import { blank } from '../../../src/workbook/blank';
import { demo } from '../../../src/workbook/demo';

/** Through a file and back. */
function ring(snapshot: IWorkbookData): IWorkbookData {
  const { book, left } = readBook(writeBook(bookOfGrid(snapshot)));
  expect(left).toEqual([]);
  return gridOfBook(book, snapshot.name, snapshot.id);
}

/** Blank text and a blank cell are the same to whoever reads them. */
function withoutBlankText({ v, t, ...cell }: ICellData): ICellData {
  return v === '' || v === undefined ? cell : { v, ...(t !== undefined && { t }), ...cell };
}

const cellsOf = (snapshot: IWorkbookData) =>
  Object.fromEntries(
    snapshot.sheetOrder.map((id) => {
      const rows = (snapshot.sheets[id]?.cellData ?? {}) as Record<string, Record<string, ICellData>>;
      return [
        snapshot.sheets[id]?.name,
        Object.fromEntries(
          Object.entries(rows).flatMap(([row, columns]) =>
            Object.entries(columns).map(([column, cell]) => [`${row} ${column}`, withoutBlankText(cell)]),
          ),
        ),
      ];
    }),
  );

describe('a workbook of the grid through a file', () => {
  it.each([demo, blank])('keeps every cell of $name: value, formula, look and what travels with it', (plan) => {
    const before = snapshotOf(plan, 'workbook');
    const after = ring(before);
    expect(cellsOf(after)).toEqual(cellsOf(before));
    expect(after.styles).toEqual(before.styles);
  });

  it('names no other file in a list, as whatever the grid calls after its own id of the workbook would be', () => {
    const snapshot = snapshotOf(blank, 'workbook');
    const [own, plain] = ["='[workbook]Bottom stock'!$A$4:$A$9", '=[workbook]Lasts!$A$4:$A$9'];
    const rules = Object.values(rulesIn(snapshot)).find((all) => all.length > 1) ?? [];
    const called = rules.map((rule, at) => ({ ...rule, formula1: at === 0 ? own : plain }));
    const resources = resourcesOf(namesIn(snapshot), { [snapshot.sheetOrder[0]!]: called });
    const written = bookOfGrid({ ...snapshot, resources }).sheets[0]!.rules.map(({ first }) => first);
    expect(new Set(written)).toEqual(new Set(["'Bottom stock'!$A$4:$A$9", 'Lasts!$A$4:$A$9']));
  });

  it.each([demo, blank])('keeps names, lists, widths, heights, panes and kinds of sheets of $name', (plan) => {
    const before = snapshotOf(plan, 'workbook');
    const after = ring(before);
    expect(namesIn(after)).toEqual(namesIn(before));
    expect(rulesIn(after)).toEqual(rulesIn(before));
    for (const id of before.sheetOrder) {
      const [was, is] = [before.sheets[id], after.sheets[id]];
      for (const key of ['name', 'freeze', 'columnData', 'rowData', 'showGridlines', 'defaultStyle'] as const) {
        expect(is?.[key], `${was?.name} ${key}`).toEqual(was?.[key]);
      }
      expect(is?.custom?.['kind']).toBe(was?.custom?.['kind']);
      expect(is?.defaultRowHeight).toBe(was?.defaultRowHeight);
      expect(is?.defaultColumnWidth).toBe(was?.defaultColumnWidth);
    }
  });
});
