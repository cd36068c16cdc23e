import type { StockCutting } from '../../core/plan/cutting';
import { figure, type ResultTable, words } from '../result';

/** How the pieces lie, by stock. */
export const cuttingTable: ResultTable<StockCutting> = {
  name: 'Cutting',
  meaning: 'Sheets by stock, and what is lost on them',
  columns: [
    words('Stock', ({ stock }) => stock.code),
    figure('Thick', ({ stock }) => stock.thickness, { unit: 'mm', format: '0.0#' }),
    figure('Pieces', ({ count }) => count, { unit: 'number', format: '0' }),
    figure('Sheets', ({ sheets }) => sheets, { format: '0' }),
    words('Offcuts', ({ offcuts }) => offcuts.map(({ code }) => code).join(', '), { width: 70 }),
    figure('Least possible', ({ least }) => least, { format: '0' }),
    figure('Area use', ({ areaUse }) => 100 * areaUse, { unit: '%' }),
    figure('Lost between', ({ lostBetween }) => 100 * lostBetween, { unit: '%' }),
    figure('Lost outside', ({ lostOutside }) => 100 * lostOutside, { unit: '%' }),
    words('Laid by', laidBy, { width: 96 }),
  ],
};

/** What laid the pieces, and on which sheets where they are others than those of the stock's own row. */
function laidBy({ source, otherFormat }: StockCutting): string {
  const by = source === 'rows' ? 'quick rows' : 'search';
  return otherFormat === undefined ? by : `${by}, ${otherFormat}`;
}
