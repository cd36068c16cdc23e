import { CellValueType, type IDisposable, type Injector, toDisposable } from '@univerjs/core';
import { AFTER_CELL_EDIT, SheetInterceptorService } from '@univerjs/sheets';
import { numberMeant } from '../../tables/cell';

/** Before the grid reads what was typed, which knows the point alone as the decimal mark. */
const priority = 900;

/** One comma and other than three figures behind it: a decimal mark to everybody. */
const DECIMAL_COMMA = /^[+-]?\d*,(?:\d{1,2}|\d{4,})$/;

/** Takes a number that is typed with a decimal comma for a number. */
export function numbersAsTyped(injector: Injector): IDisposable {
  const intercepted = injector.get(SheetInterceptorService).writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority,
    handler: (cell, _location, next) => {
      const typed = cell?.v;
      if (!cell || typeof typed !== 'string' || cell.f || cell.p || !DECIMAL_COMMA.test(typed.trim()))
        return next(cell);
      const number = numberMeant(typed);
      return next(typeof number === 'number' ? { ...cell, v: number, t: CellValueType.NUMBER } : cell);
    },
  });
  return toDisposable(intercepted);
}
