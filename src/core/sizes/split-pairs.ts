import { itemAt } from '../item-at';
import { Problem } from '../problem';

/** Pairs split over sizes, size by size. */
export interface SplitPairs {
  readonly pairs: readonly number[];
  /** Pairs in proportion to the weights, before they are made whole. */
  readonly shares: readonly number[];
  /** The whole pairs of each share, and how many pairs are left over when each size has them. */
  readonly wholes: readonly number[];
  readonly left: number;
}

/**
 * Splits pairs over sizes in proportion to a size curve, so that they add up: whole shares first, then one more pair
 * each to the largest remainders, ties to the smaller size (method of the largest remainder).
 * @param total pairs, whole, 0 or more
 * @param curve weight of each size in order, 0 or more, not all 0
 */
export function splitPairs(total: number, curve: readonly number[]): SplitPairs {
  const sum = curve.reduce((a, b) => a + b, 0);
  if (!(sum > 0)) throw new Problem('invalid', { argument: 'size_curve' }, 'the weights add up to nothing');
  const shares = curve.map((weight) => (total * weight) / sum);
  // A share that is whole on paper may come out a hair below in binary.
  const wholes = shares.map((share) => Math.floor(share + 1e-9));
  const left = total - wholes.reduce((a, b) => a + b, 0);
  const remainders = shares.map((share, i) => Number((share - itemAt(wholes, i)).toFixed(9)));
  const order = [...remainders.keys()].sort((a, b) => itemAt(remainders, b) - itemAt(remainders, a) || a - b);
  const more = new Set(order.slice(0, left));
  return { pairs: wholes.map((whole, i) => whole + (more.has(i) ? 1 : 0)), shares, wholes, left };
}
