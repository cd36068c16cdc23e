import { Problem } from '../problem';

/**
 * Splits pairs over sizes in proportion to a size curve, so that they add up: whole shares first, then one more pair
 * each to the largest remainders, ties to the smaller size (method of the largest remainder).
 * @param total pairs, whole, 0 or more
 * @param curve weight of each size in order, 0 or more, not all 0
 */
export function pairs(total: number, curve: readonly number[]): readonly number[] {
  const sum = curve.reduce((a, b) => a + b, 0);
  if (!(sum > 0)) throw new Problem('invalid', { argument: 'size_curve' }, 'the weights add up to nothing');
  const exact = curve.map((weight) => (total * weight) / sum);
  // A share that is whole on paper may come out a hair below in binary.
  const split = exact.map((share) => Math.floor(share + 1e-9));
  const left = total - split.reduce((a, b) => a + b, 0);
  const order = exact
    .map((share, i) => ({ i, remainder: Number((share - (split[i] as number)).toFixed(9)) }))
    .sort((a, b) => b.remainder - a.remainder || a.i - b.i);
  for (const { i } of order.slice(0, left)) split[i] = (split[i] as number) + 1;
  return split;
}
