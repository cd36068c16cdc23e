import { type PlaceWords, placeInWords } from '../core/problem';
import type { Cells } from '../tables/cell';
import { cellWords, type StandingTable } from '../tables/cell-words';
import { INPUT_TABLES } from '../tables/input-tables';

/** A range as hosts write its address: the sheet, in quotes where it is not plain, and its corners. */
const ADDRESS = /^(?:'((?:[^']|'')+)'|([^'!]+))!\$?([A-Z]{1,3})\$?(\d{1,7})(?::\$?([A-Z]{1,3})\$?(\d{1,7}))?$/i;

/**
 * Words for places in the tables that a plan function was given: the sheet's own cells where the host tells the addresses
 * of arguments, which it need not.
 * @param tables in the order of INPUT_TABLES
 * @param addresses of the same tables, as the host tells them
 */
export function argumentCells(
  tables: readonly (Cells | null | undefined)[],
  addresses: readonly unknown[] | undefined,
): PlaceWords {
  if (!addresses) return placeInWords;
  const standing = Object.values(INPUT_TABLES).flatMap(({ name }, at): [string, StandingTable][] => {
    const cells = tables[at];
    const found = cells && standingAt(addresses[at], cells);
    return found ? [[name, found]] : [];
  });
  return cellWords(new Map(standing));
}

/** Addresses of arguments, where the host hands them over behind the last of them. */
export function addressesIn(invocation: unknown): readonly unknown[] | undefined {
  const told = (invocation as Partial<CustomFunctions.Invocation> | null | undefined)?.parameterAddresses;
  return Array.isArray(told) ? told : undefined;
}

/** undefined for an address that is none, or not of these cells. */
function standingAt(address: unknown, cells: Cells): StandingTable | undefined {
  const found = typeof address === 'string' ? ADDRESS.exec(address.trim()) : null;
  if (!found) return undefined;
  const [, quoted, plain, left = '', top, right = left, bottom = top] = found;
  const [row, column] = [Number(top) - 1, columnOf(left)];
  const headings = cells[0] ?? [];
  const same = Number(bottom) - row === cells.length && columnOf(right) - column + 1 === headings.length;
  // The file's name may stand before the sheet's.
  const sheet = (quoted?.replaceAll("''", "'") ?? plain ?? '').replace(/^.*\]/, '');
  return same ? { sheet, row, column, headings } : undefined;
}

/** A is 0, Z 25, AA 26. */
function columnOf(letters: string): number {
  return [...letters.toUpperCase()].reduce((sum, letter) => 26 * sum + letter.charCodeAt(0) - 64, 0) - 1;
}
