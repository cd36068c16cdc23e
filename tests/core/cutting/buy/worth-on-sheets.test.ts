import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { groundsOf } from '../../../../src/core/cutting/buy/ground';
import { leastCost } from '../../../../src/core/cutting/buy/least-cost';
import { worthsOnSheets } from '../../../../src/core/cutting/buy/worth-on-sheets';
import { highsInNode } from '../../../highs';
import { PRINTED_ORDERS, stripFormat, strips } from './strips';

const solver = await highsInNode();

describe('worths on sheets', () => {
  it('are such that no strips on a sheet are worth more than it holds, by trying all', () => {
    const lists = fc.uniqueArray(fc.tuple(fc.integer({ min: 15, max: 70 }), fc.integer({ min: 1, max: 6 })), {
      minLength: 1,
      maxLength: 4,
      selector: ([length]) => length,
    });
    fc.assert(
      fc.property(lists, fc.integer({ min: 70, max: 160 }), (list, other) => {
        const kinds = strips(list);
        const grounds = groundsOf(kinds, [stripFormat(100), stripFormat(other, { price: 13 })]);
        for (const { kinds: worths, holds } of worthsOnSheets(kinds, grounds, solver)) {
          for (const [i, { format }] of grounds.entries())
            expect(most(list, worths, format.length)).toBeLessThanOrEqual(holds[i]! + 1e-9);
        }
      }),
      { numRuns: 40, seed: 4 },
    );
  });

  it('tell of pieces that fit on the dearer format alone (derived)', () => {
    const kinds = strips([[140, 3]]);
    const grounds = groundsOf(kinds, [stripFormat(100, { price: 1 }), stripFormat(150, { price: 10 })]);
    // One on each of the long sheets; by area four and a fifth of the short ones would do.
    expect(leastCost(kinds, grounds, solver)).toBeCloseTo(30, 5);
  });

  it('count the fewest raws of a printed example (Chvátal, Linear Programming, 1983, chapter 13; from memory: 453)', () => {
    const kinds = PRINTED_ORDERS;
    expect(leastCost(kinds, groundsOf(kinds, [stripFormat(100, { price: 1 })]), solver)).toBeCloseTo(453, 5);
  });
});

/** The most that strips are worth that lie one behind the other in a length. */
function most(
  list: readonly (readonly [length: number, count: number])[],
  worths: readonly number[],
  room: number,
): number {
  const [first, ...others] = list;
  if (!first) return 0;
  const [length, count] = first;
  let best = 0;
  for (let n = 0; n <= count && n * length <= room; n++)
    best = Math.max(best, n * worths[0]! + most(others, worths.slice(1), room - n * length));
  return best;
}
