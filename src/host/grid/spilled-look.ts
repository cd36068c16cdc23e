import type { ICellData, IDisposable, Injector, IStyleData, Nullable } from '@univerjs/core';
import { InterceptorEffectEnum } from '@univerjs/core';
import { FormulaDataModel } from '@univerjs/engine-formula';
import { INTERCEPTOR_POINT, type ISheetLocation, SheetInterceptorService } from '@univerjs/sheets';
import { isPlanned } from './look';
import { problemOf } from '../problems';
import { resultLook, spilledStyle } from './result-look';

/** After the values of spilled cells are known (100) and before number formats are applied (10). */
const priority = 50;

/** Into so many columns beside a table its words may run on. */
const MOST_OVER = 8;

interface Spill {
  readonly startRow: number;
  readonly startColumn: number;
  readonly endRow: number;
  readonly endColumn: number;
}

/** Gives the cells that a planned table has filled their look, however large the table is now. */
export function lookAfterSpills(injector: Injector): IDisposable {
  const formulas = injector.get(FormulaDataModel);
  return injector.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    priority,
    effect: InterceptorEffectEnum.Style | InterceptorEffectEnum.Value,
    handler: (cell, location, next) => {
      const style = styleAt(formulas, location);
      if (!style) return next(cell);
      // The maker's own style of a cell goes before the table's; the planned style of its first cell does not.
      const own = location.rawData?.s;
      const kept = isPlanned(own) ? undefined : location.workbook.getStyles().get(own);
      return next({ ...cell, s: kept ? { ...style, ...kept } : style });
    },
  });
}

function styleAt(formulas: FormulaDataModel, location: ISheetLocation): IStyleData | undefined {
  const { unitId, subUnitId, row, col, worksheet } = location;
  const rows = formulas.getArrayFormulaRange()[unitId]?.[subUnitId];
  if (!rows) return undefined;
  for (const [anchorRow, columns] of Object.entries(rows)) {
    if (Number(anchorRow) > row) continue;
    for (const [anchorColumn, spill] of Object.entries(columns as Record<string, Nullable<Spill>>)) {
      if (!spill || row > spill.endRow || col < spill.startColumn || col > spill.endColumn + MOST_OVER) continue;
      const anchor: Nullable<ICellData> = worksheet.getCellRaw(Number(anchorRow), Number(anchorColumn));
      const look = resultLook(anchor?.custom);
      if (!look || problemOf(anchor?.v) !== undefined || col > spill.endColumn + (look.over ?? 0)) continue;
      const column = Math.min(col, spill.endColumn) - spill.startColumn;
      return spilledStyle(look, row - spill.startRow, column, spill.endRow - spill.startRow + 1);
    }
  }
  return undefined;
}
