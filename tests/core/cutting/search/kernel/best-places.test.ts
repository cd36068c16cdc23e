import { beforeEach, describe, expect, it } from 'vitest';
import { bestCount, offer, startBest, worst } from '../../../../../src/core/cutting/search/kernel/best-places';
import * as at from '../../../../../src/core/cutting/search/kernel/layout';
import { real, turnTo, word } from '../../../../../src/core/cutting/search/kernel/memory';
import { viewsOf } from '../../../../../src/core/cutting/search/kernel/views';

beforeEach(() => {
  turnTo(viewsOf(new ArrayBuffer(at.JOB_SIZE)), { prepare: () => 0, exits: () => 0 });
  startBest(0, 5);
});

/** Choice, x and loss of those kept. */
const kept = () =>
  Array.from({ length: bestCount() }, (_, i) => {
    const one = at.BEST + i * at.BEST_SIZE;
    return [word(one + at.BEST_CHOICE), real(one + at.BEST_X), real(one + at.BEST_LOSS)];
  });

describe('the best places', () => {
  it('are the three that lose least, the best first', () => {
    for (const [i, loss] of [7, 3, 9, 1, 5].entries()) offer(0, 20 * i, 0, loss);
    expect(kept()).toEqual([
      [0, 60, 1],
      [0, 20, 3],
      [0, 80, 5],
    ]);
    expect(worst()).toBe(5);
  });

  it('are apart: of places close to each other in the same shape the better stays', () => {
    offer(0, 0, 0, 4);
    offer(0, 3, 3, 2);
    offer(0, 1, 0, 3);
    offer(1, 3, 3, 6);
    expect(kept()).toEqual([
      [0, 3, 2],
      [1, 3, 6],
    ]);
    expect(worst()).toBe(Infinity);
  });
});
