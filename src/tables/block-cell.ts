import { fold } from '../core/plan/codes';
import type { Cell, Cells } from './cell';
import type { InputPlace } from './check-place';
import { columnsIn } from './headings';
import { INPUT_TABLES } from './input-tables';
import type { Columns, Table } from './schema';

/** A cell within a table's block, its headings in row 0. */
export interface BlockCell {
  readonly row: number;
  readonly column: number;
}

/** What is to be written into a cell of a table; a row beyond its end is a new one. */
export interface TableCell extends BlockCell {
  readonly table: string;
  /** Blank is ''. */
  readonly value: string | number;
}

/** The cell that a place means in a table's block; the nearest that is there where it means one that is not. */
export function cellIn(cells: Cells, { table, code, row, heading, at, below = false }: InputPlace): BlockCell {
  const headings = cells[0] ?? [];
  const column = at ?? Math.max(0, heading === undefined ? 0 : columnUnder(table, headings, heading));
  if (row !== undefined) return { row: below ? row : Math.min(row, Math.max(0, cells.length - 1)), column };
  if (code === undefined) return { row: heading === undefined ? 1 : 0, column };
  const codes = codeColumn(table, headings);
  const found = cells.findIndex((line, i) => i > 0 && fold(String(line[codes] ?? '')) === fold(code));
  return { row: Math.max(0, found), column };
}

/** The column in which a table's codes stand: that of its first heading, wherever the maker has put it. */
export function codeColumn(table: string, headings: readonly Cell[]): number {
  const known = tableOf(table);
  const [first = ''] = Object.keys(known?.columns ?? {});
  return (known && columnsIn(known, headings).get(first)) ?? 0;
}

/** The column that a heading means: as the reader finds it, else by its words, such as a size or a note; −1 for none. */
export function columnUnder(table: string, headings: readonly Cell[], heading: string): number {
  const known = tableOf(table);
  const name = Object.entries(known?.columns ?? {}).find(([, column]) => fold(column.heading) === fold(heading))?.[0];
  const read = known && name !== undefined ? columnsIn(known, headings).get(name) : undefined;
  if (read !== undefined) return read;
  const words = (text: string) => fold(text.replace(/\s+/g, ' '));
  const shown = headings.map((cell) => words(String(cell ?? '')));
  const exact = shown.indexOf(words(heading));
  return exact >= 0 ? exact : shown.findIndex((one) => one.startsWith(`${words(heading)} `));
}

function tableOf(name: string): Table<Columns> | undefined {
  return Object.values<Table<Columns>>(INPUT_TABLES).find((one) => one.name === name);
}
