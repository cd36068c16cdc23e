import type { Style } from '../bottom/style';
import { Problem } from '../problem';
import { fold } from './codes';
import type { PlanInput } from './inputs';
import { Plan } from './plan';

/** One way to build a style: what differs from its row in Styles. */
export interface Variant {
  readonly name: string;
  readonly changes: Partial<Omit<Style, 'row' | 'code'>>;
}

/** What a variant comes to; each figure for a pair on the average of the run's sizes, sheets for the whole run. */
export interface Comparison {
  readonly variant: Variant;
  /** Why it cannot be built, instead of all else. */
  readonly problem?: Problem;
  readonly result?: {
    /** Under the seat, mm. */
    readonly height: number;
    readonly layers: number;
    /** mm off lifts and platform. */
    readonly rasped: number;
    readonly weight: number | undefined;
    readonly cost: number;
    readonly minutes: number;
    readonly sheets: number;
    readonly putRight: number;
    readonly lookAt: number;
  };
}

/**
 * Compares ways to build one style: the whole plan of its own pairs, worked out for each way. Sheets are its own, not
 * shared with other styles.
 * @throws Problem where the style is not in Styles.
 */
export function compare(input: PlanInput, code: string, variants: readonly Variant[]): readonly Comparison[] {
  const style = input.styles.find((one) => fold(one.code) === fold(code));
  if (!style) throw new Problem('invalid', { argument: 'style' }, `"${code}" is not in Styles`);
  const own = {
    ...input,
    pairage: input.pairage.filter((row) => fold(row.style) === fold(code)),
    layouts: [],
    offcuts: [],
  };
  return variants.map((variant): Comparison => {
    const plan = new Plan({ ...own, styles: [{ ...style, ...variant.changes }] });
    try {
      const [cost] = plan.costs;
      const bottom = plan.runs.styles[0]?.sizes[0]?.bottom;
      if (!cost || !bottom) throw new Problem('unavailable', { argument: 'style' }, `${code} has no pairs in this run`);
      // Rates for other styles are none of this comparison's business.
      const told = plan.checks.filter(({ kind }) => kind !== 'unreadRate');
      const count = (verdict: string) => told.filter((check) => check.verdict === verdict).length;
      return {
        variant,
        result: {
          height: bottom.seatStack,
          layers: bottom.layers.filter(({ part }) => part !== 'cover' && part !== 'welt').length,
          rasped: (bottom.lifts?.rasped ?? 0) + (bottom.platform?.rasped ?? 0),
          weight: cost.weight,
          cost: cost.pair,
          minutes: cost.minutes,
          sheets: plan.orders.reduce((sum, { need }) => sum + need, 0),
          putRight: count('putRight'),
          lookAt: count('lookAt'),
        },
      };
    } catch (error) {
      if (error instanceof Problem) return { variant, problem: error };
      throw error;
    }
  });
}
