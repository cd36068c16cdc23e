import { Problem } from '../problem';
import type { Step } from '../steps/step';
import { stepsOf } from '../steps/steps';
import { benchOf } from './bench';
import { fold } from './codes';
import { codesInWords } from './codes-in-words';
import type { PlanInput } from './inputs';
import type { Runs, SizeRun, StyleRun } from './runs';

/** One step at the bench, of one size. */
export interface TicketStep {
  readonly run: StyleRun;
  readonly sizeRun: SizeRun;
  readonly step: Step;
}

/**
 * The steps of a style in the order of the bench, size by size.
 * @throws Problem where the style is not in the run.
 */
export function ticket(
  runs: Runs,
  input: Pick<PlanInput, 'rates' | 'stock' | 'styles'>,
  style: string,
  size?: number,
): readonly TicketStep[] {
  const run = runs.styles.find((one) => fold(one.style.code) === fold(style));
  if (!run) throw noTicket(runs, input, style);
  const sizes = run.sizes.filter((one) => size === undefined || one.size === size);
  if (sizes.length === 0) {
    throw new Problem('invalid', { argument: 'size' }, `${size} is not in the run of ${run.style.code}`);
  }
  const bench = benchOf(input);
  return sizes.flatMap((sizeRun) =>
    stepsOf(sizeRun.bottom, run.style, bench).map((step): TicketStep => ({ run, sizeRun, step })),
  );
}

/** Why a style has no ticket: it cannot be built, it is gone, or nobody wants pairs of it. */
function noTicket(runs: Runs, { styles }: Pick<PlanInput, 'styles'>, style: string): Problem {
  const leftOut = runs.leftOut.find(({ name }) => fold(name) === fold(style));
  const there = styles.some(({ code }) => fold(code) === fold(style));
  if (leftOut && there) return leftOut.why;
  const known = codesInWords(runs.styles.map((one) => one.style.code));
  const why = there ? 'has no pairs in this run' : 'is not in Styles';
  return new Problem(
    'invalid',
    { argument: 'style' },
    `"${style}" ${why}; ${known ? `choose one that has pairs: ${known}` : 'enter pairs in Pairage'}`,
  );
}
