import { CellValueType, type IDisposable, type Injector, InterceptorEffectEnum, WrapStrategy } from '@univerjs/core';
import { INTERCEPTOR_POINT, SheetInterceptorService } from '@univerjs/sheets';
import type { GridHost } from '../host/grid/grid-host';
import { colours, styleOf } from '../host/grid/look';
import { resultLook } from '../host/grid/result-look';
import { problemOf } from '../host/problems';

/** After the looks of spilled tables (50) and of examples (40), before number formats are applied (10). */
const priority = 30;

/** Across the blank cells of the table that is not there. */
const style = { ...styleOf({ role: 'note', align: 'left' }), cl: { rgb: colours.ink }, tb: WrapStrategy.OVERFLOW };

/** Shows in the place of a planned table that could not be worked out why, where a code would stand; its value stays the code. */
export function tellWhyInCells(injector: Injector, host: GridHost): IDisposable {
  return injector.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    priority,
    effect: InterceptorEffectEnum.Style | InterceptorEffectEnum.Value,
    handler: (cell, { rawData, worksheet, row, col }, next) => {
      const code = rawData?.v;
      const failed = problemOf(code) !== undefined && resultLook(rawData?.custom);
      const why = failed ? host.problemAt(worksheet, row, col) : undefined;
      if (why === undefined) return next(cell);
      const said = code === '#GETTING_DATA' ? why : `⊠ ${why}`;
      return next({ ...cell, v: said, t: CellValueType.STRING, s: style });
    },
  });
}
