import { CellValueType, type ICellData, type IRange, type Nullable, type Worksheet } from '@univerjs/core';
import type { FormulaDataModel } from '@univerjs/engine-formula';
import { problemOf } from '../problems';

export type CellValue = string | number | boolean | null;

/** Reads cells of a sheet as the maker sees them: a cell that a table spills over holds that table's value. */
export class SheetCells {
  constructor(
    private readonly sheet: Worksheet,
    private readonly formulas: FormulaDataModel,
  ) {}

  /** null for a blank cell; an error's code as text. */
  value(row: number, column: number): CellValue {
    const own = this.sheet.getCellRaw(row, column);
    const richText = own?.p?.body?.dataStream;
    if (richText !== undefined) return richText.replace(/\r\n$/, '').replaceAll('\r', '\n');
    return scalar(isBlank(own) ? this.spilled(row, column) : own);
  }

  /** Whether what stands in a cell is what a formula comes to, there or elsewhere. */
  isWorkedOut(row: number, column: number): boolean {
    const own = this.sheet.getCellRaw(row, column);
    return Boolean(own?.f ?? own?.si) || (isBlank(own) && this.spilled(row, column) !== undefined);
  }

  /** What the cell shows in its number format. */
  text(row: number, column: number): string {
    const code = this.sheet.getCellRaw(row, column)?.v;
    // For the eye, a sentence may stand in its place.
    if (typeof code === 'string' && problemOf(code) !== undefined) return code;
    const shown = this.sheet.getCell(row, column);
    if (shown?.p) return String(this.value(row, column) ?? '');
    if (shown?.t === CellValueType.BOOLEAN) return shown.v ? 'TRUE' : 'FALSE';
    return shown?.v === null || shown?.v === undefined ? '' : String(shown.v);
  }

  formula(row: number, column: number): string | undefined {
    const sheet = this.sheet;
    return this.formulas.getFormulaStringByCell(row, column, sheet.getSheetId(), sheet.getUnitId()) ?? undefined;
  }

  /** Where a table begins that spills over a cell from another, with its formula. */
  spilledFrom(row: number, column: number): { row: number; column: number; formula: string } | undefined {
    const ranges = this.formulas.getArrayFormulaRange()[this.sheet.getUnitId()]?.[this.sheet.getSheetId()];
    for (const [startRow, columns] of Object.entries(ranges ?? {})) {
      for (const [startColumn, range] of Object.entries(columns as Record<string, Nullable<IRange>>)) {
        const anchor = { row: Number(startRow), column: Number(startColumn) };
        if (!range || (anchor.row === row && anchor.column === column)) continue;
        if (row < anchor.row || row > range.endRow || column < anchor.column || column > range.endColumn) continue;
        const formula = this.formula(anchor.row, anchor.column);
        if (formula !== undefined) return { ...anchor, formula };
      }
    }
    return undefined;
  }

  private spilled(row: number, column: number): Nullable<ICellData> {
    return this.formulas.getArrayFormulaCellData()[this.sheet.getUnitId()]?.[this.sheet.getSheetId()]?.[row]?.[column];
  }
}

function isBlank(cell: Nullable<ICellData>): boolean {
  return cell?.v === null || cell?.v === undefined;
}

function scalar(cell: Nullable<ICellData>): CellValue {
  const value = cell?.v;
  if (value === null || value === undefined || value === '') return null;
  return cell?.t === CellValueType.BOOLEAN ? Boolean(Number(value)) || value === true : value;
}
