import type { Part } from '../bottom/layer';
import { Problem } from '../problem';
import { priceOfSheet } from '../stock/price';
import type { Stock } from '../stock/stock';
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
  /** Why a price that is given leads to none for a sheet. */
  readonly priceProblem?: Problem | undefined;
  readonly toPay: number | undefined;
}

/** Fourth stage: sheets to buy in packs and least quantities, and what they cost. */
export function order(cuttings: readonly StockCutting[]): readonly OrderLine[] {
  return cuttings.map((cutting): OrderLine => {
    const { stock, sheets: need, lines } = cutting;
    const lack = Math.max(0, need - stock.onHand);
    const buy = lack === 0 ? 0 : Math.ceil(Math.max(lack, stock.minimum) / stock.pack) * stock.pack;
    const price = priceOrProblem(stock);
    const [sheetPrice, priceProblem] = price instanceof Problem ? [undefined, price] : [price];
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
      ...(priceProblem && { priceProblem }),
      toPay: sheetPrice === undefined ? undefined : sheetPrice * buy,
    };
  });
}

function priceOrProblem(stock: Stock): number | Problem | undefined {
  try {
    return priceOfSheet(stock);
  } catch (error) {
    if (error instanceof Problem) return error;
    throw error;
  }
}
