import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { splitPairs } from '../../../src/core/sizes/split-pairs';
import { evenly } from '../../evenly';

const sum = (list: readonly number[]) => list.reduce((a, b) => a + b, 0);

describe('splitPairs', () => {
  it('splits 36 pairs over 1-2-3-3-2-1 without a remainder (derived)', () => {
    expect(splitPairs(36, [1, 2, 3, 3, 2, 1]).pairs).toEqual([3, 6, 9, 9, 6, 3]);
  });

  it('gives remainders to the largest first, ties to the smaller size: 30 pairs over 1-2-3-3-2-1 (method of the largest remainder)', () => {
    expect(splitPairs(30, [1, 2, 3, 3, 2, 1]).pairs).toEqual([3, 5, 8, 7, 5, 2]);
  });

  it('says how it came to them: of 30 pairs over 1-2-3-3-2-1 the whole shares are 2, 5, 7, 7, 5, 2, and 2 are left (derived)', () => {
    const { shares, wholes, left } = splitPairs(30, [1, 2, 3, 3, 2, 1]);
    expect(shares).toEqual([2.5, 5, 7.5, 7.5, 5, 2.5]);
    expect([wholes, left]).toEqual([[2, 5, 7, 7, 5, 2], 2]);
  });

  it('takes shares in per cent: 9.3 % of 200 pairs is 18.6, so 19 (derived)', () => {
    expect(splitPairs(200, [9.3, 90.7]).pairs).toEqual([19, 181]);
  });

  it('leaves sizes of no weight without pairs and one size with all', () => {
    expect(splitPairs(7, [0, 1, 0]).pairs).toEqual([0, 7, 0]);
    expect(splitPairs(7, [3]).pairs).toEqual([7]);
  });

  it('splits no pairs into none', () => {
    expect(splitPairs(0, [1, 1]).pairs).toEqual([0, 0]);
  });

  it('gives a single pair of many equal sizes to the smallest', () => {
    expect(splitPairs(1, [1, 1, 1]).pairs).toEqual([1, 0, 0]);
  });

  it('refuses weights that add up to nothing', () => {
    expect(() => splitPairs(10, [0, 0])).toThrow('size_curve: the weights add up to nothing');
    expect(() => splitPairs(10, [])).toThrow('add up to nothing');
  });

  it('always adds up, each size within one pair of its exact share (quota rule of the largest remainder)', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 1_000_000 }),
        fc.array(evenly(0, 1e6), { minLength: 1, maxLength: 30 }),
        (total, curve) => {
          fc.pre(sum(curve) > 0);
          const split = splitPairs(total, curve).pairs;
          expect(sum(split)).toBe(total);
          split.forEach((n, i) => {
            expect(Number.isInteger(n)).toBe(true);
            expect(Math.abs(n - (total * (curve[i] as number)) / sum(curve))).toBeLessThan(1 + 1e-6);
          });
        },
      ),
      { seed: 2 },
    );
  });
});
