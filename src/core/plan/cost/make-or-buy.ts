import { breakEven } from './break-even';
import type { CostLine } from './cost';

/** Building a style against buying finished units for it. */
export interface MakeOrBuy {
  /** Money for a pair of this run: built, and bought with its share of tooling and of pairs that are left over, glued and fitted. */
  readonly make: number;
  readonly buy: number;
  /** Pairs of the run, of each size no fewer than are sold of it; and those bought that are left over. */
  readonly bySize: number;
  readonly left: number;
  /** Pairs, as many of each size, from which buying costs no more; undefined where it never does. */
  readonly breakEven: number | undefined;
}

/**
 * Compares building with buying: a bought unit fits one last in one size, so tooling is paid per size and no fewer than
 * the least number of pairs is sold, of a size and in all (common practice). It is glued and fitted like any other, and sundries are the same
 * for both.
 * @returns undefined where no price of bought units is given.
 */
export function makeOrBuy({ run, pair, sundries, fitting }: CostLine): MakeOrBuy | undefined {
  const { boughtPrice, boughtTooling, boughtMinimum, boughtSizeMinimum } = run.style;
  if (boughtPrice === undefined || !fitting) return undefined;
  const tooling = boughtTooling * run.sizes.length;
  const bySize = run.sizes.reduce((sum, { pairs }) => sum + Math.max(pairs, boughtSizeMinimum), 0);
  const bought = Math.max(bySize, boughtMinimum);
  const least = Math.max(boughtMinimum, boughtSizeMinimum * run.sizes.length);
  const fitted = fitting.cost + sundries;
  const price = boughtPrice + fitted;
  return {
    make: pair,
    buy: (tooling + boughtPrice * bought) / run.pairs + fitted,
    bySize,
    left: bought - run.pairs,
    breakEven: price < pair ? breakEven(tooling, pair, price, least).pairs : undefined,
  };
}
