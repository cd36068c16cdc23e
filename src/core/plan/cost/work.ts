import { type Making, makingOf } from '../../steps/making';
import type { Operation } from '../../steps/step';
import { type BenchRates, furtherMinutes, type Times } from '../../steps/times';

/** What one pair takes at the bench. */
export interface Work extends Making {
  readonly minutes: number;
  /** ml; undefined where a coverage is missing. */
  readonly adhesive: number | undefined;
}

/** Read off the steps: their minutes with those of the whole shoe, their adhesive and their waits. */
export function work(
  steps: readonly (Pick<Times, 'minutes' | 'adhesive' | 'wait'> & Pick<Operation, 'kind' | 'acts'>)[],
  style: string,
  rates: BenchRates,
): Work {
  let minutes = furtherMinutes(style, rates);
  let adhesive: number | undefined = 0;
  for (const step of steps) {
    minutes += step.minutes;
    adhesive = adhesive === undefined || step.adhesive === undefined ? undefined : adhesive + step.adhesive;
  }
  return { minutes, adhesive, ...makingOf(steps) };
}
