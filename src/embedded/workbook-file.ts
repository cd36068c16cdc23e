import type { IWorkbookData } from '@univerjs/core';
import { readDelimited, rowsForTable, type RowsForTable, textOf } from '../exchange/delimited';
import { valuesOnly } from '../exchange/xlsx/values-only';
import { writeBook } from '../exchange/xlsx/write';
import { bookOfGrid } from '../host/grid/book-of-grid';
import type { GridHost } from '../host/grid/grid-host';

/** Loaded when a workbook is first saved as a file, or rows of another program are read. */

/** The workbook as a file. @param only values, for programs that do not know the functions */
export function fileOf(snapshot: IWorkbookData, only: boolean): Uint8Array {
  const book = bookOfGrid(snapshot);
  return writeBook(only ? valuesOnly(book) : book);
}

/** Reads rows of another program (CSV, TSV) for one of the workbook's tables. @throws Error in words */
export async function readRows(bytes: Uint8Array, host: GridHost): Promise<RowsForTable> {
  return rowsForTable(readDelimited(textOf(bytes)), await host.tables());
}
