import type { Host } from '../host/host';
import type { BlockCell } from '../tables/block-cell';
import { missingSum } from '../workbook/sum-formulas';

/**
 * Writes the formulas of sums that are missing from the pairage, in one step for undo.
 * @throws Error where the table stands otherwise than when they were missed
 */
export async function putSumsBack(host: Host, table: string, missing: readonly BlockCell[]): Promise<void> {
  const [place, cells] = [await host.tablePlace(table), (await host.tables()).get(table) ?? []];
  const back = missing.map(({ row, column }) => {
    const value = place && missingSum(cells, place, { row, column });
    if (value === undefined) throw new Error('The sums cannot be put back here: copy the formula of another row.');
    return { table, row, column, value };
  });
  await host.writeTableCells(back);
}
