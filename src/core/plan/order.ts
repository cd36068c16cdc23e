import type { Part } from '../bottom/layer';
import { sheetArea, type Stock } from '../stock/stock';
import { sheetWeight } from '../stock/weight';
import { Problem } from '../problem';
import { convertUnit } from '../units';
import type { StockCutting } from './cutting';

/** What to buy of one stock. */
export interface OrderLine {
  readonly cutting: StockCutting;
  /** What it is for: parts by style. */
  readonly uses: readonly { readonly style: string; readonly part: Part }[];
  /** Sheets needed, and on the shelf. */
  readonly need: number;
  readonly onHand: number;
  /** What is lacking, no fewer than the least quantity, in whole packs: ⌈max(need − onHand, minimum) / pack⌉ · pack (derived). */
  readonly buy: number;
  /** Money for one sheet; undefined where no price is given. */
  readonly sheetPrice: number | undefined;
  readonly toPay: number | undefined;
}

/** Fourth stage: sheets to buy in packs and least quantities, and what they cost. */
export function order(cuttings: readonly StockCutting[]): readonly OrderLine[] {
  return cuttings.map((cutting): OrderLine => {
    const { stock, sheets: need, lines } = cutting;
    const lack = Math.max(0, need - stock.onHand);
    const buy = lack === 0 ? 0 : Math.ceil(Math.max(lack, stock.minimum) / stock.pack) * stock.pack;
    const sheetPrice = priceOfSheet(stock);
    const uses = new Map(
      lines.map(({ run, layer }) => [`${run.style.code} ${layer.part}`, { style: run.style.code, part: layer.part }]),
    );
    return {
      cutting,
      uses: [...uses.values()],
      need,
      onHand: stock.onHand,
      buy,
      sheetPrice,
      toPay: sheetPrice === undefined ? undefined : sheetPrice * buy,
    };
  });
}

/**
 * Money for a whole sheet, whatever it is sold by; undefined where no price is given.
 * @throws Problem where it is sold by weight and no density is given.
 */
export function priceOfSheet(stock: Stock): number | undefined {
  const { price, soldBy, thickness, density } = stock;
  if (price === undefined) return undefined;
  const area = sheetArea(stock);
  if (soldBy === 'sheet') return price;
  if (soldBy === 'm²') return price * convertUnit(area, 'mm2', 'm2');
  if (soldBy === 'ft²') return price * convertUnit(area, 'mm2', 'ft2');
  if (density === undefined) {
    throw new Problem(
      'invalid',
      { argument: 'stock', table: 'Bottom stock', row: stock.row, column: 'Density' },
      'what is sold by kg needs its density; enter it in kg/m³',
    );
  }
  return price * convertUnit(sheetWeight(area, thickness, density), 'g', 'kg');
}
