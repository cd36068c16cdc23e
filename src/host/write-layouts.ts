import type { StockCutting } from '../core/plan/cutting';
import { foundRows } from '../core/plan/found-rows';
import type { FoundRow } from '../core/plan/inputs';
import type { Cells } from '../tables/cell';
import { withLayout } from '../tables/layout-rows';
import { layoutsTable } from '../tables/layouts';
import type { Host } from './host';

/** Where pieces of a stock lie on sheets of one format. */
export interface FoundLayout {
  readonly stock: string;
  /** Of the sheets, where it is another than that of the stock's own row. */
  readonly format?: string | undefined;
  readonly layouts: readonly FoundRow[];
}

/**
 * Puts layouts that a search has found into the workbook's table of them, each in the place of its stock's own.
 * @param cuttings of the plan: of a stock whose sheets of one format were searched alone, those of others keep their pieces
 * @throws Error where the workbook has no such table
 */
export async function writeLayouts(
  host: Pick<Host, 'tables' | 'writeTable'>,
  found: readonly FoundLayout[],
  cuttings: readonly StockCutting[] = [],
): Promise<void> {
  const { name } = layoutsTable;
  const table = (await host.tables()).get(name);
  if (!table) throw new Error(`The workbook has no table ${name}; load the tables again to have it.`);
  const [headings = []] = table;
  const rows = [...new Set(found.map(({ stock }) => stock))].reduce<Cells>((before, stock) => {
    const own = found.filter((one) => one.stock === stock);
    const beside = cuttings.filter(
      (one) => one.stock.code === stock && !own.some(({ format }) => format === one.otherFormat),
    );
    const layouts = [...own.map((one) => one.layouts), ...beside.map((one) => foundRows(one, one.layout))].flat();
    return [headings, ...withLayout(before, stock, layouts)];
  }, table);
  await host.writeTable(name, rows.slice(1));
}
