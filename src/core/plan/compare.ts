import type { Bottom } from '../bottom/bottom';
import type { Style } from '../bottom/style';
import { Problem } from '../problem';
import type { StepKind } from '../steps/step';
import { timesOfSteps } from '../steps/steps';
import { benchOf } from './bench';
import { fold } from './codes';
import { codesInWords } from './codes-in-words';
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
    /** Kinds of handwork that it has and that no row of Costs and times gives minutes for. */
    readonly untimed: readonly StepKind[];
  };
}

/** Handwork that minutes may be given for; making faces ready, coating and pressing are of the joint. */
const HANDWORK: readonly StepKind[] = ['skive', 'bend', 'join', 'saw', 'rasp', 'cover', 'sew', 'fix', 'trim', 'finish'];

/**
 * What a way lacks minutes for while another that is compared does not: it would seem to take no time. Nothing, where no
 * work is timed at all.
 */
export function untimedAlone({ result }: Comparison, all: readonly Comparison[]): readonly StepKind[] {
  if (!all.some((one) => one.result && one.result.minutes > 0)) return [];
  return (result?.untimed ?? []).filter((kind) => all.some((one) => one.result && !one.result.untimed.includes(kind)));
}

function untimed(bottom: Bottom, style: Style, input: PlanInput): readonly StepKind[] {
  const steps = timesOfSteps(bottom, style, benchOf(input));
  return HANDWORK.filter((kind) => {
    const own = steps.filter((step) => step.kind === kind);
    return own.length > 0 && own.every(({ minutes }) => minutes === 0);
  });
}

/**
 * Compares ways to build one style: the whole plan of its own pairs, worked out for each way. Sheets are its own, not
 * shared with other styles.
 * @throws Problem where the style is not in Styles.
 */
export function compare(input: PlanInput, code: string, variants: readonly Variant[]): readonly Comparison[] {
  const style = input.styles.find((one) => fold(one.code) === fold(code));
  if (!style)
    throw new Problem(
      'invalid',
      { argument: 'style' },
      `"${code}" is not in Styles, which holds ${codesInWords(input.styles.map((one) => one.code))}`,
    );
  const own = {
    ...input,
    // Ways are compared as if nothing were cut yet.
    pairage: input.pairage
      .filter((row) => fold(row.style) === fold(code))
      .map((row) => (row.cut ? { ...row, cut: false, stockCut: undefined } : row)),
    layouts: [],
    offcuts: [],
    offers: [],
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
          untimed: untimed(bottom, plan.input.styles[0] ?? style, input),
        },
      };
    } catch (error) {
      if (error instanceof Problem) return { variant, problem: error };
      throw error;
    }
  });
}
