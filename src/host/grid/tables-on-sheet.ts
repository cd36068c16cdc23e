import type { Injector, IRange, Worksheet } from '@univerjs/core';
import { deserializeRangeWithSheet, IDefinedNamesService } from '@univerjs/engine-formula';
import { columnsIn } from '../../tables/headings';
import { INPUT_TABLES } from '../../tables/input-tables';
import type { Columns, Table } from '../../tables/schema';

/** Where input tables stand on a sheet, headings first. */
export function tablesOn(injector: Injector, sheet: Worksheet, unitId: string): readonly IRange[] {
  const known = new Set(Object.values(INPUT_TABLES).map(({ name }) => name));
  return areasOf(injector, sheet, unitId, (comment) => known.has(comment));
}

/** Where one input table stands on a sheet, headings first; undefined where it stands on another. */
export function tableOn(injector: Injector, sheet: Worksheet, unitId: string, name: string): IRange | undefined {
  return areasOf(injector, sheet, unitId, (comment) => comment === name)[0];
}

function areasOf(
  injector: Injector,
  sheet: Worksheet,
  unitId: string,
  wanted: (comment: string) => boolean,
): readonly IRange[] {
  return Object.values(injector.get(IDefinedNamesService).getDefinedNameMap(unitId) ?? {}).flatMap(
    ({ comment, formulaOrRefString: reference }) => {
      if (comment === undefined || !wanted(comment) || reference.includes('#REF!')) return [];
      const { sheetName, range } = deserializeRangeWithSheet(reference);
      return sheetName === sheet.getName() ? [range] : [];
    },
  );
}

/** Cells of a table's column on a sheet, below its heading. */
export interface ColumnOnSheet {
  has(row: number, column: number): boolean;
}

/** A table's column by the name that the plan has for it; undefined where it does not stand on the sheet. */
export function columnOf<C extends Columns>(
  injector: Injector,
  sheet: Worksheet,
  unitId: string,
  table: Table<C>,
  name: keyof C & string,
): ColumnOnSheet | undefined {
  for (const area of areasOf(injector, sheet, unitId, (comment) => comment === table.name)) {
    const { startRow, endRow, startColumn, endColumn } = area;
    const headings = Array.from(
      { length: endColumn - startColumn + 1 },
      (_, i) => sheet.getCellRaw(startRow, startColumn + i)?.v ?? null,
    );
    const at = columnsIn(table as Table<Columns>, headings).get(name);
    if (at === undefined) continue;
    return { has: (row, column) => column === startColumn + at && row > startRow && row <= endRow };
  }
  return undefined;
}
