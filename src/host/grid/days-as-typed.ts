import {
  CellValueType,
  type ICellData,
  type IDisposable,
  type Injector,
  type Nullable,
  toDisposable,
  type Worksheet,
} from '@univerjs/core';
import {
  AFTER_CELL_EDIT,
  SetRangeValuesMutation,
  SetRangeValuesUndoMutationFactory,
  SheetInterceptorService,
} from '@univerjs/sheets';
import { ISheetClipboardService } from '@univerjs/sheets-ui';
import { isoOf } from '../../core/calendar';
import { numberMeant } from '../../tables/cell';
import { type Day, dayIn, yearOfMost } from '../../tables/day';
import { INPUT_TABLES } from '../../tables/input-tables';
import { pairageOn, sheetOf, through } from './pairage-on-sheet';
import { columnOf } from './tables-on-sheet';

/** Before the grid makes a day of what was typed, which would take a day without a year for one of this year. */
const priority = 1000;
/** How a day is shown. */
const DATE = 'd mmm yyyy';

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

/**
 * The same for days pasted from elsewhere, of which the grid takes the first number for the month, points or no; and a day of
 * start that is pasted into Costs and times is shown as a day, not as the number that a spreadsheet counts it by.
 */
export function daysAsPasted(injector: Injector): IDisposable {
  return injector.get(ISheetClipboardService).addClipboardHook({
    id: 'days-as-pasted',
    // After the grid has put in what was pasted, and rows below the ruled ones have taken their looks (1100).
    priority: 1200,
    onPasteCells: (from, to, cells) =>
      from ? nothing : allPasted(injector, to, (row, column) => cells.getValue(row, column)),
    onPastePlainText: (to, text) => allPasted(injector, to, (row, column) => (row + column === 0 ? { v: text } : null)),
  });
}

type CellPasted = (row: number, column: number) => Nullable<ICellData>;

function allPasted(injector: Injector, to: Pasted, cell: CellPasted) {
  const [due, values] = [
    pasted(injector, to, (row, column) => cell(row, column)?.v),
    valuesPasted(injector, to, (row, column) => wordsOf(cell(row, column))),
  ];
  return { redos: [...due.redos, ...values.redos], undos: [...due.undos, ...values.undos] };
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
      const s = { n: { pattern: sheet.getCellStyle(row, column)?.n?.pattern ?? DATE } };
      const value =
        'day' in day ? { v: day.day, t: CellValueType.NUMBER } : { v: said as string, t: CellValueType.FORCE_STRING };
      (cellValue[row] ??= {})[column] = { ...value, s, p: null, f: null };
    }),
  );
  if (Object.keys(cellValue).length === 0) return nothing;
  // What the grid takes back of its own by undo takes these back too.
  return { redos: [{ id: SetRangeValuesMutation.id, params: { unitId, subUnitId, cellValue } }], undos: [] };
}

/** What was pasted as it was written; a day that the grid has made a number of already, as a day. */
function wordsOf(cell: Nullable<ICellData>): string | undefined {
  const { v, s, p } = cell ?? {};
  const body = p?.body?.dataStream.trim();
  if (body) return body;
  const dated = typeof s === 'object' && s?.n?.pattern.includes('yy');
  if (typeof v === 'number') return dated ? isoOf(v) : String(v);
  return typeof v === 'string' ? v : undefined;
}

/** Days, and numbers where days stood, under Value of Costs and times: there a cell's format follows what is pasted. */
function valuesPasted(
  injector: Injector,
  { unitId, subUnitId, range }: Pasted,
  text: (row: number, column: number) => unknown,
) {
  const sheet = sheetOf(injector, unitId, subUnitId);
  const values = sheet && columnOf(injector, sheet, unitId, INPUT_TABLES.rates, 'value');
  if (!values) return nothing;
  const cellValue: Record<number, Record<number, ICellData>> = {};
  range.rows.forEach((row, r) =>
    range.cols.forEach((column, c) => {
      const said = text(r, c);
      if (typeof said !== 'string' || !values.has(row, column)) return;
      const day = dayIn(said);
      const pattern = sheet.getCellStyle(row, column)?.n?.pattern;
      const cell = valueCell(day && 'day' in day ? day.day : numberMeant(said), day, pattern);
      if (cell) (cellValue[row] ??= {})[column] = cell;
    }),
  );
  if (Object.keys(cellValue).length === 0) return nothing;
  const params = { unitId, subUnitId, cellValue };
  const undo = injector.invoke((accessor) => SetRangeValuesUndoMutationFactory(accessor, params));
  return {
    redos: [{ id: SetRangeValuesMutation.id, params }],
    undos: [{ id: SetRangeValuesMutation.id, params: undo }],
  };
}

/** A day in a date's format, a number in a number's; undefined where the cell's format suits what is pasted already. */
function valueCell(value: unknown, day: Day, pattern: string | undefined): ICellData | undefined {
  if (typeof value !== 'number') return undefined;
  const [isDay, dated] = [day !== undefined && 'day' in day, pattern?.includes('yy') ?? false];
  if (!isDay && !dated) return undefined;
  const n = { pattern: isDay ? (dated ? (pattern as string) : DATE) : (INPUT_TABLES.rates.columns.value.format ?? '') };
  return { v: value, t: CellValueType.NUMBER, s: { n }, p: null, f: null };
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
