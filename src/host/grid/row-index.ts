import { CELL_INVERTED_INDEX_CACHE } from '@univerjs/engine-formula';

/** Of each value of each column that was worked out, the rows in which it stands: one for all of a grid's workbooks. */
export type RowIndex = typeof CELL_INVERTED_INDEX_CACHE;
type Column = NonNullable<ReturnType<RowIndex['getCellValuePositions']>>;

/**
 * Lets the grid note at once in which row a value has come to stand. By itself it goes through all values of the column,
 * in case the row stood under another before: 5,000 different numbers that a table spills are 12 million looks.
 */
export function noteRowsAtOnce(index: RowIndex = CELL_INVERTED_INDEX_CACHE): void {
  const noted = new WeakMap<Column, Set<number>>();
  const note = (Object.getPrototypeOf(index) as RowIndex).set;
  index.set = (unit, sheet, column, value, row, movedHere = false) => {
    const before = index.getCellValuePositions(unit, sheet, column);
    const isNew = !before || noted.get(before)?.has(row) === false;
    const mayMove = movedHere && !(isNew && index.shouldContinueBuildingCache(unit, sheet, column, row));
    note.call(index, unit, sheet, column, value, row, mayMove);
    const now = index.getCellValuePositions(unit, sheet, column);
    if (!now) return;
    if (now !== before) noted.set(now, new Set());
    noted.get(now)?.add(row);
  };
}
