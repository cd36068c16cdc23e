import type { Injector, IRange, Worksheet } from '@univerjs/core';
import { ISheetClipboardService } from '@univerjs/sheets-ui';
import { sheetOf, through } from './pairage-on-sheet';
import { isOfSums } from './rows-below';
import { tablesOn } from './tables-on-sheet';

/**
 * Refuses to paste more rows into an input table than it has room for: its sums and what stands below would be written over.
 * @param say told in a sentence what to do instead
 */
export function keepRoomBelow(injector: Injector, say: (sentence: string) => void): void {
  injector.get(ISheetClipboardService).addClipboardHook({
    id: 'room-below',
    // Before anything is written.
    priority: 2000,
    onBeforePaste: ({ unitId, subUnitId, range: { rows, cols } }) => {
      const sheet = sheetOf(injector, unitId, subUnitId);
      const [first, last] = [Math.min(...rows), Math.max(...rows)];
      if (!sheet || rows.length < 2) return true;
      for (const area of tablesOn(injector, sheet, unitId)) {
        const stop = rowInTheWay(sheet, area, first, last, cols);
        if (stop === undefined) continue;
        say(noRoom(last - first + 1, stop, last, { done: 'pasted', again: 'paste' }));
        return false;
      }
      return true;
    },
  });
}

/**
 * The row of sums, or the first below the table in which something stands, that a block pasted into the table would reach.
 * @param first,last rows of the block, and `columns` its columns
 */
export function rowInTheWay(
  sheet: Pick<Worksheet, 'getCellRaw'>,
  area: IRange,
  first: number,
  last: number,
  columns: readonly number[],
): number | undefined {
  const within = columns.some((column) => column >= area.startColumn && column <= area.endColumn);
  if (!within || first <= area.startRow || first > area.endRow) return undefined;
  const says = (row: number, column: number) => (sheet.getCellRaw(row, column)?.v ?? '') !== '';
  return through(first + 1, last).find((row) =>
    row <= area.endRow
      ? isOfSums(sheet.getCellRaw(row, area.startColumn))
      : through(area.startColumn, area.endColumn).some((column) => says(row, column)),
  );
}

/**
 * That rows were not written, and how many to insert first.
 * @param rows how many they are, `stop` the row in their way and `last` the last that they would reach
 */
export function noRoom(
  rows: number,
  stop: number,
  last: number,
  { done, again }: { readonly done: string; readonly again: string },
): string {
  const fit = rows === 1 ? 'does not fit' : 'do not fit';
  return `${counted(rows)} ${fit} above row ${stop + 1}, which would be written over: nothing is ${done}. Insert ${counted(last - stop + 1)} above it, then ${again} again.`;
}

function counted(rows: number): string {
  return rows === 1 ? '1 row' : `${rows} rows`;
}
