import type { IWorkbookData } from '@univerjs/core';
import { readDelimited, rowsForTable, type RowsForTable, textOf } from '../exchange/delimited';
import { valuesOnly } from '../exchange/xlsx/values-only';
import { writeBook } from '../exchange/xlsx/write';
import { bookOfGrid } from '../host/grid/book-of-grid';
import { gridOfBook } from '../host/grid/grid-of-book';
import type { GridHost } from '../host/grid/grid-host';
import { readBesidePage } from './read-beside-page';

/** Loaded when a workbook file is first opened or saved. */

/** The workbook as a file. @param only values, for programs that do not know the functions */
export function fileOf(snapshot: IWorkbookData, only: boolean): Uint8Array {
  const book = bookOfGrid(snapshot);
  return writeBook(only ? valuesOnly(book) : book);
}

/** A file that was read, as the grid opens it. */
export interface ReadFile {
  readonly workbook: IWorkbookData;
  /** What of it is not in the page, or was brought up to date. */
  readonly remarks: readonly string[];
}

/** Reads a file. @throws Error whose message says why it cannot be read */
export async function readFile(bytes: Uint8Array, name: string): Promise<ReadFile> {
  const { book, left, changed } = await readBesidePage(bytes);
  return {
    workbook: gridOfBook(book, name, 'workbook'),
    remarks: [...changed, ...left.map((what) => `Not in the page: ${what}.`)],
  };
}

/** Reads rows of another program (CSV, TSV) for one of the workbook's tables. @throws Error in words */
export async function readRows(bytes: Uint8Array, host: GridHost): Promise<RowsForTable> {
  return rowsForTable(readDelimited(textOf(bytes)), await host.tables());
}
