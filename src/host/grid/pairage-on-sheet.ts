import type { ICellData, Injector, IRange, Nullable, Workbook, Worksheet } from '@univerjs/core';
import { IUniverInstanceService, UniverInstanceType } from '@univerjs/core';
import { deserializeRangeWithSheet, IDefinedNamesService } from '@univerjs/engine-formula';
import { columnsIn } from '../../tables/headings';
import { INPUT_TABLES } from '../../tables/input-tables';
import type { Columns, Table } from '../../tables/schema';
import { headsSums } from '../../tables/sums';

/** Where the table of pairs stands on a sheet. Rows and columns are the sheet's. */
export interface Pairage {
  readonly area: IRange;
  /** Column of the sums of the rows. */
  readonly sums: number;
  /** Column of the days due; undefined where there is none. */
  readonly due: number | undefined;
  /** Row of the sums of the sizes; undefined where there is none. */
  readonly all: number | undefined;
}

/** The table of pairs, where it stands on the sheet. */
export function pairageOn(injector: Injector, sheet: Worksheet, unitId: string): Pairage | undefined {
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
  const [sums, first, due] = [at.get('total'), at.get('style'), at.get('due')];
  if (sums === undefined || first === undefined) return undefined;
  const all = through(area.startRow + 1, area.endRow).find((row) => {
    const word = value(row, area.startColumn + first);
    return typeof word === 'string' && headsSums(word);
  });
  return { area, sums: area.startColumn + sums, due: due === undefined ? undefined : area.startColumn + due, all };
}

function valueOf(cell: Nullable<ICellData>): unknown {
  return cell?.v ?? null;
}

export function through(first: number, last: number): readonly number[] {
  return Array.from({ length: last - first + 1 }, (_, i) => first + i);
}

export function sheetOf(injector: Injector, unitId: string, subUnitId: string): Nullable<Worksheet> {
  const workbook = injector.get(IUniverInstanceService).getUnit<Workbook>(unitId, UniverInstanceType.UNIVER_SHEET);
  return workbook?.getSheetBySheetId(subUnitId);
}
