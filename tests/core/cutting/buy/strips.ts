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
