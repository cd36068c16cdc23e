import {
  CellValueType,
  type ICellData,
  type IDisposable,
  type Injector,
  toDisposable,
  type Worksheet,
} from '@univerjs/core';
import { AFTER_CELL_EDIT, SetRangeValuesMutation, SheetInterceptorService } from '@univerjs/sheets';
import { ISheetClipboardService } from '@univerjs/sheets-ui';
import { isoOf } from '../../core/calendar';
import { type Day, dayIn, yearOfMost } from '../../tables/day';
import { pairageOn, sheetOf, through } from './pairage-on-sheet';

/** Before the grid makes a day of what was typed, which would take a day without a year for one of this year. */
const priority = 1000;

/** Takes a day that is typed under Due for one of the run's year where it has none, and whichever way it is written. */
export function daysAsTyped(injector: Injector): IDisposable {
  const intercepted = injector.get(SheetInterceptorService).writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority,
    handler: (cell, location, next) => {
      const typed = cell?.v;
      if (!cell || typeof typed !== 'string' || cell.f || cell.p) return next(cell);
      const { worksheet, unitId, row, col } = location;
      const day = daysUnderDue(injector, worksheet, unitId, [row])?.(typed, row, col);
      if (!day) return next(cell);
      // What may be either of two days stays as it was typed: the reader asks.
      return next('day' in day ? { ...cell, v: isoOf(day.day) } : { ...cell, t: CellValueType.FORCE_STRING });
    },
  });
  return toDisposable(intercepted);
}

/** The same for days pasted from elsewhere, of which the grid takes the first number for the month, points or no. */
export function daysAsPasted(injector: Injector): IDisposable {
  return injector.get(ISheetClipboardService).addClipboardHook({
    id: 'days-as-pasted',
    // After the grid has put in what was pasted.
    priority,
    onPasteCells: (from, to, cells) =>
      from ? nothing : pasted(injector, to, (row, column) => cells.getValue(row, column)?.v),
    onPastePlainText: (to, text) => pasted(injector, to, (row, column) => (row + column === 0 ? text : undefined)),
  });
}

const nothing = { redos: [], undos: [] };

interface Pasted {
  readonly unitId: string;
  readonly subUnitId: string;
  readonly range: { readonly rows: readonly number[]; readonly cols: readonly number[] };
}

/** @param text what is pasted, by its row and column of those pasted */
function pasted(
  injector: Injector,
  { unitId, subUnitId, range }: Pasted,
  text: (row: number, column: number) => unknown,
) {
  const sheet = sheetOf(injector, unitId, subUnitId);
  const dayOf = sheet && daysUnderDue(injector, sheet, unitId, range.rows);
  if (!dayOf) return nothing;
  const cellValue: Record<number, Record<number, ICellData>> = {};
  range.rows.forEach((row, r) =>
    range.cols.forEach((column, c) => {
      const said = text(r, c);
      const day = typeof said === 'string' ? dayOf(said, row, column) : undefined;
      if (!day) return;
      const s = { n: { pattern: sheet.getCellStyle(row, column)?.n?.pattern ?? 'd mmm yyyy' } };
      const value =
        'day' in day ? { v: day.day, t: CellValueType.NUMBER } : { v: said as string, t: CellValueType.FORCE_STRING };
      (cellValue[row] ??= {})[column] = { ...value, s, p: null, f: null };
    }),
  );
  if (Object.keys(cellValue).length === 0) return nothing;
  // What the grid takes back of its own by undo takes these back too.
  return { redos: [{ id: SetRangeValuesMutation.id, params: { unitId, subUnitId, cellValue } }], undos: [] };
}

/** Reads days under Due, of the year of most of those that stand in other rows; undefined where the sheet has no such column. */
function daysUnderDue(injector: Injector, sheet: Worksheet, unitId: string, rows: readonly number[]) {
  const table = pairageOn(injector, sheet, unitId);
  const due = table?.due;
  if (!table || due === undefined) return undefined;
  const others = through(table.area.startRow + 1, table.area.endRow).filter((row) => !rows.includes(row));
  const year = yearOfMost(others.map((row) => sheet.getCellRaw(row, due)?.v));
  return (text: string, row: number, column: number): Day =>
    column === due && row > table.area.startRow && row <= table.area.endRow ? dayIn(text, year) : undefined;
}
