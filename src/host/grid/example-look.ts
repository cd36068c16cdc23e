import {
  type ICellData,
  type IDisposable,
  type Injector,
  InterceptorEffectEnum,
  type IStyleData,
  type Nullable,
} from '@univerjs/core';
import { INTERCEPTOR_POINT, SheetInterceptorService } from '@univerjs/sheets';
import { inRole } from './look';

/** Before number formats are applied (10), and after looks of spilled tables (50), which examples never lie in. */
const priority = 40;

/**
 * Shows an example that the maker has typed over as any other input. What is shown follows from what the cell holds, so
 * that undo greys it again.
 */
export function lookOfExamples(injector: Injector): IDisposable {
  return injector.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    priority,
    effect: InterceptorEffectEnum.Style,
    handler: (cell, location, next) => {
      const style = lookTypedOver(location.rawData);
      return next(style ? { ...cell, s: style } : cell);
    },
  });
}

/** Look of a cell whose example was typed over; undefined where it still holds it, or never held one. */
export function lookTypedOver(cell: Nullable<ICellData>): IStyleData | undefined {
  const example = cell?.custom?.['example'];
  if (example === undefined || typeof cell?.s !== 'string') return undefined;
  const same = cell.f === undefined && String(cell.v ?? '') === String(example);
  return same ? undefined : inRole('input', cell.s);
}
