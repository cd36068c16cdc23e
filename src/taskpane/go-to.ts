import { fold } from '../core/plan/codes';
import type { CellPlace, Host } from '../host/host';
import type { InputPlace } from '../tables/check-place';
import type { Cells } from '../tables/cell';

/** Leads the maker to the cell that a place means. */
export type Lead = (place: InputPlace) => void;

/** A cell within a table's block, its headings in row 0. */
export interface BlockCell {
  readonly row: number;
  readonly column: number;
}

/** The cell that a place means in a table's block; the nearest that is there where it means one that is not. */
export function cellIn(cells: Cells, { code, row, heading }: InputPlace): BlockCell {
  const headings = (cells[0] ?? []).map((cell) => fold(String(cell ?? '').replace(/\s+/g, ' ')));
  const wanted = heading === undefined ? undefined : fold(heading.replace(/\s+/g, ' '));
  const exact = wanted === undefined ? -1 : headings.indexOf(wanted);
  const begun = headings.findIndex((one) => wanted !== undefined && one.startsWith(`${wanted} `));
  const column = Math.max(0, exact >= 0 ? exact : begun);
  if (row !== undefined) return { row: Math.min(row, Math.max(0, cells.length - 1)), column };
  if (code === undefined) return { row: heading === undefined ? 1 : 0, column };
  const found = cells.findIndex((line, i) => i > 0 && fold(String(line[0] ?? '')) === fold(code));
  return { row: Math.max(0, found), column };
}

/**
 * Selects the cell that a place means.
 * @returns false where the workbook has no such table
 */
export async function goTo(host: Host, place: InputPlace): Promise<boolean> {
  const table = await host.tablePlace(place.table);
  if (!table) return false;
  const { row, column } = cellIn((await host.tables()).get(place.table) ?? [], place);
  const cell: CellPlace = { sheet: table.sheet, row: table.row + row, column: table.column + column };
  await host.select(cell);
  return true;
}
