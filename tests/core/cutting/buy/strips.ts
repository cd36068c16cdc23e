import type { BuyFormat, BuyJob } from '../../../../src/core/cutting/buy/job';
import { quickLayout } from '../../../../src/core/cutting/quick-layout';
import type { Piece } from '../../../../src/core/cutting/sheet/piece';
import type { Terms } from '../../../../src/core/stock/purchase';
import { rectangle } from '../outlines';

/** Strips as wide as the sheet lie one behind the other: cutting them is cutting stock of one dimension. */
export const WIDE = 100;

export function strips(list: readonly (readonly [length: number, count: number])[]): readonly Piece[] {
  return list.map(([length, count]) => ({
    key: String(length),
    ring: rectangle(length, WIDE),
    count,
    way: { kind: 'endForEnd' },
  }));
}

/** Orders of a printed example, cut from raws of 100: the fewest are 453 (Chvátal, Linear Programming, 1983, chapter 13; from memory). */
export const PRINTED_ORDERS = strips([
  [45, 97],
  [36, 610],
  [31, 395],
  [14, 211],
]);

export function stripFormat(length: number, ...terms: readonly Partial<Terms>[]): BuyFormat {
  const usual = { price: 10, pack: 1, minimum: 0, onHand: 0 };
  return {
    format: { length, width: WIDE, knifeRoom: 0, edgeTrim: 0 },
    terms: (terms.length > 0 ? terms : [{}]).map((one) => ({ ...usual, ...one })),
  };
}

/** The quick rows on the first format as the plain answer. */
export function jobOf(pieces: readonly Piece[], formats: readonly BuyFormat[], columns = 250): BuyJob {
  return {
    pieces,
    formats,
    plain: [{ format: 0, layout: quickLayout(pieces, formats[0]!.format) }],
    columns,
    effort: 0,
  };
}

/** Orders that some full sheets were cut into without waste: no fewer can hold them (derived). */
export function backwards(seed: number, patterns: number, length: number) {
  const random = lcg(seed);
  const counts = new Map<number, number>();
  let sheets = 0;
  for (let i = 0; i < patterns; i++) {
    const times = 1 + Math.floor(15 * random());
    sheets += times;
    for (let left = length; left > 0;) {
      const piece = left < 320 ? left : 80 + 10 * Math.floor(18 * random());
      counts.set(piece, (counts.get(piece) ?? 0) + times);
      left -= piece;
    }
  }
  return { orders: [...counts], sheets };
}

function lcg(seed: number): () => number {
  let state = seed >>> 0;
  return () => (state = (Math.imul(state, 1664525) + 1013904223) >>> 0) / 2 ** 32;
}
