import type { CellPlace, Host } from '../host/host';
import { cellIn } from '../tables/block-cell';
import type { InputPlace } from '../tables/check-place';

/** Leads the maker to the cell that a place means. */
export type Lead = (place: InputPlace) => void;

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
