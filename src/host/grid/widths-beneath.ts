import type { IRange } from '@univerjs/core';

/** Columns that are inserted, counted from 0, both included. */
type Inserted = Pick<IRange, 'startColumn' | 'endColumn'>;

/**
 * Widths of columns once some were inserted above tables whose columns stay where they are: through the last of these the
 * sheet keeps its widths by place, and as many columns as came in stand narrow behind it.
 * @param width of a column before, px
 * @param last column of the tables beneath
 * @param narrow width of a new column, px
 * @returns by column, those that change
 */
export function widthsBeneath(
  { startColumn, endColumn }: Inserted,
  width: (column: number) => number,
  last: number,
  narrow: number,
): Readonly<Record<number, number>> {
  const count = endColumn - startColumn + 1;
  const widths: Record<number, number> = {};
  for (let column = startColumn; column <= Math.max(last, startColumn - 1) + count; column++) {
    widths[column] = column <= last ? width(column) : narrow;
  }
  return widths;
}
