import { derived } from '../../derived';
import { assemblyOf } from '../../steps/assembly';
import { operationsOf } from '../../steps/operations';
import type { StepKind } from '../../steps/step';
import { type Bench, timesOfSteps } from '../../steps/steps';
import { benchOf } from '../bench';
import { fold } from '../codes';
import { stocksOf } from '../finder';
import type { PlanInput, Rate } from '../inputs';
import type { Runs, StyleRun } from '../runs';
import type { Check } from './check';

/** Work of the hand, in the order of the bench: what takes no time worth telling is left out. */
const HANDWORK: readonly StepKind[] = ['skive', 'bend', 'saw', 'rasp', 'cover', 'sew', 'fix', 'trim', 'finish'];

type Costed = Pick<PlanInput, 'rates' | 'stock'>;

/** Handwork that a style of the run has and no minutes, where its other work has some: bench hours go without it. */
export function untimedWork({ styles }: Pick<Runs, 'styles'>, input: Costed): readonly Check[] {
  const bench = benchOf(input);
  const lacking = styles.map((run) =>
    untimedBefore(run, [input.rates, ...stocksOf(run.style).map(bench.mouldedFace)], () => untimed(run, bench)),
  );
  const kinds = HANDWORK.flatMap((kind) => {
    const own = styles.filter((_, i) => lacking[i]!.includes(kind)).map(({ style: { code } }) => code);
    return own.length === 0 ? [] : [{ kind, styles: own }];
  });
  return kinds.length === 0 ? [] : [{ kind: 'untimedWork', subject: 'Costs and times', verdict: 'lookAt', kinds }];
}

const untimedBefore = derived<StyleRun, readonly StepKind[]>('handwork of a run without minutes');

/** Handwork of a style, in the first of its sizes, to which no row gives minutes; none where it has no minutes at all. */
function untimed({ style, sizes: [first] }: StyleRun, bench: Bench): readonly StepKind[] {
  const steps = first ? timesOfSteps(first.bottom, style, bench) : [];
  if (steps.every(({ minutes }) => minutes === 0)) return [];
  return HANDWORK.filter((kind) => {
    const own = steps.filter((step) => step.kind === kind);
    return own.length > 0 && own.every(({ minutes }) => minutes === 0);
  });
}

/** Rows of minutes that name no kind of step and no style, where there are several styles: they count on every one. */
export function minutesOnAll({ styles }: Pick<Runs, 'styles'>, { rates }: Costed): readonly Check[] {
  const own = rates.filter(
    ({ unit, scope, step, value }) =>
      unit === 'minutes a pair' && scope === undefined && step === undefined && value > 0,
  );
  if (own.length === 0 || styles.length < 2) return [];
  const minutes = own.reduce((sum, { value }) => sum + value, 0);
  return [{ kind: 'minutesOnAll', subject: 'Costs and times', verdict: 'holds', rates: own, minutes }];
}

const kindsBefore = derived<StyleRun, ReadonlySet<StepKind>>('kinds of steps of a run');

/** Rows that give minutes to a style of the run for a kind of step that it has in no size. */
export function idleMinutes({ styles }: Pick<Runs, 'styles'>, input: Costed): readonly Rate[] {
  const { limits, mouldedFace } = benchOf(input);
  const kindsOf = (run: StyleRun) =>
    kindsBefore(run, [JSON.stringify(limits), stocksOf(run.style).filter(mouldedFace).join('\n')], () => {
      const steps = run.sizes.flatMap(({ bottom }) => operationsOf(assemblyOf(bottom, run.style, mouldedFace), limits));
      return new Set(steps.map(({ kind }) => kind));
    });
  return input.rates.filter(({ scope, step, value }) => {
    if (scope === undefined || step === undefined || value === 0) return false;
    const run = styles.find(({ style }) => fold(style.code) === fold(scope));
    return run !== undefined && !kindsOf(run).has(step);
  });
}
