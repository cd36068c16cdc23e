import { BooleanNumber, type IWorksheetData } from '@univerjs/core';
import { columnLetters } from '../../tables/cell-address';
import { sheetInFormula } from '../../workbook/address';

/** Pixels of a sheet that are still legible on one A4 page across: letters of 11 points print as 6.6. */
const WIDEST = 1750;

/** What a sheet's titles and widths are read from. */
type Sheet = Pick<Partial<IWorksheetData>, 'name' | 'columnData' | 'defaultColumnWidth' | 'freeze'>;

/**
 * How a sheet of ours prints: A4 across, as many pages wide as keep it legible, each with the sheet's first columns.
 * @param columns how many hold something
 */
export function printedSheet(
  sheet: Sheet,
  columns: number,
): { readonly pageSetUpPr: string; readonly pageSetup: string } {
  const repeated = widthOf(sheet, frozenColumns(sheet));
  const pages = Math.max(1, Math.ceil((widthOf(sheet, columns) - repeated) / Math.max(WIDEST - repeated, 1)));
  const wide = pages > 1 ? ` fitToWidth="${pages}"` : '';
  return {
    pageSetUpPr: '<pageSetUpPr fitToPage="1"/>',
    pageSetup: `<pageSetup paperSize="9" orientation="landscape"${wide} fitToHeight="0"/>`,
  };
}

/** The rows and columns that stand on each of its pages, as a name of the file says it; undefined where there are none. */
export function printedTitles(sheet: Sheet): string | undefined {
  const rows = sheet.freeze?.ySplit ?? 0;
  const columns = frozenColumns(sheet);
  const on = `${sheetInFormula(sheet.name ?? '')}!`;
  const parts = [
    ...(columns > 0 ? [`${on}$A:$${columnLetters(columns - 1)}`] : []),
    ...(rows > 0 ? [`${on}$1:$${rows}`] : []),
  ];
  return parts.length > 0 ? parts.join(',') : undefined;
}

function frozenColumns({ freeze }: Sheet): number {
  return Math.max(0, freeze?.xSplit ?? 0);
}

function widthOf({ columnData = {}, defaultColumnWidth = 0 }: Sheet, columns: number): number {
  let width = 0;
  for (let column = 0; column < columns; column++) {
    const { w = defaultColumnWidth, hd } = columnData[column] ?? {};
    if (hd !== BooleanNumber.TRUE) width += w;
  }
  return width;
}
