import type { StepKind } from '../../steps/step';
import { timesOfSteps } from '../../steps/steps';
import { benchOf } from '../bench';
import type { PlanInput } from '../inputs';
import type { Runs } from '../runs';
import type { Check } from './check';

/** Work of the hand, in the order of the bench: what takes no time worth telling is left out. */
const HANDWORK: readonly StepKind[] = ['skive', 'bend', 'saw', 'rasp', 'cover', 'sew', 'fix', 'trim', 'finish'];

/** Handwork that a style of the run has and no minutes, where its other work has some: bench hours go without it. */
export function untimedWork(
  { styles }: Pick<Runs, 'styles'>,
  input: Pick<PlanInput, 'rates' | 'stock'>,
): readonly Check[] {
  const bench = benchOf(input);
  const lacking = styles.flatMap(({ style, sizes }) => {
    const bottom = sizes[0]?.bottom;
    const steps = bottom ? timesOfSteps(bottom, style, bench) : [];
    if (steps.every(({ minutes }) => minutes === 0)) return [];
    return HANDWORK.filter((kind) => {
      const own = steps.filter((step) => step.kind === kind);
      return own.length > 0 && own.every(({ minutes }) => minutes === 0);
    });
  });
  const kinds = HANDWORK.filter((kind) => lacking.includes(kind));
  return kinds.length === 0 ? [] : [{ kind: 'untimedWork', subject: 'Costs and times', verdict: 'lookAt', kinds }];
}
