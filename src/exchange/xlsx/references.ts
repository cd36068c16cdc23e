import { cellAddress } from '../../tables/cell-address';
import type { Area } from '../../workbook/workbook';
import { MOST } from './book';
import type { Attributes } from './read-xml';

/** Row and column of a cell's address such as F5; undefined for anything else, and beyond the largest sheet. */
export function cellAt(address: string | undefined): { readonly row: number; readonly column: number } | undefined {
  if (address === undefined || address.length > 16) return undefined;
  let [column, row, at] = [0, 0, 0];
  if (address.charCodeAt(at) === 36) at++;
  for (; at < address.length; at++) {
    const letter = address.charCodeAt(at) & ~32;
    if (letter < 65 || letter > 90) break;
    column = column * 26 + letter - 64;
  }
  if (address.charCodeAt(at) === 36) at++;
  const digits = at;
  for (; at < address.length; at++) {
    const digit = address.charCodeAt(at) - 48;
    if (digit < 0 || digit > 9) return undefined;
    row = row * 10 + digit;
  }
  if (digits === at || column < 1 || row < 1 || column > MOST.columns || row > MOST.rows) return undefined;
  return { row: row - 1, column: column - 1 };
}

/** The area of a reference such as A1:B2 or F5. */
export function areaAt(reference: string | undefined): Area | undefined {
  const [from, to = from] = reference?.split(':') ?? [];
  const [first, last] = [cellAt(from), cellAt(to)];
  if (!first || !last) return undefined;
  const [row, column] = [Math.min(first.row, last.row), Math.min(first.column, last.column)];
  return {
    row,
    column,
    rows: Math.max(first.row, last.row) - row + 1,
    columns: Math.max(first.column, last.column) - column + 1,
  };
}

/** The areas of a list of references parted by blanks, as rules and conditional formats have it. */
export function areasAt(references: string | undefined): readonly Area[] {
  return (references ?? '').split(/\s+/).flatMap((one) => areaAt(one) ?? []);
}

/** An area as a reference: of one cell, its address. */
export function areaText({ row, column, rows, columns }: Area): string {
  const first = cellAddress(row, column);
  return rows === 1 && columns === 1 ? first : `${first}:${cellAddress(row + rows - 1, column + columns - 1)}`;
}

/** Where a cell of a file is: by its address, else after the one before it. */
export function placeOf({ r }: Attributes, row: number, before: number) {
  return cellAt(r) ?? { row, column: before + 1 };
}
