import { fixed } from '../tables/figures';
import type { BesideLine } from '../drawing/paper/beside-sheets';
import type { SupplierList } from '../drawing/paper/shopping-list';
import { writeCsv } from './csv';

/** The shopping list as CSV, one row a stock, then one for each of what is wanted beside the sheets. */
export function shoppingCsv(
  lists: readonly SupplierList[],
  money: string,
  prices: boolean,
  beside: readonly BesideLine[],
): string {
  const head = ['Supplier', 'Stock', 'Material', 'Thick mm', 'Length mm', 'Width mm', 'Number', 'Amount', 'Sold by'];
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
      cents(one.amount),
      one.soldBy,
      ...(prices ? [cents(one.price), cents(one.total)] : []),
      ...(timed ? [one.days] : []),
    ]),
  );
  const others = beside.map(({ what, amount, unit, total }) => [
    '',
    what,
    '',
    '',
    '',
    '',
    '',
    amount === undefined ? undefined : Math.ceil(amount - 1e-6),
    unit,
    ...(prices ? ['', cents(total)] : []),
    ...(timed ? [''] : []),
  ]);
  return writeCsv([
    [
      ...head,
      ...(prices ? [`Price a sheet ${money}`.trim(), `Total ${money}`.trim()] : []),
      ...(timed ? ['Delivered in days'] : []),
    ],
    ...rows,
    ...others,
  ]);
}

function cents(value: number | undefined): number | undefined {
  return value === undefined ? undefined : Number(fixed(value, 2));
}
