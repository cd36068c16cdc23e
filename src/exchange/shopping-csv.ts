import type { SupplierList } from '../drawing/paper/shopping-list';
import { writeCsv } from './csv';

/** The shopping list as CSV, one row a stock. */
export function shoppingCsv(lists: readonly SupplierList[], money: string, prices: boolean): string {
  const head = ['Supplier', 'Stock', 'Material', 'Thick mm', 'Length mm', 'Width mm', 'Number', 'Sold by'];
  const timed = lists.some(({ lines }) => lines.some(({ days }) => days !== undefined));
  const rows = lists.flatMap(({ supplier, lines }) =>
    lines.map((one) => [
      supplier,
      one.stock,
      one.material,
      one.thick,
      one.length,
      one.width,
      one.number,
      one.soldBy,
      ...(prices ? [cents(one.price), cents(one.total)] : []),
      ...(timed ? [one.days] : []),
    ]),
  );
  return writeCsv([
    [
      ...head,
      ...(prices ? [`Price a sheet ${money}`.trim(), `Total ${money}`.trim()] : []),
      ...(timed ? ['Delivered in days'] : []),
    ],
    ...rows,
  ]);
}

function cents(value: number | undefined): number | undefined {
  return value === undefined ? undefined : Math.round(value * 100) / 100;
}
