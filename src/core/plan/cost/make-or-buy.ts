import { breakEven } from './break-even';
import type { CostLine } from './cost';

/** Building a style against buying finished units for it. */
export interface MakeOrBuy {
  /** Money for a pair of this run: built, and bought with its share of tooling and of pairs that are left over, glued and fitted. */
  readonly make: number;
  readonly buy: number;
  /** Pairs from which buying costs no more; undefined where it never does. */
  readonly breakEven: number | undefined;
}

/**
 * Compares building with buying: a bought unit fits one last in one size, so tooling is paid per size and no fewer than
 * the least number of pairs is sold (common practice). It is glued and fitted like any other, and sundries are the same
 * for both.
 * @returns undefined where no price of bought units is given.
 */
export function makeOrBuy({ run, pair, sundries, fitting }: CostLine): MakeOrBuy | undefined {
  const { boughtPrice, boughtTooling, boughtMinimum } = run.style;
  if (boughtPrice === undefined || !fitting) return undefined;
  const tooling = boughtTooling * run.sizes.length;
  const bought = Math.max(run.pairs, boughtMinimum);
  const fitted = fitting.cost + sundries;
  const price = boughtPrice + fitted;
  return {
    make: pair,
    buy: (tooling + boughtPrice * bought) / run.pairs + fitted,
    breakEven: price < pair ? breakEven(tooling, pair, price, boughtMinimum).pairs : undefined,
  };
}
