import { pairageTable } from '../tables/pairage';
import type { Host } from './host';

/** The run's name: what stands at the head of the sheet of its pairs; undefined where nothing does. */
export async function runNameIn(host: Pick<Host, 'tablePlace' | 'read'>): Promise<string | undefined> {
  const place = await host.tablePlace(pairageTable.name);
  // A table at the very head has no name above it.
  if (!place || place.row === 0) return undefined;
  const head = { kind: 'cells', sheet: place.sheet, row: 0, column: 0, rows: 1, columns: 1 } as const;
  const name = (await host.read(head))?.cells[0]?.[0];
  return typeof name === 'string' ? name.trim() || undefined : undefined;
}
