import { describe, expect, it } from 'vitest';
import { buy } from '../../../../src/core/cutting/buy/buy';
import type { BuyFormat, BuyJob } from '../../../../src/core/cutting/buy/job';
import { costOfShares } from '../../../../src/core/cutting/buy/plain';
import { quickLayout } from '../../../../src/core/cutting/quick-layout';
import type { Piece } from '../../../../src/core/cutting/sheet/piece';
import { highsInNode } from '../../../highs';
import { FORMAT as HIDE } from '../natural/hide';
import { complaints } from '../oracle';
import { soleLike } from '../outlines';

const solver = await highsInNode();
const terms = { price: 10, pack: 1, minimum: 0, onHand: 0 };

/** @param more pieces of the smallest size */
function soles(count: number, more = 0): readonly Piece[] {
  return [255, 265, 275].flatMap((length, i) =>
    [false, true].map((mirrored): Piece => ({
      key: `${length} ${mirrored ? 'right' : 'left'}`,
      ring: soleLike(length, 24, mirrored),
      count: count + (i === 0 ? more : 0),
      way: { kind: 'any' },
    })),
  );
}

function jobOf(pieces: readonly Piece[], formats: readonly BuyFormat[], effort: number): BuyJob {
  const layout = quickLayout(pieces, formats[0]!.format);
  return { pieces, formats, plain: [{ format: 0, layout }], columns: 60, effort };
}

/** Every piece of the shares by name, once for each place. */
function laid(pieces: readonly Piece[], shares: ReturnType<typeof buy>['shares']): readonly number[] {
  const counts = pieces.map(() => 0);
  for (const { layout } of shares)
    for (const { piece } of [...layout.sheets, ...layout.offcuts.map(({ placements }) => placements)].flat())
      counts[piece]!++;
  return counts;
}

describe('a denser purchase', () => {
  it('lays all pieces on sheets of several formats at once, for less than the rows do', { timeout: 120_000 }, () => {
    const pieces = soles(4, 1);
    const small = { length: 560, width: 440, knifeRoom: 2, edgeTrim: 5 };
    const formats = [
      { format: { ...small, length: 800 }, terms: [terms] },
      { format: small, terms: [{ ...terms, price: 7.5 }] },
    ];
    const rows = buy(jobOf(pieces, formats, 0), solver);
    const searched = buy(jobOf(pieces, formats, 2), solver);
    expect(searched.cost).toBeLessThan(rows.cost);
    expect(searched.cost).toBeGreaterThanOrEqual(searched.least);
    expect(costOfShares(searched.shares, formats)).toBeCloseTo(searched.cost, 9);
    expect(laid(pieces, searched.shares)).toEqual(pieces.map(({ count }) => count));
    for (const { format, layout } of searched.shares) {
      const own = pieces.map((piece, i) => ({
        ...piece,
        count: layout.sheets.flat().filter((one) => one.piece === i).length,
      }));
      expect(complaints(own, formats[format]!.format, layout.sheets)).toEqual([]);
    }
  });

  it('lays on an offcut once, and saves the sheet that it would be', { timeout: 120_000 }, () => {
    const pieces = soles(3);
    const format = { length: 800, width: 440, knifeRoom: 2, edgeTrim: 5 };
    const offcuts = [{ code: 'Rack 1', length: 320, width: 300 }];
    const job = (own: BuyFormat['format']) => jobOf(pieces, [{ format: own, terms: [terms] }], 0.5);
    const { cost, shares } = buy(job({ ...format, offcuts }), solver);
    expect([buy(job(format), solver).cost, cost]).toEqual([20, 10]);
    expect(laid(pieces, shares)).toEqual(pieces.map(({ count }) => count));
    expect(shares[0]!.layout.offcuts.map(({ code }) => code)).toEqual(['Rack 1']);
    // More than sheet and offcut hold.
    const more = soles(3, 2);
    const { shares: two } = buy(jobOf(more, [{ format: { ...format, offcuts }, terms: [terms] }], 0.5), solver);
    expect(laid(more, two)).toEqual(more.map(({ count }) => count));
  });

  it('is looked for within a traced outline too', { timeout: 120_000 }, () => {
    const pieces = soles(4);
    const formats = [{ format: HIDE, terms: [terms] }];
    const rows = buy(jobOf(pieces, formats, 0), solver);
    const searched = buy(jobOf(pieces, formats, 0.5), solver);
    expect(searched.cost).toBeLessThanOrEqual(rows.cost);
    expect(laid(pieces, searched.shares)).toEqual(pieces.map(({ count }) => count));
  });
});
