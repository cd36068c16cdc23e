import { fold } from '../../core/plan/codes';
import { order } from '../../core/plan/order';
import { amountOfSheet } from '../../core/stock/price';
import type { Material, SoldBy, Stock } from '../../core/stock/stock';
import { counted } from '../../tables/counted';
import { decimals, fixed } from '../../tables/figures';
import { usableInWords } from '../../tables/usable-in-words';
import { isChosenStock, type PaperJob } from './chosen';
import { amountInWords, BESIDE, type BesideLine } from './beside-sheets';

/** What to buy of one stock. */
export interface ShoppingLine {
  readonly stock: string;
  readonly material: Material;
  /** As it is sold, mm. */
  readonly thick: number;
  /** mm; of a hide the box about it */
  readonly width: number;
  readonly length: number;
  readonly number: number;
  readonly soldBy: SoldBy;
  /** Of what it is sold by, in all; undefined where that cannot be told. */
  readonly amount: number | undefined;
  /** Of a sheet; undefined where none is given or none can be worked out. */
  readonly price: number | undefined;
  readonly total: number | undefined;
  /** Days until it is delivered, where the offer says so. */
  readonly days?: number | undefined;
  /** As what it is laid, where a share of it alone is usable. */
  readonly usable?: string | undefined;
}

/** What to buy from one supplier; "" where none is named. */
export interface SupplierList {
  readonly supplier: string;
  readonly lines: readonly ShoppingLine[];
  /** Of the lines that have a price. */
  readonly total: number;
  /** How many have none. */
  readonly unpriced: number;
}

/**
 * The sheets to buy for the whole run, of the stocks that are chosen, by supplier in the order of Bottom stock, those without
 * one last: sheets hold the pieces of all styles and sizes.
 */
export function shoppingList(job: PaperJob): readonly SupplierList[] {
  const groups = new Map<string, { supplier: string; lines: ShoppingLine[] }>();
  const cuttings = job.plan.layouts.stocks.filter(({ stock }) => isChosenStock(job, stock.code));
  for (const { cutting, buy, sheetPrice, toPay } of order(cuttings)) {
    if (buy === 0) continue;
    const { code, material, thickness, nominal, width, length, soldBy, supplier = '', days } = cutting.stock;
    const usable = usableInWords(cutting);
    const group = groups.get(fold(supplier)) ?? { supplier: supplier.trim(), lines: [] };
    groups.set(fold(supplier), group);
    group.lines.push({
      stock: code,
      material,
      thick: nominal ?? thickness,
      width,
      length,
      number: buy,
      soldBy,
      amount: amountOf(cutting.stock, buy),
      price: sheetPrice,
      total: toPay,
      ...(days !== undefined && { days }),
      ...(usable !== undefined && { usable }),
    });
  }
  return [...groups.values()]
    .sort((a, b) => Number(a.supplier === '') - Number(b.supplier === ''))
    .map(({ supplier, lines }) => ({
      supplier,
      lines,
      total: lines.reduce((sum, { total }) => sum + (total ?? 0), 0),
      unpriced: lines.filter(({ total }) => total === undefined).length,
    }));
}

function amountOf(stock: Stock, sheets: number): number | undefined {
  return stock.soldBy === 'kg' && stock.density === undefined ? undefined : sheets * amountOfSheet(stock);
}

/** What is asked for in all: "3 sheets", "1.10 m²". */
export function inAll({ soldBy, amount }: Pick<ShoppingLine, 'soldBy' | 'amount'>): string {
  if (amount === undefined) return soldBy;
  return soldBy === 'sheet' ? counted(amount, 'sheet') : `${amount.toFixed(2)} ${soldBy}`;
}

/** A format as it is asked for: "950 × 640 mm". */
export function formatWords({ width, length }: Pick<ShoppingLine, 'width' | 'length'>): string {
  return `${decimals(length, 0)} × ${decimals(width, 0)} mm`;
}

/** The list as plain text, to be copied into a letter. @param beside what is wanted beside the sheets */
export function shoppingText(
  lists: readonly SupplierList[],
  money: string,
  prices: boolean,
  beside: readonly BesideLine[] = [],
): string {
  const others = beside.map((one) => {
    const price = !prices || one.total === undefined ? '' : `, ${paid(one.total, money)}`;
    return `${one.what}: ${amountInWords(one)}${price}`;
  });
  const sheets = lists.map(({ supplier, lines, total, unpriced }) => {
    const rows = lines.map((one) => {
      const price = !prices ? '' : one.total === undefined ? ', price not given' : `, ${paid(one.total, money)}`;
      const when = one.days === undefined ? '' : `, in ${one.days} ${one.days === 1 ? 'day' : 'days'}`;
      const sold = one.soldBy === 'sheet' ? '' : `, ${inAll(one)} in all`;
      return `${one.number} × ${one.stock}, ${one.material} ${decimals(one.thick, 2)} mm, ${formatWords(one)}${sold}${price}${when}`;
    });
    const sum = prices
      ? [`Together ${paid(total, money)}${unpriced > 0 ? ` and ${unpriced} without a price` : ''}`]
      : [];
    return [supplier || 'No supplier named', ...rows, ...sum].join('\n');
  });
  return [...sheets, ...(others.length > 0 ? [[BESIDE, ...others].join('\n')] : [])].join('\n\n');
}

/** Money with its sign. */
export function paid(value: number, money: string): string {
  return [money, fixed(value, 2)].filter(Boolean).join(' ');
}
