import type { Host, TablePlace } from '../host/host';
import { type LostCode, renamedIn } from '../tables/named-codes';

/**
 * Writes a code wherever another stands that is not defined, in one step for undo.
 * @returns how many cells were written
 */
export async function carryThrough(host: Host, lost: LostCode, to: string): Promise<number> {
  const changes = renamedIn(await host.tables(), lost, to);
  const places = new Map<string, TablePlace | undefined>();
  for (const { table } of changes) if (!places.has(table)) places.set(table, await host.tablePlace(table));
  const cells = changes.flatMap(({ table, row, column, value }) => {
    const place = places.get(table);
    return place ? [{ sheet: place.sheet, row: place.row + row, column: place.column + column, value }] : [];
  });
  await host.writeCells(cells);
  return cells.length;
}

/** What the maker reads then. */
export function carriedInWords(lost: LostCode, to: string, count: number, undoes: boolean): string {
  const where = count === 1 ? 'one cell' : `${count} cells`;
  return `“${to}” is in ${where} now in place of “${lost.code}”.${undoes ? ' Undo takes it back.' : ''}`;
}
