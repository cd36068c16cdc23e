import type { BuyAnswer, BuyJob, BuyShare } from '../cutting/buy/job';
import { Problem } from '../problem';
import { finished } from '../stepwise';
import { byFormat, formatName, sameFormat } from '../stock/offer';
import { priceOfSheet } from '../stock/price';
import { purchase, type Taken } from '../stock/purchase';
import type { Stock } from '../stock/stock';
import { fold } from './codes';
import { foundRows } from './found-rows';
import type { FoundRow, PlanInput } from './inputs';
import { piecesFrom } from './pieces';
import type { Plan } from './plan';
import { offersOf, quickShares } from './quick-shares';
import { formatOf, laidOf, toLay } from './stock-share';

/** What is to be bought of one stock, and of what offers. */
export interface ToBuy {
  readonly stock: Stock;
  /** By the formats of the job. */
  readonly offers: readonly (readonly Stock[])[];
  readonly job: BuyJob;
  /** Of each piece in the run, without what is cut again. */
  readonly counts: readonly number[];
}

/** What is bought of one offer. */
export interface PurchaseLine extends Taken {
  readonly stock: Stock;
  /** Of the stock, on its first line. */
  readonly whole?: {
    readonly cost: number;
    readonly least: number;
    readonly plain: number;
    readonly why?: string | undefined;
  };
}

/** Layouts of single sheets of each format that are chosen from, at most. */
const COLUMNS = 250;

/**
 * Everything that is cut from stocks of which an offer has a price, as it can be bought.
 * @param spoiled share of the pieces that is spoiled and cut again
 * @param effort millions of places that the long search tries for each stock
 * @throws Problem where a piece fits on no sheet
 */
export function toBuy(plan: Plan, spoiled: number, effort = 0): readonly ToBuy[] {
  return plan.input.stock.flatMap((stock) => stockToBuy(plan, stock, spoiled, effort) ?? []);
}

function stockToBuy(plan: Plan, stock: Stock, spoiled: number, effort: number): ToBuy | undefined {
  const cuttings = plan.layoutsOf(stock);
  const own = plan.runs.styles.flatMap((run) => piecesFrom(run, stock.code) ?? []);
  const offers = byFormat(offersOf(stock, plan.input.offers));
  const terms = offers.map((list) =>
    list.map((one) => ({ price: priceOrNone(one), pack: one.pack, minimum: one.minimum, onHand: one.onHand })),
  );
  if (cuttings.length === 0 || terms.flat().every(({ price }) => price === undefined)) return undefined;
  const all = toLay(own, stock, spoiled);
  const shelf = shelfOf(stock, plan.input);
  const formats = offers.map((list, i) => ({ format: formatOf(list[0]!, i === 0 ? shelf : []), terms: terms[i]! }));
  const plain = spoiled === 0 ? cuttings.map(({ stock: of, layout }) => ({ of, layout })) : laidAgain();
  return {
    stock,
    offers,
    counts: toLay(own, stock).pieces.map(({ count }) => count),
    job: {
      pieces: all.pieces,
      formats,
      plain: plain.map(({ of, layout }): BuyShare => ({
        format: offers.findIndex(([one]) => sameFormat(one!, of)),
        layout,
      })),
      columns: COLUMNS,
      effort,
    },
  };

  function laidAgain() {
    const shares = finished(quickShares(offers, all, shelf));
    return shares.map((share) => ({
      of: share.offers[0]!,
      layout: share.layout ?? finished(laidOf(share, all)).layout,
    }));
  }
}

function shelfOf({ code }: Stock, { offcuts }: Pick<PlanInput, 'offcuts'>): PlanInput['offcuts'] {
  return offcuts.filter(({ stock }) => fold(stock) === fold(code));
}

/** What is taken of each offer, the stock's figures on its first line. */
export function purchaseLines({ stock, offers }: ToBuy, answer: BuyAnswer, plain: number): readonly PurchaseLine[] {
  const taken = answer.shares.flatMap(({ format, layout }) => purchase(offers[format]!, layout.sheets.length));
  const used = taken.filter(({ need, buy }) => need > 0 || buy > 0);
  const shown = used.length > 0 ? used : purchase(offers[0]!, 0).slice(0, 1);
  const { cost, least, why } = answer;
  return shown.map((one, i): PurchaseLine => ({
    ...one,
    stock,
    ...(i === 0 && { whole: { cost, least, plain, why } }),
  }));
}

/** Rows for the table Layouts; pieces that stand in for spoiled ones are left out. */
export function purchaseRows(
  { offers, job, counts }: ToBuy,
  { shares }: Pick<BuyAnswer, 'shares'>,
): readonly FoundRow[] {
  const left = new Map(job.pieces.map(({ key }, i) => [key, counts[i]!]));
  const rows = shares.flatMap(({ format, layout }) => {
    const [stock] = offers[format]!;
    const { format: sheet } = job.formats[format]!;
    return foundRows(
      { stock: stock!, otherFormat: format === 0 ? undefined : formatName(stock!), format: sheet, pieces: job.pieces },
      layout,
    );
  });
  return rows.filter(({ piece }) => {
    const more = left.get(piece) ?? 0;
    left.set(piece, more - 1);
    return more > 0;
  });
}

function priceOrNone(offer: Stock): number | undefined {
  try {
    return priceOfSheet(offer);
  } catch (error) {
    if (error instanceof Problem) return undefined;
    throw error;
  }
}
