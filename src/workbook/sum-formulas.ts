import { columnLetters } from '../tables/cell-address';
import { readHeadings } from '../tables/headings';
import { pairageTable } from '../tables/pairage';
import { headsSums } from '../tables/sums';
import type { Cells } from '../tables/cell';

/**
 * Formulas of the sums of the pairage: from beside the first to before the last, so that whatever is inserted between them
 * is summed, at the edges too. INDEX reads no cell but those it ends at, hence no circle. Rows and columns count from 0.
 */

/** Of a row, between a column and that of the sums; no pairs are left blank, never 0. */
export function sumAcross(row: number, from: number, to: number): string {
  const range = `$${columnLetters(from)}${row + 1}:${columnLetters(to)}${row + 1}`;
  const pairs = `SUM(INDEX(${range},2):INDEX(${range},COLUMNS(${range})-1))`;
  return `=IF(${pairs}=0,"",${pairs})`;
}

/** Of a column, between the headings and the row of the sums. */
export function sumDown(column: number, from: number, to: number): string {
  const range = `${columnLetters(column)}$${from + 1}:${columnLetters(column)}${to + 1}`;
  return `=SUM(INDEX(${range},2):INDEX(${range},ROWS(${range})-1))`;
}

/** Of all rows and sizes: between the headings and the row of the sums, a column and that of the sums. */
export function sumOfAll(top: number, row: number, before: number, last: number): string {
  const block = `$${columnLetters(before)}$${top + 1}:${columnLetters(last)}${row + 1}`;
  const end = `INDEX(${block},ROWS(${block})-1,COLUMNS(${block})-1)`;
  return `=SUM(INDEX(${block},2,2):${end})`;
}

/**
 * The formula of a sum that is missing from the pairage, wherever its columns have been put.
 * @param cells of the table, headings first
 * @param place of its first cell on the sheet
 * @param sum its cell within the table
 * @returns undefined where the table has no column before its sizes to sum from
 */
export function missingSum(
  cells: Cells,
  place: { readonly row: number; readonly column: number },
  sum: { readonly row: number; readonly column: number },
): string | undefined {
  const { at, sizes } = readHeadings(pairageTable, cells[0] ?? []);
  const [sums, code] = [at.get('total'), at.get('style')];
  const first = Math.min(...sizes.map(({ column }) => column));
  if (sums === undefined || code === undefined || !(first <= sums)) return undefined;
  const before = place.column + first - 1;
  if (before < 0) return undefined;
  const [row, column] = [place.row + sum.row, place.column + sum.column];
  const ofSizes = headsSums(String(cells[sum.row]?.[code] ?? ''));
  if (!ofSizes) return sumAcross(row, before, column);
  return sum.column === sums ? sumOfAll(place.row, row, before, column) : sumDown(column, place.row, row);
}
