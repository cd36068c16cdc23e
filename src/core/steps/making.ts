import { itemAt } from '../item-at';
import { does } from './operation';
import { type Order, orderOf } from './in-order';
import type { Operation } from './step';
import type { Times } from './times';

/** How long a pair is in the making, whoever works on it. */
export interface Making {
  /** Nights that it has to lie. */
  readonly nights: number;
  /** Waits by day, minutes. */
  readonly waits: number;
}

/** The same with all that is worked on a pair meanwhile, minutes. */
export interface Stay extends Making {
  readonly minutes: number;
}

/** What is to lie so long lies through the night, minutes. */
export const NIGHT = 8 * 60;

type Timed = Operation & Pick<Times, 'wait' | 'minutes'>;

/**
 * Nights and waits of a pair: of steps that wait for one another one after the other, the longest such chain counts; what
 * does not depend on it lies beside it (derived).
 */
export function makingOf(steps: readonly Timed[], order = orderOf(steps)): Making {
  return longest(steps, order, () => true);
}

/**
 * What keeps a pair on its last: the longest chain of waits from the first step on it until it is pulled, and the work of
 * these steps. What is built off the last meanwhile counts where the last waits for it (derived).
 */
export function stayOnLast(steps: readonly Timed[], order = orderOf(steps)): Stay {
  const { places, before } = order;
  const all = places.map((place) => itemAt(steps, place));
  const { begun, until } = timeOnLast(steps, order);
  const asked = new Set([until]);
  for (let i = until; i >= 0; i--) if (asked.has(i)) for (const earlier of before[i]!) asked.add(earlier);
  const counts = new Set(all.filter((_, i) => begun[i] && i !== until && asked.has(i)));
  let minutes = 0;
  for (const step of counts) minutes += step.minutes;
  return { ...longest(steps, order, (step) => counts.has(step)), minutes };
}

/**
 * Which steps, by their places in the order of the bench, are done once the pair is on its last, and the one that pulls
 * it; −1 where none does.
 */
export function timeOnLast(
  steps: readonly Operation[],
  { places, before }: Order,
): { readonly begun: readonly boolean[]; readonly until: number } {
  const all = places.map((place) => itemAt(steps, place));
  const begun: boolean[] = [];
  all.forEach((step, i) => begun.push(onLast(step) || before[i]!.some((earlier) => begun[earlier])));
  return { begun, until: all.findIndex((step) => does(step, 'last out')) };
}

/** Whether a step needs the shoe on its last. */
function onLast(step: Operation): boolean {
  if (step.joint) return !step.joint.apart && !does(step, 'rasp to last', 'try on last');
  if (step.faces.some(({ piece }) => !piece)) return true;
  return step.kind === 'bend' ? !does(step, 'soak') : does(step, 'block insole', 'last upper', 'fit shank');
}

/** The chain with the most nights, of those with the most waits. */
function longest(steps: readonly Timed[], { places, before }: Order, counts: (step: Timed) => boolean): Making {
  const ends: Making[] = [];
  let most: Making = { nights: 0, waits: 0 };
  places.forEach((place, i) => {
    const step = itemAt(steps, place);
    let { nights, waits }: Making = { nights: 0, waits: 0 };
    for (const earlier of before[i]!) {
      const end = itemAt(ends, earlier);
      if (longer(end, { nights, waits })) ({ nights, waits } = end);
    }
    const wait = counts(step) ? (step.wait?.value ?? 0) : 0;
    const end = wait < NIGHT ? { nights, waits: waits + wait } : { nights: nights + 1, waits };
    ends.push(end);
    if (longer(end, most)) most = end;
  });
  return most;
}

function longer(one: Making, other: Making): boolean {
  return one.nights > other.nights || (one.nights === other.nights && one.waits > other.waits);
}

/** Days for so many nights, waits and minutes of work, worked on without a stop so many minutes a day (derived). */
export function daysOf({ nights, waits }: Making, minutes: number, minutesADay: number): number {
  return nights + (minutes + waits) / minutesADay;
}
