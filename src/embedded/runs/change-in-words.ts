import type { ICellData, IWorkbookData, IWorksheetData } from '@univerjs/core';
import { enteredIn } from '../../host/grid/as-entered';
import { cellAddress } from '../../tables/cell-address';
import { counted } from '../../tables/counted';

/** So many sheets are named, and so many letters of what stands in a cell are shown. */
const [SHEETS, LETTERS] = [3, 24];

type Sheet = Partial<IWorksheetData>;
type Cells = Readonly<Record<number, Readonly<Record<number, ICellData>>>>;

/** What was entered in a cell, before and after; undefined where it was blank. */
interface CellChange {
  readonly row: number;
  readonly column: number;
  readonly was: unknown;
  readonly is: unknown;
}

/** What somebody entered between two states of a workbook, such as "Pairage D7: 4 → 6"; undefined where it is nothing. */
export function changeInWords(before: IWorkbookData, after: IWorkbookData): string | undefined {
  const left = new Map(before.sheetOrder.map((id) => [id, before.sheets[id] ?? {}]));
  const words = after.sheetOrder.flatMap((id): string[] => {
    const is = after.sheets[id] ?? {};
    // A workbook that was put in place of another has sheets of the same names and other ids.
    const key = left.has(id) ? id : [...left].find(([, { name }]) => name === is.name)?.[0];
    const was = key === undefined ? undefined : left.get(key);
    if (key === undefined || !was) return [`${is.name} added`];
    left.delete(key);
    return sheetInWords(was, is);
  });
  words.push(...[...left.values()].map(({ name }) => `${name} removed`));
  if (words.length === 0) return undefined;
  const more = words.length - SHEETS;
  return more > 0
    ? `${words.slice(0, SHEETS).join(', ')} and ${more} more ${more === 1 ? 'sheet' : 'sheets'}`
    : words.join(', ');
}

function sheetInWords(was: Sheet, is: Sheet): string[] {
  const renamed = was.name === is.name ? [] : [`${was.name} is called ${is.name}`];
  const [old, now] = [(was.cellData ?? {}) as Cells, (is.cellData ?? {}) as Cells];
  const rows = moved((is.rowCount ?? 0) - (was.rowCount ?? 0), rowsOf(old), rowsOf(now));
  const columns = moved((is.columnCount ?? 0) - (was.columnCount ?? 0), columnsOf(old), columnsOf(now));
  const changes = changedCells(old, now);
  const [first] = changes;
  if (!first) return renamed;
  const shifts = [putInOrOut(rows, 'row'), putInOrOut(columns, 'column')].filter((one) => one !== '');
  if (shifts.length > 0) return [...renamed, `${is.name}: ${shifts.join(', ')}`];
  const what =
    changes.length === 1
      ? `${is.name} ${cellAddress(first.row, first.column)}: ${shown(first.was)} → ${shown(first.is)}`
      : `${is.name}: ${changes.length} cells`;
  return [...renamed, what];
}

/** How many were put in or out; none where a sheet has only grown at its end, as it does for a table that spills. */
function moved(more: number, was: readonly number[], is: readonly number[]): number {
  return more > 0 && was.at(-1) === is.at(-1) ? 0 : more;
}

function rowsOf(cells: Cells): readonly number[] {
  return Object.keys(cells)
    .map(Number)
    .sort((a, b) => a - b);
}

function columnsOf(cells: Cells): readonly number[] {
  return [...new Set(Object.values(cells).flatMap((row) => Object.keys(row).map(Number)))].sort((a, b) => a - b);
}

function putInOrOut(count: number, what: string): string {
  return count === 0 ? '' : `${counted(Math.abs(count), what)} ${count > 0 ? 'inserted' : 'removed'}`;
}

function changedCells(was: Cells, is: Cells): readonly CellChange[] {
  const changes: CellChange[] = [];
  for (const row of keysOf(was, is)) {
    const [old, now] = [was[row] ?? {}, is[row] ?? {}];
    if (old === now) continue;
    for (const column of keysOf(old, now)) {
      const change = { row, column, was: enteredIn(old[column]), is: enteredIn(now[column]) };
      if (!alike(change.was, change.is)) changes.push(change);
    }
  }
  return changes;
}

function keysOf(one: object, other: object): readonly number[] {
  return [...new Set([...Object.keys(one), ...Object.keys(other)].map(Number))].sort((a, b) => a - b);
}

function alike(one: unknown, other: unknown): boolean {
  return one === other || (isGroup(one) && isGroup(other) && one.si === other.si);
}

/** One of a group of formulas that were filled at once. */
function isGroup(entered: unknown): entered is { readonly si: string } {
  return typeof entered === 'object' && entered !== null && 'si' in entered;
}

function shown(entered: unknown): string {
  if (entered === undefined) return 'blank';
  const text = isGroup(entered) ? 'a formula' : String(entered).replace(/\s+/g, ' ');
  return text.length > LETTERS ? `${text.slice(0, LETTERS - 1)}…` : text;
}
