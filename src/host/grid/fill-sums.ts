import {
  type ICellData,
  type ICommandInfo,
  type IDisposable,
  type Injector,
  type IRange,
  IUniverInstanceService,
  type Nullable,
  UniverInstanceType,
  type Workbook,
  type Worksheet,
} from '@univerjs/core';
import { deserializeRangeWithSheet, IDefinedNamesService, LexerTreeBuilder } from '@univerjs/engine-formula';
import { InsertColCommand, InsertRowCommand, SetRangeValuesMutation, SheetInterceptorService } from '@univerjs/sheets';
import { columnsIn } from '../../tables/headings';
import { INPUT_TABLES } from '../../tables/input-tables';
import type { Columns, Table } from '../../tables/schema';
import { headsSums } from '../../tables/sums';

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
      const cells = (command.id === InsertRowCommand.id ? newRows : newColumns)(sheet, table, range);
      if (cells.length === 0) return nothing;
      const cellValue: Record<number, Record<number, ICellData>> = {};
      for (const { to, like } of cells) {
        const template = sheet.getCellRaw(like.row, like.column);
        const f = lexer.moveFormulaRefOffset(template?.f as string, to.column - like.column, to.row - like.row);
        (cellValue[to.row] ??= {})[to.column] = { f, s: template?.s };
      }
      // What undo takes away again with the row or the column needs no undoing of its own.
      return { redos: [{ id: SetRangeValuesMutation.id, params: { unitId, subUnitId, cellValue } }], undos: [] };
    },
  });
}

interface Pairage {
  readonly area: IRange;
  /** Column of the sums of the rows. */
  readonly sums: number;
  /** Row of the sums of the sizes; undefined where there is none. */
  readonly all: number | undefined;
}

interface Filled {
  readonly to: At;
  readonly like: At;
}

/** Each new row between the headings and the sums has the sum of the row above it, or below. */
function newRows(sheet: Worksheet, { area, sums, all = area.endRow }: Pairage, range: IRange): readonly Filled[] {
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
function newColumns(sheet: Worksheet, { area, sums, all }: Pairage, range: IRange): readonly Filled[] {
  const { startColumn, endColumn } = range;
  if (all === undefined || startColumn <= area.startColumn || endColumn >= sums) return [];
  const like = [startColumn - 1, endColumn + 1].find((column) => column < sums && isSum(sheet, all, column));
  if (like === undefined) return [];
  return through(startColumn, endColumn).map((column) => ({
    to: { row: all, column },
    like: { row: all, column: like },
  }));
}

function isSum(sheet: Worksheet, row: number, column: number): boolean {
  return typeof sheet.getCellRaw(row, column)?.f === 'string';
}

function through(first: number, last: number): readonly number[] {
  return Array.from({ length: last - first + 1 }, (_, i) => first + i);
}

/** The table of pairs, where it stands on the sheet. */
function pairageOn(injector: Injector, sheet: Worksheet, unitId: string): Pairage | undefined {
  const table: Table<Columns> = INPUT_TABLES.pairage;
  const names = Object.values(injector.get(IDefinedNamesService).getDefinedNameMap(unitId) ?? {});
  const reference = names.find(({ comment }) => comment === table.name)?.formulaOrRefString;
  if (!reference || reference.includes('#REF!')) return undefined;
  const { sheetName, range: area } = deserializeRangeWithSheet(reference);
  if (sheetName !== sheet.getName()) return undefined;
  const value = (row: number, column: number) => valueOf(sheet.getCellRaw(row, column));
  const at = columnsIn(
    table,
    through(area.startColumn, area.endColumn).map((column) => value(area.startRow, column)),
  );
  const [sums, first] = [at.get('total'), at.get('style')];
  if (sums === undefined || first === undefined) return undefined;
  const all = through(area.startRow + 1, area.endRow).find((row) => {
    const word = value(row, area.startColumn + first);
    return typeof word === 'string' && headsSums(word);
  });
  return { area, sums: area.startColumn + sums, all };
}

function valueOf(cell: Nullable<ICellData>): unknown {
  return cell?.v ?? null;
}

function sheetOf(injector: Injector, unitId: string, subUnitId: string): Nullable<Worksheet> {
  const workbook = injector.get(IUniverInstanceService).getUnit<Workbook>(unitId, UniverInstanceType.UNIVER_SHEET);
  return workbook?.getSheetBySheetId(subUnitId);
}
