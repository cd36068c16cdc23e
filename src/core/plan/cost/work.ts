import { orderOf } from '../../steps/in-order';
import { type Making, makingOf, type Stay, stayOnLast } from '../../steps/making';
import { does, isCuttingOut } from '../../steps/operation';
import type { Operation } from '../../steps/step';
import { type BenchRates, furtherWork, type Times } from '../../steps/times';

/** What one pair takes at the bench. */
export interface Work {
  readonly minutes: number;
  /** Of them, those of cutting its pieces out: a pair that is cut takes them no more. */
  readonly cutting: number;
  /** ml; undefined where a coverage is missing. */
  readonly adhesive: number | undefined;
  /** Faces that are pasted, mm². */
  readonly pasted: number;
  readonly making: Making;
  readonly onLast: Stay;
}

/** Read off the steps: their minutes with those of the whole shoe, their adhesive and their waits. */
export function work(
  steps: readonly (Operation & Pick<Times, 'minutes' | 'adhesive' | 'wait'>)[],
  style: string,
  rates: BenchRates,
): Work {
  let minutes = furtherWork(style, rates).minutes;
  let cutting = 0;
  let adhesive: number | undefined = 0;
  let pasted = 0;
  for (const step of steps) {
    minutes += step.minutes;
    if (isCuttingOut(step)) cutting += step.minutes;
    adhesive = adhesive === undefined || step.adhesive === undefined ? undefined : adhesive + step.adhesive;
    if (does(step, 'paste')) for (const { area } of step.faces) pasted += 2 * area;
  }
  const order = orderOf(steps);
  return { minutes, cutting, adhesive, pasted, making: makingOf(steps, order), onLast: stayOnLast(steps, order) };
}
