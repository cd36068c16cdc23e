import type { ICellData, IDisposable, Injector, IStyleData, Nullable } from '@univerjs/core';
import { InterceptorEffectEnum } from '@univerjs/core';
import { INTERCEPTOR_POINT, SheetInterceptorService } from '@univerjs/sheets';
import { ratesTable } from '../../tables/rates';
import { inRole, isPlanned, roleOf } from './look';
import { through } from './pairage-on-sheet';
import { tableOn } from './tables-on-sheet';

/** Before number formats are applied (10), and after looks of spilled tables (50), which examples never lie in. */
const priority = 40;

/**
 * Shows examples that the maker has made their own as any other input. What is shown follows from what the cells hold, so
 * that undo greys them again.
 */
export function lookOfExamples(injector: Injector): IDisposable {
  return injector.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    priority,
    effect: InterceptorEffectEnum.Style,
    handler: (cell, { rawData, worksheet, row, unitId }, next) => {
      if (!isExample(rawData)) return next(cell);
      const matrix = worksheet.getCellMatrix();
      const style = lookTypedOver(rawData, matrix.getRow(row));
      if (style) return next({ ...cell, s: style });
      // One row of costs that stands as it came may well be the maker's, as the note above the run has it too.
      const costs = tableOn(injector, worksheet, unitId, ratesTable.name);
      if (!costs || row <= costs.startRow || row > costs.endRow) return next(cell);
      const others = through(costs.startRow + 1, costs.endRow).filter((one) => one !== row);
      const alone = !others.some((one) => hasExamples(matrix.getRow(one)));
      return next(alone ? { ...cell, s: inRole('input', rawData.s) } : cell);
    },
  });
}

/** Whether a row stands as its example came. */
export function hasExamples(line: Nullable<Line>): boolean {
  return Object.values(line ?? {}).some((cell) => isExample(cell) && !lookTypedOver(cell, line));
}

/** Cells of a row, by their columns. */
export type Line = Readonly<Record<number, Nullable<ICellData>>>;

/**
 * Look of an example's cell whose row is the maker's own: one of its examples was typed or pasted over, or came from somewhere
 * else with an example's look. undefined where it is an example still, or never was one.
 * @param line the cells of its row
 */
export function lookTypedOver(cell: Nullable<ICellData>, line: Nullable<Line> = {}): IStyleData | undefined {
  if (!isExample(cell)) return undefined;
  const own = [cell, ...Object.values(line ?? {})].some((one) => isTypedOver(one) || isNoneButLooksSo(one));
  return own ? inRole('input', cell.s) : undefined;
}

function isExample(cell: Nullable<ICellData>): cell is ICellData & { s: string } {
  return isPlanned(cell?.s) && roleOf(cell.s) === 'example';
}

/** What an example's cell is to carry once a maker has pasted the very content of the example: it is one no more. */
export function customOnceOwn(cell: Nullable<ICellData>): ICellData['custom'] | undefined {
  if (cell?.custom?.['example'] === undefined) return undefined;
  const { example: _none, ...kept } = cell.custom;
  return Object.keys(kept).length > 0 ? kept : null;
}

function isNoneButLooksSo(cell: Nullable<ICellData>): boolean {
  return isExample(cell) && cell.custom?.['example'] === undefined;
}

/** Whether an example's cell holds something else now, or nothing. */
export function isTypedOver(cell: Nullable<ICellData>): boolean {
  const example: unknown = cell?.custom?.['example'];
  return example !== undefined && (typeof cell?.f === 'string' || String(cell?.v ?? '') !== String(example));
}
