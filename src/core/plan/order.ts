import type { Part } from '../bottom/layer';
import type { Problem } from '../problem';
import { purchase } from '../stock/purchase';
import type { StockCutting } from './cutting';

/** What to buy of one offer of a stock. */
export interface OrderLine {
  /** With the stock as this offer has it. */
  readonly cutting: StockCutting;
  /** What it is for: parts by style. */
  readonly uses: readonly { readonly style: string; readonly part: Part }[];
  /** Sheets needed, those of them that come from the shelf, and all that are there. */
  readonly need: number;
  readonly shelf: number;
  readonly onHand: number;
  /** What is lacking, no fewer than the least quantity, in whole packs: ⌈max(need − onHand, minimum) / pack⌉ · pack (derived). */
  readonly buy: number;
  /** Money for one sheet; undefined where no price is given. */
  readonly sheetPrice: number | undefined;
  /** Why a price that is given leads to none for a sheet. */
  readonly priceProblem?: Problem | undefined;
  readonly toPay: number | undefined;
}

/** Fourth stage: sheets to buy in packs and least quantities, and what they cost; a line for each offer that is taken. */
export function order(cuttings: readonly StockCutting[]): readonly OrderLine[] {
  return cuttings.flatMap((cutting) => {
    const { sheets, offers, lines, pieces } = cutting;
    const cut = lines.filter((_, i) => [2 * i, 2 * i + 1].some((piece) => (pieces[piece]?.count ?? 0) > 0));
    const uses = new Map(
      cut.map(({ run, layer }) => [`${run.style.code} ${layer.part}`, { style: run.style.code, part: layer.part }]),
    );
    const all = purchase(offers, sheets);
    const taken = all.filter(({ need, buy }) => need > 0 || buy > 0);
    return (taken.length > 0 ? taken : all.slice(0, 1)).map(
      ({ offer, need, shelf, buy, sheetPrice, priceProblem }): OrderLine => ({
        cutting: offer === cutting.stock ? cutting : { ...cutting, stock: offer },
        uses: [...uses.values()],
        need,
        shelf,
        onHand: offer.onHand,
        buy,
        sheetPrice,
        ...(priceProblem && { priceProblem }),
        toPay: sheetPrice === undefined ? undefined : sheetPrice * buy,
      }),
    );
  });
}
