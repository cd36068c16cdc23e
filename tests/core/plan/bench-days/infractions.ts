import type { Lot } from '../../../../src/core/plan/bench-days/lots';
import type { Schedule } from '../../../../src/core/plan/bench-days/schedule';

const NEAR = 1e-4;
const DAY = 1440;

/** The bench's days as the check has them: from day 0 on, none closed. */
export interface Hours {
  /** Minutes of work in a day. */
  readonly minutes: number;
}

/**
 * What a schedule does that cannot be done, in words: found by looking at each rule by itself, from the times alone.
 * Days are those of a clock without closed days.
 */
export function infractions(
  lots: readonly Lot[],
  { times, stretches }: Schedule,
  { minutes }: Hours,
): readonly string[] {
  const found: string[] = [];
  const say = (holds: boolean, words: string) => {
    if (!holds) found.push(words);
  };
  const name = (lot: number, task: number) => `task ${task} of lot ${lot}`;

  // One bench: no two stretches at a time, each within the hours of one day.
  const inOrder = [...stretches].sort((a, b) => a.from - b.from);
  inOrder.forEach(({ lot, task, from, to }, i) => {
    const next = inOrder[i + 1];
    say(to > from, `${name(lot, task)} has a stretch of no length`);
    say(!next || next.from >= to - NEAR, `${name(lot, task)} overlaps what comes next`);
    say(from - DAY * Math.floor(from / DAY + 1e-9) <= minutes + NEAR, `${name(lot, task)} begins after hours`);
    say(to - DAY * Math.floor(from / DAY + 1e-9) <= minutes + NEAR, `${name(lot, task)} ends after hours`);
  });

  lots.forEach(({ tasks, pairs, last }, l) => {
    const own = times[l]!;
    tasks.forEach((task, i) => {
      const { begun, ended } = own.tasks[i]!;
      const worked = stretches.filter(({ lot, task: one }) => lot === l && one === i);
      const sum = worked.reduce((all, { from, to }) => all + to - from, 0);
      say(Math.abs(sum - pairs * task.minutes) < NEAR, `${name(l, i)} takes ${sum} minutes`);
      say(begun <= ended && ended < Infinity, `${name(l, i)} does not end`);
      say(
        worked.every(({ from, to }) => from >= begun - NEAR && to <= ended + NEAR),
        `${name(l, i)} is worked at outside of its time`,
      );
      for (const earlier of task.before) {
        const { wait, pressed } = tasks[earlier]!;
        const end = own.tasks[earlier]!.ended;
        say(begun >= end + wait - NEAR, `${name(l, i)} does not wait for ${earlier}`);
        say(begun >= end + pairs * pressed - NEAR, `${name(l, i)} is in the press with ${earlier}`);
        // What lies eight hours lies through the night.
        const night = Math.floor(begun / DAY) > Math.floor(end / DAY);
        say(wait < 480 || night, `${name(l, i)} comes on the day of ${earlier}`);
      }
      if (task.onLast) say(begun >= own.taken - NEAR, `${name(l, i)} has no last`);
      if (task.pulls) {
        const days = (moment: number) => Math.floor(moment / DAY) + (moment % DAY) / minutes;
        say(days(begun) >= days(own.taken) + last.daysOnLast - 1e-6, `lot ${l} is off its last too soon`);
        say(own.freed >= ended - NEAR, `lot ${l} frees its last before it is off`);
      }
      const join = task.sitting.at(-1);
      if (join !== undefined) {
        const end = own.tasks[join]!.ended;
        const long = [i, ...task.sitting].reduce((all, one) => all + pairs * tasks[one]!.minutes, task.wait) > minutes;
        say(
          long || Math.floor(begun / DAY) === Math.floor(Math.max(begun, end - NEAR) / DAY),
          `${name(l, i)} dries overnight`,
        );
        lots.forEach((other, o) => {
          other.tasks.forEach((one, k) => {
            const at = times[o]!.tasks[k]!.begun;
            const between = o !== l && one.sitting.length > 0 && at > begun + NEAR && at < end - NEAR;
            say(!between, `${name(o, k)} is coated while ${name(l, i)} dries`);
          });
        });
      }
    });
  });

  // Lasts: never more of a size than there are.
  lots.forEach(({ last, size, onHand }, l) => {
    const { taken } = times[l]!;
    const out = lots.reduce((sum, other, o) => {
      const one = times[o]!;
      const has = other.last.code === last.code && other.size === size && one.taken <= taken && taken < one.freed;
      return has ? sum + other.pairs : sum;
    }, 0);
    say(taken === Infinity || out <= onHand, `${out} pairs are on ${onHand} lasts`);
  });

  // The press: pair after pair.
  const pressed = lots.flatMap(({ tasks, pairs }, l) =>
    tasks.flatMap((task, i) => {
      const { begun, ended } = times[l]!.tasks[i]!;
      return task.pressed > 0 ? [{ begun, out: ended + pairs * task.pressed }] : [];
    }),
  );
  pressed.sort((a, b) => a.begun - b.begun);
  pressed.forEach(({ out }, i) => say(!pressed[i + 1] || pressed[i + 1]!.begun >= out - NEAR, 'two are in the press'));
  return found;
}
