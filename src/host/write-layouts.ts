import type { FoundRow } from '../core/plan/inputs';
import type { Cells } from '../tables/cell';
import { withLayout } from '../tables/layout-rows';
import { layoutsTable } from '../tables/layouts';
import type { Host } from './host';

/** Where pieces of a stock lie, on sheets of all its formats. */
export interface FoundLayout {
  readonly stock: string;
  readonly layouts: readonly FoundRow[];
}

/**
 * Puts layouts that a search has found into the workbook's table of them, each in the place of its stock's own.
 * @throws Error where the workbook has no such table
 */
export async function writeLayouts(
  host: Pick<Host, 'tables' | 'writeTable'>,
  found: readonly FoundLayout[],
): Promise<void> {
  const { name } = layoutsTable;
  const table = (await host.tables()).get(name);
  if (!table) throw new Error(`The workbook has no table ${name}; load the tables again to have it.`);
  const [headings = []] = table;
  const rows = found.reduce<Cells>(
    (before, { stock, layouts }) => [headings, ...withLayout(before, stock, layouts)],
    table,
  );
  await host.writeTable(name, rows.slice(1));
}
