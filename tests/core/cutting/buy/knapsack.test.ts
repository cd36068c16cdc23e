import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Choice, knapsack } from '../../../../src/core/cutting/buy/knapsack';

const choices = fc.array(
  fc.record({
    // Whole steps, so that nothing is rounded.
    size: fc.integer({ min: 100, max: 1500 }).map((steps) => steps / 2000),
    value: fc.integer({ min: 0, max: 20 }),
    most: fc.integer({ min: 0, max: 3 }),
  }),
  { minLength: 1, maxLength: 4 },
);

/** The greatest value, by trying every number of everything. */
function bestByTrial(list: readonly Choice[], room: number): number {
  const [first, ...others] = list;
  if (!first) return 0;
  let best = 0;
  for (let n = 0; n <= first.most && n * first.size <= room + 1e-12; n++) {
    best = Math.max(best, n * first.value + bestByTrial(others, room - n * first.size));
  }
  return best;
}

describe('knapsack', () => {
  it('chooses as much value as trying everything does, and what fits', () => {
    fc.assert(
      fc.property(choices, (list) => {
        const counts = knapsack(list, 1);
        const sum = (of: (one: Choice) => number) => list.reduce((all, one, i) => all + counts[i]! * of(one), 0);
        expect(sum(({ size }) => size)).toBeLessThanOrEqual(1 + 1e-9);
        for (const [i, { most }] of list.entries()) expect(counts[i]).toBeLessThanOrEqual(most);
        expect(sum(({ value }) => value)).toBeCloseTo(bestByTrial(list, 1), 9);
      }),
      { numRuns: 300 },
    );
  });
});
