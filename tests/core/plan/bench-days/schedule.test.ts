import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { madeBy, scheduled } from '../../../../src/core/plan/bench-days/schedule';
import { WorkingTime } from '../../../../src/core/plan/bench-days/working-time';
import { finished } from '../../../../src/core/stepwise';
import { infractions } from './infractions';
import { type Given, type GivenLot, lotsOfGiven } from './lots-of-tasks';

const schedule = (lots: readonly GivenLot[], minutes = 480) =>
  finished(scheduled(lotsOfGiven(lots), new WorkingTime(minutes, undefined, 7)));
const ends = (lots: readonly GivenLot[], minutes?: number) =>
  schedule(lots, minutes).times.map(({ tasks }) => Math.max(...tasks.map(({ ended }) => ended)));

function permutations<T>(list: readonly T[]): readonly (readonly T[])[] {
  if (list.length < 2) return [list];
  return list.flatMap((one, i) => permutations(list.toSpliced(i, 1)).map((rest) => [one, ...rest]));
}

/** Tasks of which any may wait for any before it, dry, be pressed, or lie on the last from some place on. */
const anyTasks = fc
  .array(
    fc.record({
      minutes: fc.integer({ min: 0, max: 40 }),
      wait: fc.constantFrom(0, 0, 10, 45, 300, 720),
      pressed: fc.constantFrom(0, 0, 0, 10),
      links: fc.array(fc.boolean(), { minLength: 6, maxLength: 6 }),
      coats: fc.boolean(),
    }),
    { minLength: 1, maxLength: 6 },
  )
  .chain((all) =>
    fc.integer({ min: 0, max: all.length }).map((onLast) =>
      all.map(({ minutes, wait, pressed, links, coats }, i): Given => {
        const chained = i > onLast;
        const before = links.flatMap((linked, k) => (k < i && (linked || (chained && k === i - 1)) ? [k] : []));
        const next = all[i + 1];
        // As the steps of the bench have it: no joining coats for another, pressing is a step of its own, what is joined
        // on the last is coated on it, and nobody waits with the pulling of a last for films.
        const coating = coats && i % 2 === 0 && wait < 60 && i + 1 !== onLast && i + 2 < all.length;
        const sitting: readonly number[] =
          coating && pressed === 0 && next?.pressed === 0 && next.links[i] ? [i + 1] : [];
        return {
          minutes,
          wait,
          pressed,
          before,
          onLast: i >= onLast,
          pulls: i === all.length - 1 && i > onLast,
          sitting,
        };
      }),
    ),
  )
  // Nothing but the coat may keep its joining waiting, as the steps of the bench have it.
  .map((tasks) =>
    tasks.map((task) => ({ ...task, sitting: (task.sitting ?? []).filter((join) => isAlone(tasks, join)) })),
  );

function isAlone(tasks: readonly Given[], join: number): boolean {
  const coat = join - 1;
  return (tasks[join]?.before ?? []).every((one) => one === coat || tasks[coat]?.before?.includes(one));
}

const anyLots = fc.array(
  fc.record({
    tasks: anyTasks,
    pairs: fc.integer({ min: 1, max: 3 }),
    last: fc.constantFrom('Round', 'Court'),
    daysOnLast: fc.constantFrom(0, 0.5, 2),
  }),
  { minLength: 1, maxLength: 6 },
);

describe('scheduled', () => {
  it('keeps every rule of the bench, whatever there is to do (each looked at by itself)', () => {
    fc.assert(
      fc.property(anyLots, fc.constantFrom(60, 240, 480, 1440), (given, minutes) => {
        const all = given.map((one) => ({ ...one, onHand: 3 }));
        const lots = lotsOfGiven(all);
        expect(infractions(lots, schedule(all, minutes), { minutes })).toEqual([]);
      }),
      { numRuns: 150 },
    );
  });

  it('is the same for the same lots', () => {
    fc.assert(
      fc.property(anyLots, (given) => {
        expect(schedule(given)).toEqual(schedule(given));
      }),
      { numRuns: 50 },
    );
  });

  it('ends each lot with its last task, and so where nothing else is asked for (its own times)', () => {
    fc.assert(
      fc.property(anyLots, (given) => {
        const { times, made } = schedule(given);
        const last = times.map(({ tasks }) => Math.max(...tasks.map(({ ended }) => ended)));
        expect(made.map(({ ended }) => ended)).toEqual(last);
        expect(made.every(({ ended, day }) => ended >= 1440 * day && ended <= 1440 * day + 480)).toBe(true);
        const time = new WorkingTime(480, undefined, 7);
        expect(finished(madeBy(lotsOfGiven(given), time, () => false))).toEqual(made);
        expect(finished(madeBy(lotsOfGiven(given), time, () => true))).toBeUndefined();
      }),
      { numRuns: 50 },
    );
  });

  it('leaves the bench idle only while nothing can be done (definition of list scheduling)', () => {
    fc.assert(
      fc.property(anyLots, (given) => {
        const plain = given.map(({ tasks, ...lot }) => ({
          ...lot,
          tasks: tasks.map((task) => ({ ...task, onLast: false, pulls: false, pressed: 0, sitting: [] })),
        }));
        const { times, stretches } = schedule(plain, 480);
        stretches.forEach(({ to }, i) => {
          const next = stretches[i + 1];
          if (!next || next.from <= to + 1e-6) return;
          const couldGoOn = times.some(({ tasks }) =>
            tasks.some(({ ready, begun }) => ready <= to + 1e-6 && begun > to + 1e-6 && to % 1440 < 480 - 1e-6),
          );
          expect(couldGoOn).toBe(false);
        });
      }),
    );
  });

  it('by days due keeps the greatest lateness least where nothing waits (all orders tried; Butterworth, 1.3.2)', () => {
    const job = fc.record({ minutes: fc.integer({ min: 1, max: 9 }), due: fc.integer({ min: 1, max: 30 }) });
    const lateness = (jobs: readonly { readonly minutes: number; readonly due: number }[]) =>
      Math.max(...ends(jobs.map(({ minutes }) => ({ tasks: [{ minutes }] }))).map((end, i) => end - jobs[i]!.due));
    fc.assert(
      fc.property(fc.array(job, { minLength: 1, maxLength: 4 }), (jobs) => {
        const byDue = jobs.toSorted((a, b) => a.due - b.due);
        const least = Math.min(...permutations(jobs).map((order) => lateness(order)));
        expect(lateness(byDue)).toBeCloseTo(least, 9);
      }),
      { numRuns: 60 },
    );
  });

  it('never ends sooner than the best of all ways to fill the minutes (every way tried)', () => {
    const small = fc.array(
      fc.array(
        fc.record({
          minutes: fc.integer({ min: 1, max: 2 }),
          wait: fc.integer({ min: 0, max: 3 }),
          linked: fc.boolean(),
        }),
        { minLength: 1, maxLength: 3 },
      ),
      { minLength: 1, maxLength: 2 },
    );
    fc.assert(
      fc.property(small, (all) => {
        const lots = all.map((tasks) => ({
          tasks: tasks.map(({ minutes, wait, linked }, i) => ({
            minutes,
            wait,
            before: linked && i > 0 ? [i - 1] : [],
          })),
        }));
        expect(Math.max(...ends(lots))).toBeGreaterThanOrEqual(shortest(lots) - 1e-9);
      }),
      { numRuns: 100 },
    );
  });

  it('works at what comes later in the list while films dry, and at the joint as soon as they are dry (worked by hand)', () => {
    const bond: readonly Given[] = [
      { minutes: 5, wait: 20, sitting: [1] },
      { minutes: 10, before: [0] },
    ];
    const { stretches } = schedule([{ tasks: bond }, { tasks: [{ minutes: 60 }] }]);
    expect(stretches).toEqual([
      { lot: 0, task: 0, from: 0, to: 5 },
      { lot: 1, task: 0, from: 5, to: 25 },
      { lot: 0, task: 1, from: 25, to: 35 },
      { lot: 1, task: 0, from: 35, to: 75 },
    ]);
  });

  it('coats nothing that would have to be joined the next day (worked by hand)', () => {
    const bond: readonly Given[] = [
      { minutes: 5, wait: 20, sitting: [1], before: [] },
      { minutes: 10, before: [0] },
    ];
    // 30 of the 60 minutes are over, and the sitting takes 35.
    expect(schedule([{ tasks: [{ minutes: 30 }] }, { tasks: bond }], 60).times[1]?.tasks[0]?.begun).toBe(1440);
    expect(schedule([{ tasks: [{ minutes: 25 }] }, { tasks: bond }], 60).times[1]?.tasks[0]?.begun).toBe(25);
  });

  it('lets a night of drying pass before the next step, however long the day is (worked by hand)', () => {
    const dry = (wait: number) => [
      {
        tasks: [
          { minutes: 10, wait },
          { minutes: 10, before: [0] },
        ],
      },
    ];
    expect(ends(dry(479), 1440)).toEqual([10 + 479 + 10]);
    expect(ends(dry(480), 1440)).toEqual([1440 + 10]);
    expect(ends(dry(2 * 1440), 480)).toEqual([2 * 1440 + 10 + 10]);
  });

  it('has two lots of two pairs take three lasts one after the other, and a third size beside them (worked by hand)', () => {
    const onLast: readonly Given[] = [
      { minutes: 30, onLast: true },
      { minutes: 0, onLast: true, pulls: true, before: [0] },
    ];
    const lot = { tasks: onLast, pairs: 2, onHand: 3, daysOnLast: 1 };
    const { times } = schedule([lot, lot, { ...lot, last: 'Court' }]);
    expect(times.map(({ taken }) => taken)).toEqual([0, 1440, 60]);
    expect(times.map(({ freed }) => freed)).toEqual([1440, 2 * 1440, 1440 + 60]);
    expect(times[1]?.tasks[0]).toMatchObject({ ready: 1440, waited: 'lasts' });
    expect(times[0]?.tasks[1]).toMatchObject({ ready: 1440, waited: 'days on last' });
  });

  it('presses pair after pair in one press (worked by hand)', () => {
    const press: readonly Given[] = [{ pressed: 10 }, { minutes: 1, before: [0] }];
    const { times } = schedule([
      { tasks: press, pairs: 3 },
      { tasks: press, pairs: 2 },
    ]);
    expect(times.map(({ tasks }) => tasks[0]?.begun)).toEqual([0, 33]);
    expect(times.map(({ tasks }) => tasks[1]?.begun)).toEqual([30, 53]);
  });
});

/** The least minutes in which all can be done: every choice at every minute, within one long day. */
function shortest(lots: readonly GivenLot[]): number {
  const tasks = lots.flatMap(({ tasks: own }, l) => own.map((task, i) => ({ ...task, l, i })));
  const place = (l: number, i: number) => tasks.findIndex((one) => one.l === l && one.i === i);
  const seen = new Map<string, number>();
  const from = (left: readonly number[], ended: readonly number[], now: number): number => {
    if (left.every((one) => one === 0)) return now;
    const key = JSON.stringify([left, ended.map((end) => Math.max(-9, end - now)), now]);
    const known = seen.get(key);
    if (known !== undefined) return known;
    const ready = tasks.flatMap(({ l, before = [] }, t) => {
      const waits = before.some((one) => {
        const at = place(l, one);
        return left[at]! > 0 || ended[at]! + (tasks[at]!.wait ?? 0) > now;
      });
      return left[t]! > 0 && !waits ? [t] : [];
    });
    const worked = ready.map((t) => {
      const after = left.with(t, left[t]! - 1);
      return from(after, after[t] === 0 ? ended.with(t, now + 1) : ended, now + 1);
    });
    const best = Math.min(...worked, ready.length === 0 ? from(left, ended, now + 1) : Infinity);
    seen.set(key, best);
    return best;
  };
  return from(
    tasks.map(({ minutes = 0 }) => minutes),
    tasks.map(() => 0),
    0,
  );
}
