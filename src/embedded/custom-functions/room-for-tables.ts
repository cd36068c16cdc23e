import type { CellRange } from './vacated';

/** How far a sheet reaches: rows and columns. */
export interface SheetSize {
  readonly rows: number;
  readonly columns: number;
}

/** A sheet grows no further than workbook files go. */
const MOST: SheetSize = { rows: 1_048_576, columns: 16_384 };
/** What is left beyond a table that a sheet grew for, so that not every further row lets it grow anew. */
const BEYOND: SheetSize = { rows: 60, columns: 8 };

/** The size that a sheet has to have for its tables; undefined where it holds them, or no sheet could. */
export function sizeForTables(size: SheetSize, tables: readonly CellRange[]): SheetSize | undefined {
  let { rows, columns } = size;
  for (const { endRow, endColumn } of tables) {
    if (endRow >= MOST.rows || endColumn >= MOST.columns) continue;
    if (endRow >= rows) rows = Math.min(MOST.rows, endRow + 1 + BEYOND.rows);
    if (endColumn >= columns) columns = Math.min(MOST.columns, endColumn + 1 + BEYOND.columns);
  }
  return rows === size.rows && columns === size.columns ? undefined : { rows, columns };
}
