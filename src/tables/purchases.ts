import type { PurchaseLine } from '../core/plan/to-buy';
import { formatName } from '../core/stock/offer';
import { figure, MONEY, type ResultTable, sumOf, words } from './result';

const money = { unit: MONEY, format: '0.00', width: 84 } as const;

/** What to buy of which offer at least cost. */
export const purchasesTable: ResultTable<PurchaseLine> = {
  name: 'Stock to buy',
  meaning: 'What to buy of which offer at least cost, beside the least that is proven and what the quick rows cost',
  columns: [
    words('Stock', ({ stock }) => stock.code, { total: () => 'All' }),
    words('Supplier', ({ offer }) => offer.supplier),
    words('Sheet', ({ offer }) => formatName(offer), { width: 96 }),
    figure('Cut', ({ need }) => need, { format: '0' }),
    figure('On hand', ({ offer }) => offer.onHand, { format: '0' }),
    figure('Buy', ({ buy }) => buy, { format: '0' }),
    figure('Price', ({ sheetPrice }) => sheetPrice, { unit: `${MONEY} a sheet`, format: '0.00' }),
    figure('To pay', ({ buy, sheetPrice }) => buy * (sheetPrice ?? 0), {
      ...money,
      total: sumOf(({ buy, sheetPrice }) => buy * (sheetPrice ?? 0)),
    }),
    figure('Least possible', ({ whole }) => whole?.least, { ...money, total: sumOf(({ whole }) => whole?.least) }),
    figure('Gap', ({ whole }) => whole && gapOf(whole), {
      unit: '%',
      total: (lines) => gapOf(together(lines)),
    }),
    figure('Quick rows', ({ whole }) => whole?.plain, { ...money, total: sumOf(({ whole }) => whole?.plain) }),
    // The last, so that no neighbour cuts it off.
    words('Note', ({ whole }) => whole?.why, { width: 130 }),
  ],
};

/** What a purchase could still be dearer than the cheapest, in % of the least that is proven. */
export function gapOf({ cost, least }: { readonly cost: number; readonly least: number }): number {
  return least > 0 ? (100 * (cost - least)) / least : cost > 0 ? 100 : 0;
}

function together(lines: readonly PurchaseLine[]) {
  return {
    cost: sumOf<PurchaseLine>(({ whole }) => whole?.cost)(lines),
    least: sumOf<PurchaseLine>(({ whole }) => whole?.least)(lines),
  };
}
