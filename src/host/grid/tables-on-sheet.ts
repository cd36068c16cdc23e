import type { Injector, IRange, Worksheet } from '@univerjs/core';
import { deserializeRangeWithSheet, IDefinedNamesService } from '@univerjs/engine-formula';
import { INPUT_TABLES } from '../../tables/input-tables';

/** Where input tables stand on a sheet, headings first. */
export function tablesOn(injector: Injector, sheet: Worksheet, unitId: string): readonly IRange[] {
  const known = new Set(Object.values(INPUT_TABLES).map(({ name }) => name));
  return Object.values(injector.get(IDefinedNamesService).getDefinedNameMap(unitId) ?? {}).flatMap(
    ({ comment, formulaOrRefString: reference }) => {
      if (comment === undefined || !known.has(comment) || reference.includes('#REF!')) return [];
      const { sheetName, range } = deserializeRangeWithSheet(reference);
      return sheetName === sheet.getName() ? [range] : [];
    },
  );
}
