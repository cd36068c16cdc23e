import {
  type ICellData,
  type ICommandInfo,
  type IDisposable,
  type Injector,
  type IRange,
  type IStyleData,
  type ISheetDataValidationRule,
  type Nullable,
  ObjectMatrix,
} from '@univerjs/core';
import { UpdateDataValidationMutation, UpdateRuleType } from '@univerjs/data-validation';
import { SetRangeValuesCommand, SetRangeValuesMutation, SheetInterceptorService } from '@univerjs/sheets';
import { SheetDataValidationModel } from '@univerjs/sheets-data-validation';
import { ISheetClipboardService } from '@univerjs/sheets-ui';
import { headsSums } from '../../tables/sums';
import type { Line } from './example-look';
import { inRole, isPlanned, roleOf } from './look';
import { sheetOf, through } from './pairage-on-sheet';
import { tablesOn } from './tables-on-sheet';

type Lines = (row: number) => Nullable<Line>;

/** Which rows of a table are to look like the last of those that do. */
export interface RowsBelow {
  readonly like: number;
  readonly first: number;
  readonly last: number;
}

/**
 * Rows that belong to a table and have no lines yet, down to the last that is written; undefined where none is, and below
 * sums, where no row is to stand.
 * @param area of the table, headings first
 * @param written rows in which something is written
 */
export function rowsBelow(area: IRange, lines: Lines, written: readonly number[]): RowsBelow | undefined {
  const { startRow, endRow, startColumn, endColumn } = area;
  const cellsOf = (row: number) => through(startColumn, endColumn).map((column) => lines(row)?.[column]);
  let like = startRow;
  while (like < endRow && cellsOf(like + 1).some((cell) => isRuled(cell))) like++;
  const last = Math.max(-1, ...written.filter((row) => row <= endRow));
  if (like === startRow || last <= like || isOfSums(lines(like)?.[startColumn])) return undefined;
  return { like, first: like + 1, last };
}

/** What was made of a cell as more than its number format, which the grid gives to whatever is typed. */
function isRuled(cell: Nullable<ICellData>): boolean {
  const style = cell?.s;
  return typeof style === 'string' ? style !== '' : Object.keys(style ?? {}).some((part) => part !== 'n');
}

/** Whether a cell of a table's first column heads its sums. */
export function isOfSums(cell: Nullable<ICellData>): boolean {
  if (isPlanned(cell?.s) && roleOf(cell.s) === 'total') return true;
  return typeof cell?.v === 'string' && headsSums(cell.v);
}

/** The look of a cell below another: an example's is that of any other input. */
export function lookBelow(style: ICellData['s']): Exclude<ICellData['s'], undefined> {
  return (isPlanned(style) && roleOf(style) === 'example' ? inRole('input', style) : style) ?? null;
}

/** A list that reaches as far down as its table does, in the columns where it stood in the row that the others are like. */
export function listBelow(
  ranges: readonly IRange[],
  area: IRange,
  { like, first, last }: RowsBelow,
): readonly IRange[] {
  const { startColumn, endColumn } = area;
  return ranges.map((range) => {
    const within = range.startColumn >= startColumn && range.endColumn <= endColumn;
    const reaches = range.startRow <= like && range.endRow >= like && range.endRow < last;
    return within && reaches && first === like + 1 ? { ...range, endRow: last } : range;
  });
}

/**
 * Gives rows that are written below the ruled ones of a table their lines, number formats and lists, in the same step for
 * undo.
 */
export function ruleRowsBelow(injector: Injector): IDisposable {
  return injector.get(SheetInterceptorService).interceptCommand({
    getMutations: ({ id, params }: ICommandInfo) => {
      if (id !== SetRangeValuesCommand.id) return nothing;
      const { unitId, subUnitId, cellValue } = params as Written;
      return ruled(injector, unitId, subUnitId, cellValue);
    },
  });
}

/** The same for what is pasted, however it came. */
export function ruleRowsPasted(injector: Injector): IDisposable {
  return injector.get(ISheetClipboardService).addClipboardHook({
    id: 'rows-below',
    // After the looks that were copied, and those that days take.
    priority: 1100,
    onPasteCells: (_from, { unitId, subUnitId, range }, cells) => {
      const written: Record<number, Record<number, Nullable<ICellData>>> = {};
      cells.forValue((r, c, cell) => {
        const [row, column] = [range.rows[r], range.cols[c]];
        if (row !== undefined && column !== undefined) (written[row] ??= {})[column] = cell;
      });
      return ruled(injector, unitId, subUnitId, written);
    },
    onPastePlainText: ({ unitId, subUnitId, range }, text) => {
      const [row, column] = [range.rows[0], range.cols[0]];
      const written = row === undefined || column === undefined ? {} : { [row]: { [column]: { v: text } } };
      return ruled(injector, unitId, subUnitId, written);
    },
  });
}

interface Written {
  readonly unitId: string;
  readonly subUnitId: string;
  readonly cellValue: Readonly<Record<number, Nullable<Line>>>;
}

const nothing = { redos: [], undos: [] };

/** What gives rows below the ruled ones their looks and lists, and what takes them away again. */
function ruled(injector: Injector, unitId: string, subUnitId: string, written: Written['cellValue']) {
  const sheet = sheetOf(injector, unitId, subUnitId);
  if (!sheet) return nothing;
  const matrix = sheet.getCellMatrix();
  const lines: Lines = (row) => matrix.getRow(row);
  const redos = [];
  const undos = [];
  for (const area of tablesOn(injector, sheet, unitId)) {
    const rows = rowsBelow(area, lines, rowsWritten(written, area));
    if (!rows) continue;
    const of = { unitId, subUnitId };
    const looks = looksOf(area, rows, lines, (row, column) => sheet.getCellStyle(row, column)?.n?.pattern);
    redos.push({ id: SetRangeValuesMutation.id, params: { ...of, cellValue: looks.now } });
    undos.push({ id: SetRangeValuesMutation.id, params: { ...of, cellValue: looks.before } });
    for (const rule of injector.get(SheetDataValidationModel).getRules(unitId, subUnitId)) {
      const ranges = listBelow(rule.ranges, area, rows);
      if (ranges.every((range, at) => range === rule.ranges[at])) continue;
      redos.push(reaching(of, rule, ranges));
      undos.push(reaching(of, rule, rule.ranges));
    }
  }
  return { redos, undos };
}

function rowsWritten(written: Written['cellValue'], { startColumn, endColumn }: IRange): readonly number[] {
  const rows = new Set<number>();
  new ObjectMatrix(written as Record<number, Record<number, Nullable<ICellData>>>).forValue((row, column, cell) => {
    if (column >= startColumn && column <= endColumn && says(cell)) rows.add(row);
  });
  return [...rows];
}

function says(cell: Nullable<ICellData>): boolean {
  return !!cell && (!!cell.f || !!cell.p || (cell.v ?? '') !== '');
}

type Looks = Record<number, Record<number, { s: Nullable<IStyleData | string> }>>;

/**
 * The row that a column's looks are taken from: a day among values of other kinds, such as that of the start, hands its format
 * to none of them.
 */
export function rowLike(
  { startRow }: Pick<IRange, 'startRow'>,
  like: number,
  patternOf: (row: number) => string | undefined,
): number {
  const isDay = (row: number) => patternOf(row)?.includes('yy') === true;
  if (!isDay(like)) return like;
  const other = through(startRow + 1, like).find((row) => !isDay(row));
  return other ?? like;
}

function looksOf(
  area: IRange,
  { like, first, last }: RowsBelow,
  lines: Lines,
  patternAt: (row: number, column: number) => string | undefined,
) {
  const { startColumn, endColumn } = area;
  const now: Looks = {};
  const before: Looks = {};
  for (const row of through(first, last)) {
    for (const column of through(startColumn, endColumn)) {
      const from = rowLike(area, like, (at) => patternAt(at, column));
      const s = lookBelow(lines(from)?.[column]?.s);
      const cell = lines(row)?.[column];
      if (s === null || isRuled(cell)) continue;
      (now[row] ??= {})[column] = { s };
      (before[row] ??= {})[column] = { s: null };
    }
  }
  return { now, before };
}

function reaching(
  of: { readonly unitId: string; readonly subUnitId: string },
  { uid: ruleId }: ISheetDataValidationRule,
  ranges: readonly IRange[],
) {
  const payload = { type: UpdateRuleType.RANGE, payload: ranges.map((range) => ({ ...range })) };
  return { id: UpdateDataValidationMutation.id, params: { ...of, ruleId, payload, source: 'patched' } };
}
