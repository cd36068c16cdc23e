import type { ICellData, IObjectMatrixPrimitiveType, IWorkbookData, Nullable } from '@univerjs/core';
import { deserializeRangeWithSheet } from '@univerjs/engine-formula';
import { columnsIn } from '../../tables/headings';
import { INPUT_TABLES } from '../../tables/input-tables';
import { namesIn } from './snapshot';

/** A workbook in which no pair is cut: what Pairage has under Cut and Stock cut is blank. */
export function withNoneCut(workbook: IWorkbookData): IWorkbookData {
  const reference = Object.values(namesIn(workbook)).find(({ comment }) => comment === INPUT_TABLES.pairage.name);
  if (!reference || reference.formulaOrRefString.includes('#REF!')) return workbook;
  const { sheetName, range } = deserializeRangeWithSheet(reference.formulaOrRefString);
  const [id, sheet] = Object.entries(workbook.sheets).find(([, { name }]) => name === sheetName) ?? [];
  if (id === undefined || !sheet?.cellData) return workbook;
  const rows = sheet.cellData as Record<number, Record<number, Nullable<ICellData>>>;
  const { startRow, endRow, startColumn, endColumn } = range;
  const headings = Array.from({ length: endColumn - startColumn + 1 }, (_, i) => {
    return rows[startRow]?.[startColumn + i]?.v ?? null;
  });
  const known = columnsIn(INPUT_TABLES.pairage, headings);
  const columns = [known.get('cut'), known.get('stockCut')].flatMap((at) => (at === undefined ? [] : startColumn + at));
  const cellData = Object.fromEntries(
    Object.entries(rows).map(([row, cells]) => {
      const below = Number(row) > startRow && Number(row) <= endRow;
      return [row, below ? columns.reduce(withBlank, cells) : cells];
    }),
  ) as IObjectMatrixPrimitiveType<ICellData>;
  return { ...workbook, sheets: { ...workbook.sheets, [id]: { ...sheet, cellData } } };
}

/** Cells of a row with one that holds nothing but its look. */
function withBlank(cells: Record<number, Nullable<ICellData>>, column: number): Record<number, Nullable<ICellData>> {
  const cell = cells[column];
  return cell ? { ...cells, [column]: { s: cell.s ?? null } } : cells;
}
