import type { Operation } from './step';
import type { Times } from './times';

/** How long a pair is in the making, whoever works on it. */
export interface Making {
  /** Nights that it has to lie. */
  readonly nights: number;
  /** Waits by day, minutes. */
  readonly waits: number;
}

/** What is to lie so long lies through the night, minutes. */
const NIGHT = 8 * 60;

/**
 * Waits of a pair, one after the other; pieces that are bent to the last dry in one night, the blocked insole in one of its
 * own, for it is lasted over (derived).
 */
export function makingOf(steps: readonly (Pick<Operation, 'kind' | 'acts'> & Pick<Times, 'wait'>)[]): Making {
  let [nights, waits] = [0, 0];
  let bent = false;
  for (const { kind, acts, wait } of steps) {
    if (!wait) continue;
    if (wait.value < NIGHT) waits += wait.value;
    else if (kind === 'bend' && !acts.includes('block insole')) bent = true;
    else nights += 1;
  }
  return { nights: nights + (bent ? 1 : 0), waits };
}

/** Days until a pair is made that is worked on without a stop, so many minutes a day (derived). */
export function daysInMaking({ nights, waits }: Making, minutes: number, minutesADay: number): number {
  return nights + (minutes + waits) / minutesADay;
}
