import { pricePerArea } from '../stock/price';
import { paid, purchase } from '../stock/purchase';
import type { StockCutting } from './cutting';

/** Sheets, and money for the run; undefined where a sheet has no price. */
export interface Saving {
  readonly sheets: number;
  readonly money: number | undefined;
}

/** What a long search of a stock could save at most; why it is not worth a search where it can save nothing. */
export interface Chance {
  readonly cutting: StockCutting;
  readonly most: Saving;
  /** least: it takes no more than could ever do. */
  readonly hopeless?: 'least' | undefined;
}

/**
 * What there is to be saved of a run's stocks: most money first, then what has no price by its sheets, then what is
 * hopeless. The least a stock could take is proven by area, its offcuts taken off. Of a stock that is cut from sheets of
 * several formats, the format of which most can be saved: a search lays its pieces onto those of the others too.
 */
export function searchChances(stocks: readonly StockCutting[]): readonly Chance[] {
  const best = new Map<string, Chance>();
  for (const cutting of stocks) {
    const chance = chanceOf(cutting);
    const known = best.get(cutting.stock.code);
    if (!known || inOrder(chance, known) < 0) best.set(cutting.stock.code, chance);
  }
  return [...best.values()].sort(inOrder);
}

function chanceOf(cutting: StockCutting): Chance {
  const { least, sheets } = cutting;
  const hopeless = sheets <= least ? 'least' : undefined;
  return { cutting, most: hopeless ? { sheets: 0, money: 0 } : savingOf(cutting, least), hopeless };
}

function inOrder(a: Chance, b: Chance): number {
  return rank(a) - rank(b) || (b.most.money ?? 0) - (a.most.money ?? 0) || b.most.sheets - a.most.sheets;
}

function rank({ hopeless, most }: Chance): number {
  return hopeless ? 2 : most.money === undefined ? 1 : 0;
}

/** What a stock's sheets fewer than the plan's come to: sheets on hand, packs and least quantities counted. */
export function savingOf(cutting: StockCutting, sheets: number): Saving {
  const saved = cutting.sheets - sheets;
  if (cutting.offers.every((offer) => pricePerArea(offer) === undefined)) return { sheets: saved, money: undefined };
  const [now, then] = [cutting.sheets, sheets].map((need) => paid(purchase(cutting.offers, need)));
  return { sheets: saved, money: now === undefined || then === undefined ? undefined : now - then };
}

/** Savings together; money where any of them has a price. */
export function savedTogether(savings: readonly Saving[]): Saving {
  const priced = savings.flatMap(({ money }) => (money === undefined ? [] : [money]));
  return {
    sheets: savings.reduce((sum, { sheets }) => sum + sheets, 0),
    money: priced.length > 0 ? priced.reduce((sum, money) => sum + money, 0) : undefined,
  };
}
