import { Problem } from '../problem';
import { priceOfSheet } from './price';
import type { Stock } from './stock';

/** What is taken of one offer. */
export interface Taken {
  readonly offer: Stock;
  /** Sheets that are cut of it, from the shelf and bought. */
  readonly need: number;
  /** Of them from the shelf. */
  readonly shelf: number;
  readonly buy: number;
  /** Money for one sheet; undefined where no price is given. */
  readonly sheetPrice: number | undefined;
  /** Why a price that is given leads to none for a sheet. */
  readonly priceProblem?: Problem | undefined;
}

/** On what terms sheets can be had. */
export interface Terms {
  /** Money for one sheet; undefined where none is given. */
  readonly price: number | undefined;
  readonly pack: number;
  readonly minimum: number;
  readonly onHand: number;
}

/**
 * What to take of offers of one format for some sheets at least cost: what is on hand, then what is lacking, of each offer no
 * fewer than the least that is sold, in whole packs. Exact: a dynamic programme over offers and sheets (derived). Of equal
 * costs the earlier offers; without any price the first.
 */
export function purchase(offers: readonly Stock[], sheets: number): readonly Taken[] {
  const priced = offers.map((offer) => ({ offer, ...priceOf(offer) }));
  let rest = sheets;
  const shelf = offers.map(({ onHand }) => {
    const used = Math.min(onHand, rest);
    rest -= used;
    return used;
  });
  const bought = cheapest(
    priced.map(({ offer: { pack, minimum }, sheetPrice: price }) => ({ pack, minimum, price })),
    rest,
  );
  return priced.map((one, i): Taken => {
    const buy = bought[i]!;
    const cut = Math.min(buy, rest);
    rest -= cut;
    return { ...one, need: shelf[i]! + cut, shelf: shelf[i]!, buy };
  });
}

/** What a purchase costs; undefined where some of it has no price. */
export function paid(taken: readonly Taken[]): number | undefined {
  return costOf(taken.map(({ buy, sheetPrice }) => ({ buy, price: sheetPrice })));
}

/** The least that some sheets cost beside those on hand; undefined where some have no price. */
export function costOfSheets(terms: readonly Terms[], sheets: number): number | undefined {
  const lack = terms.reduce((rest, { onHand }) => Math.max(0, rest - onHand), sheets);
  const bought = cheapest(terms, lack);
  return costOf(terms.map(({ price }, i) => ({ price, buy: bought[i]! })));
}

function costOf(bought: readonly { readonly buy: number; readonly price: number | undefined }[]): number | undefined {
  let sum = 0;
  for (const { buy, price } of bought) {
    if (buy > 0 && price === undefined) return undefined;
    sum += buy * (price ?? 0);
  }
  return sum;
}

/** Sheets bought where so many are lacking: no fewer than the least that is sold, in whole packs. */
export function inPacks({ pack, minimum }: Pick<Terms, 'pack' | 'minimum'>, lack: number): number {
  return lack === 0 ? 0 : Math.ceil(Math.max(lack, minimum) / pack) * pack;
}

type Sold = Omit<Terms, 'onHand'>;

/** Costs that differ by less, as a share, differ by rounding. */
const EQUAL = 1e-12;

/** How many sheets to buy of each offer, so that some are lacking no more. */
function cheapest(offers: readonly Sold[], lack: number): readonly number[] {
  const only = offers.filter(({ price }) => price !== undefined);
  if (lack === 0) return offers.map(() => 0);
  if (only.length <= 1) {
    const taken = only[0] ?? offers[0];
    return offers.map((offer) => (offer === taken ? inPacks(offer, lack) : 0));
  }
  // cost[k]: the least for k sheets or more of the offers so far; from[i][k]: sheets of offer i in it.
  let cost = Float64Array.from({ length: lack + 1 }, (_, k) => (k === 0 ? 0 : Infinity));
  const from = offers.map(({ price, pack, minimum }): Int32Array => {
    const count = new Int32Array(lack + 1);
    if (price === undefined) return count;
    const before = cost;
    const first = inPacks({ pack, minimum }, 1);
    const [own, sheets] = [new Float64Array(lack + 1), new Int32Array(lack + 1)];
    cost = before.slice();
    for (let k = 1; k <= lack; k++) {
      const start = before[Math.max(0, k - first)]! + price * first;
      const on = k > pack ? own[k - pack]! + price * pack : Infinity;
      [own[k], sheets[k]] = on < start * (1 - EQUAL) ? [on, sheets[k - pack]! + pack] : [start, first];
      if (own[k]! < before[k]! * (1 - EQUAL)) [cost[k], count[k]] = [own[k]!, sheets[k]!];
    }
    return count;
  });
  const bought = offers.map(() => 0);
  for (let i = offers.length - 1, k = lack; i >= 0; i--) {
    bought[i] = from[i]![k]!;
    k = Math.max(0, k - bought[i]!);
  }
  return bought;
}

function priceOf(offer: Stock): Pick<Taken, 'sheetPrice' | 'priceProblem'> {
  try {
    return { sheetPrice: priceOfSheet(offer) };
  } catch (error) {
    if (error instanceof Problem) return { sheetPrice: undefined, priceProblem: error };
    throw error;
  }
}
