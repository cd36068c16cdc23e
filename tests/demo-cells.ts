import type { PlanCells } from '../src/tables/plan-input';
import { tableCells } from '../src/workbook/table-cells';

export { planArguments, tableCells } from '../src/workbook/table-cells';

/** The demo's tables as a plan reads them, without layouts and offcuts. */
export function demoPlanCells(): PlanCells {
  const cells = tableCells();
  return {
    pairage: cells['Pairage'] ?? [],
    styles: cells['Styles'] ?? [],
    lasts: cells['Lasts'] ?? [],
    stock: cells['Bottom stock'] ?? [],
    rates: cells['Costs and times'] ?? [],
    outlines: cells['Outlines'],
  };
}
