import { CellValueType, type IDisposable, type Injector, toDisposable } from '@univerjs/core';
import { AFTER_CELL_EDIT, SheetInterceptorService } from '@univerjs/sheets';
import { dayIn, isoOf, yearOfMost } from '../../tables/day';
import { pairageOn, through } from './pairage-on-sheet';

/** Before the grid makes a day of what was typed, which would take a day without a year for one of this year. */
const priority = 1000;

/** Takes a day that is typed under Due for one of the run's year where it has none, and whichever way it is written. */
export function daysAsTyped(injector: Injector): IDisposable {
  const intercepted = injector.get(SheetInterceptorService).writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority,
    handler: (cell, location, next) => {
      const typed = cell?.v;
      if (!cell || typeof typed !== 'string' || cell.f || cell.p) return next(cell);
      const { worksheet, unitId, row, col } = location;
      const table = pairageOn(injector, worksheet, unitId);
      const due = table?.due;
      if (!table || due !== col || row <= table.area.startRow || row > table.area.endRow) return next(cell);
      const others = through(table.area.startRow + 1, table.area.endRow).filter((one) => one !== row);
      const day = dayIn(typed, yearOfMost(others.map((one) => worksheet.getCellRaw(one, due)?.v)));
      if (!day) return next(cell);
      // What may be either of two days stays as it was typed: the reader asks.
      return next('day' in day ? { ...cell, v: isoOf(day.day) } : { ...cell, t: CellValueType.FORCE_STRING });
    },
  });
  return toDisposable(intercepted);
}
