import type { IUnitRange } from '@univerjs/core';
import type { ISetArrayFormulaDataMutationParams } from '@univerjs/engine-formula';
import { type GridFormulas, rangeOf } from './grid-formulas';
import { cellKey, type GridCell } from './messages';
import { sizeForTables } from './room-for-tables';
import { type CellRange, vacated } from './vacated';

/** A table that spills over cells, and the cell whose formula it is of. */
interface Spilled {
  readonly cell: GridCell;
  readonly range: CellRange;
}

/** The tables that spill, remembered to tell which cells a table has left. */
export class SpilledTables {
  private before: ReadonlyMap<string, Spilled> = new Map();

  constructor(private readonly formulas: GridFormulas) {}

  /**
   * Has each sheet reach as far as its tables want to, since one that ends too early shows #SPILL! over cells that are empty.
   * @returns the cells whose tables had no room, to be worked out again
   */
  grown(params: ISetArrayFormulaDataMutationParams): IUnitRange[] {
    const tables = spilledIn(params);
    const sheets = new Map(tables.map(({ cell }) => [`${cell.unitId} ${cell.sheetId}`, cell]));
    return [...sheets.values()].flatMap((sheet) => {
      const own = tables.filter(({ cell }) => cell.unitId === sheet.unitId && cell.sheetId === sheet.sheetId);
      const ranges = own.map(({ range }) => range);
      const before = this.formulas.size(sheet);
      const size = before && sizeForTables(before, ranges);
      if (!size) return [];
      this.formulas.enlarge(sheet, size);
      const hadNoRoom = ({ range }: Spilled) => range.endRow >= before.rows || range.endColumn >= before.columns;
      return own.filter(hadNoRoom).map(({ cell }) => rangeOf(cell));
    });
  }

  /** The cells that tables have left since they were told last, on sheets that are still there. */
  left(params: ISetArrayFormulaDataMutationParams): IUnitRange[] {
    const { before } = this;
    const now = new Map(spilledIn(params).map((spilled) => [cellKey(spilled.cell), spilled]));
    this.before = now;
    return vacated(rangesOf(before), rangesOf(now)).flatMap(({ key, range }) => {
      const cell = before.get(key)?.cell;
      return cell && this.formulas.sheet(cell) ? [{ unitId: cell.unitId, sheetId: cell.sheetId, range }] : [];
    });
  }
}

function rangesOf(spilled: ReadonlyMap<string, Spilled>): ReadonlyMap<string, CellRange> {
  return new Map([...spilled].map(([key, { range }]) => [key, range]));
}

function spilledIn({ arrayFormulaRange }: ISetArrayFormulaDataMutationParams): Spilled[] {
  const found: Spilled[] = [];
  for (const [unitId, sheets] of Object.entries(arrayFormulaRange ?? {})) {
    for (const [sheetId, rows] of Object.entries(sheets ?? {})) {
      for (const [row, columns] of Object.entries(rows ?? {})) {
        for (const [column, range] of Object.entries(columns as Record<string, CellRange>)) {
          const { startRow, startColumn, endRow, endColumn } = range;
          found.push({
            cell: { unitId, sheetId, row: Number(row), column: Number(column) },
            range: { startRow, startColumn, endRow, endColumn },
          });
        }
      }
    }
  }
  return found;
}
