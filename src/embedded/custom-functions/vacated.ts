/** Cells of one sheet, both corners included. */
export interface CellRange {
  readonly startRow: number;
  readonly startColumn: number;
  readonly endRow: number;
  readonly endColumn: number;
}

/** Areas that formulas spill over, by the key of the cell that holds the formula. */
export type Spills = ReadonlyMap<string, CellRange>;

/**
 * The parts of spill areas that are no longer covered by the same formula's: all but its own cell where the formula is
 * gone or answers with one value, else the rows below and the columns to the right of the new area.
 */
export function vacated(before: Spills, after: Spills): { readonly key: string; readonly range: CellRange }[] {
  const left: { key: string; range: CellRange }[] = [];
  for (const [key, was] of before) {
    const { startRow, startColumn, endRow, endColumn } = was;
    const now = after.get(key) ?? { startRow, startColumn, endRow: startRow, endColumn: startColumn };
    if (now.startRow !== startRow || now.startColumn !== startColumn) {
      left.push({ key, range: was });
      continue;
    }
    if (now.endRow < endRow) left.push({ key, range: { ...was, startRow: now.endRow + 1 } });
    if (now.endColumn < endColumn) left.push({ key, range: { ...was, startColumn: now.endColumn + 1 } });
  }
  return left;
}
