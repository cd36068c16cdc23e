import type { Injector, IRange } from '@univerjs/core';
import { AutoFillService } from '@univerjs/sheets';
import { noRoom, rowInTheWay } from './paste-room';
import { sheetOf, through } from './pairage-on-sheet';
import { tablesOn } from './tables-on-sheet';

/**
 * Refuses to fill more rows downwards, by the handle or by keys, than an input table has room for: its sums and what stands
 * below would be written over.
 * @param say told in a sentence what to do instead
 */
export function keepRoomForFilling(say: (sentence: string) => void): void {
  const service = AutoFillService.prototype;
  const fill = service.triggerAutoFill;
  if (typeof fill !== 'function') throw new Error('The grid fills cells otherwise than it did.');
  service.triggerAutoFill = async function (unitId, subUnitId, source, selection, way) {
    const injector = (this as unknown as { readonly _injector: Injector })._injector;
    const stop = rowInTheWayOf(injector, { unitId, subUnitId }, source, selection);
    if (stop === undefined) return fill.call(this, unitId, subUnitId, source, selection, way);
    const rows = selection.endRow - source.endRow;
    say(noRoom(rows, stop, selection.endRow, { done: 'filled', again: 'fill' }));
    return false;
  };
}

function rowInTheWayOf(
  injector: Injector,
  { unitId, subUnitId }: { readonly unitId: string; readonly subUnitId: string },
  source: IRange,
  { endRow, startColumn, endColumn }: IRange,
): number | undefined {
  const sheet = sheetOf(injector, unitId, subUnitId);
  if (!sheet || endRow <= source.endRow) return undefined;
  for (const area of tablesOn(injector, sheet, unitId)) {
    const stop = rowInTheWay(sheet, area, source.endRow, endRow, through(startColumn, endColumn));
    if (stop !== undefined) return stop;
  }
  return undefined;
}
