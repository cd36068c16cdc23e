/** A cell by its row and column, from 0. */
export type Spot = readonly [row: number, column: number];

/**
 * The last of the filled cells of a row, or the corner of all rows and columns that have any; where none is, the cell
 * itself, or the sheet's first.
 */
export function lastFilled(filled: Iterable<Spot>, [row, column]: Spot, of: 'row' | 'sheet'): Spot {
  let [lastRow, lastColumn] = [-1, -1];
  for (const [r, c] of filled) {
    if (of === 'row' && r !== row) continue;
    [lastRow, lastColumn] = [Math.max(lastRow, r), Math.max(lastColumn, c)];
  }
  if (lastRow >= 0) return [lastRow, lastColumn];
  return of === 'row' ? [row, column] : [0, 0];
}
