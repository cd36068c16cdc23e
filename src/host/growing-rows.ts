import type { TableCell } from '../tables/block-cell';

/** Cells of one table, and how many rows it must grow by to hold them. */
export interface CellsOfTable {
  readonly table: string;
  readonly missing: number;
  /** As they stand once the rows are inserted above the table's last: new rows come before it. */
  readonly cells: readonly TableCell[];
}

/** Where cells of a table of so many rows stand, headings counted, once it has grown for them. */
export function inGrownTable(table: string, cells: readonly TableCell[], rows: number): CellsOfTable {
  const missing = Math.max(0, ...cells.map(({ row }) => row + 1 - rows));
  const moved = ({ row }: TableCell) => (row >= rows ? row - 1 : row === rows - 1 ? row + missing : row);
  return { table, missing, cells: cells.map((one) => ({ ...one, row: moved(one) })) };
}

/** Cells by their table. */
export function byTable(cells: readonly TableCell[]): ReadonlyMap<string, readonly TableCell[]> {
  const tables = new Map<string, TableCell[]>();
  for (const one of cells) {
    const own = tables.get(one.table);
    if (own) own.push(one);
    else tables.set(one.table, [one]);
  }
  return tables;
}

/** Says which table is missing. */
export function noTable(name: string): Error {
  return new Error(`The workbook has no table "${name}"; load the tables again to have it.`);
}
