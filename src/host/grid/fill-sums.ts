import type { ICellData, ICommandInfo, IDisposable, Injector, IRange, Worksheet } from '@univerjs/core';
import { LexerTreeBuilder } from '@univerjs/engine-formula';
import {
  InsertColCommand,
  InsertRowCommand,
  SetRangeValuesMutation,
  SetWorksheetColWidthMutation,
  SheetInterceptorService,
} from '@univerjs/sheets';
import { type Pairage, pairageOn, sheetOf, through } from './pairage-on-sheet';
import { resultLook } from './result-look';
import { widthsBeneath } from './widths-beneath';

interface Inserted {
  readonly unitId: string;
  readonly subUnitId: string;
  readonly range: IRange;
}

interface At {
  readonly row: number;
  readonly column: number;
}

/**
 * Gives a row or a size that is inserted into the pairage its own sum, like its neighbour's, in the same step for undo. The
 * sum of all takes it in by itself.
 */
export function fillSums(injector: Injector): IDisposable {
  const lexer = injector.get(LexerTreeBuilder);
  return injector.get(SheetInterceptorService).interceptAfterCommand({
    getMutations: (command: ICommandInfo) => {
      const nothing = { redos: [], undos: [] };
      if (command.id !== InsertRowCommand.id && command.id !== InsertColCommand.id) return nothing;
      const { unitId, subUnitId, range } = command.params as Inserted;
      const sheet = sheetOf(injector, unitId, subUnitId);
      const table = sheet && pairageOn(injector, sheet, unitId);
      if (!sheet || !table) return nothing;
      const across = command.id === InsertColCommand.id;
      const cells = (across ? newColumns : newRows)(sheet, table, range);
      const cellValue = across ? looksOf(sheet, table, range, cells[0]?.like.column) : {};
      if (cells.length === 0 && Object.keys(cellValue).length === 0) return nothing;
      for (const { to, like } of cells) {
        const template = sheet.getCellRaw(like.row, like.column);
        const f = lexer.moveFormulaRefOffset(template?.f as string, to.column - like.column, to.row - like.row);
        (cellValue[to.row] ??= {})[to.column] = { f, s: template?.s };
      }
      const of = { unitId, subUnitId };
      const filled = { id: SetRangeValuesMutation.id, params: { ...of, cellValue } };
      const narrow = across && cells.length > 0 ? narrowest(sheet, table, range) : undefined;
      // What undo takes away again with the row or the column needs no undoing of its own.
      if (narrow === undefined) return { redos: [filled], undos: [] };
      const before = widthBefore(sheet, range);
      const widths = widthsBeneath(range, before, lastOfResults(sheet), narrow);
      const wide = (colWidth: Readonly<Record<number, number>>) => {
        const columns = Object.keys(colWidth).map(Number);
        const ranges = [{ ...range, startColumn: Math.min(...columns), endColumn: Math.max(...columns) }];
        return { id: SetWorksheetColWidthMutation.id, params: { ...of, ranges, colWidth } };
      };
      const back = Object.fromEntries(Object.keys(widths).map((column) => [column, before(Number(column))]));
      return { redos: [filled, wide(widths)], undos: [wide(back)] };
    },
  });
}

/** Widths of columns as they were before some were inserted, px. */
function widthBefore(sheet: Worksheet, { startColumn, endColumn }: IRange): (column: number) => number {
  const count = endColumn - startColumn + 1;
  return (column) => sheet.getColumnWidth(column < startColumn ? column : column + count);
}

/** The last column of the sheet that a table of results takes, with those into which its words run on; −1 without any. */
function lastOfResults(sheet: Worksheet): number {
  let last = -1;
  sheet.getCellMatrix().forValue((_row, column, cell) => {
    const look = resultLook(cell?.custom);
    if (look) last = Math.max(last, column + look.columns.length + (look.over ?? 0) - 1);
  });
  return last;
}

/**
 * Looks of new columns: those of a size from the headings to the sums, also beside the days due, whose looks the grid would
 * take. Above and below they have none of their own, for the answers there have theirs by where they stand.
 * @param like a size's column; undefined where no size comes in
 */
function looksOf(
  sheet: Worksheet,
  { area, all = area.endRow }: Pairage,
  { startColumn, endColumn }: IRange,
  like: number | undefined,
): Record<number, Record<number, ICellData>> {
  const looks: Record<number, Record<number, ICellData>> = {};
  for (const row of through(0, sheet.getCellMatrix().getLength() - 1)) {
    const within = row >= area.startRow && row <= all;
    if (within && like === undefined) continue;
    const s = within && like !== undefined ? (sheet.getCellRaw(row, like)?.s ?? null) : null;
    for (const column of through(startColumn, endColumn)) {
      if (within || sheet.getCellRaw(row, column)?.s) (looks[row] ??= {})[column] = { s };
    }
  }
  return looks;
}

interface FilledSum {
  readonly to: At;
  readonly like: At;
}

/** Each new row between the headings and the sums has the sum of the row above it, or below. */
function newRows(sheet: Worksheet, { area, sums, all = area.endRow }: Pairage, range: IRange): readonly FilledSum[] {
  const { startRow, endRow } = range;
  if (startRow <= area.startRow || endRow >= all) return [];
  const like = [startRow - 1, endRow + 1].find((row) => row > area.startRow && row < all && isSum(sheet, row, sums));
  if (like === undefined) return [];
  return through(startRow, endRow).map((row) => ({
    to: { row, column: sums },
    like: { row: like, column: sums },
  }));
}

/** Each new column before that of the sums has the sum of the size beside it. */
function newColumns(sheet: Worksheet, { area, sums, all }: Pairage, range: IRange): readonly FilledSum[] {
  const { startColumn, endColumn } = range;
  if (all === undefined || startColumn <= area.startColumn || endColumn >= sums) return [];
  const like = [startColumn - 1, endColumn + 1].find((column) => column < sums && isSum(sheet, all, column));
  if (like === undefined) return [];
  return through(startColumn, endColumn).map((column) => ({
    to: { row: all, column },
    like: { row: all, column: like },
  }));
}

/** Width of the narrowest size that was there before: the days due beside it, and columns of the order below, are wider. */
function narrowest(sheet: Worksheet, { area, sums, all }: Pairage, range: IRange): number | undefined {
  const widths = through(area.startColumn + 1, sums - 1)
    .filter((column) => column < range.startColumn || column > range.endColumn)
    .filter((column) => all !== undefined && isSum(sheet, all, column))
    .map((column) => sheet.getColumnWidth(column));
  return widths.length > 0 ? Math.min(...widths) : undefined;
}

function isSum(sheet: Worksheet, row: number, column: number): boolean {
  return typeof sheet.getCellRaw(row, column)?.f === 'string';
}
