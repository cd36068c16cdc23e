import { describe, expect, it } from 'vitest';
import { lotsOf } from '../../../../src/core/plan/bench-days/lots';
import { scheduled } from '../../../../src/core/plan/bench-days/schedule';
import { WorkingTime } from '../../../../src/core/plan/bench-days/working-time';
import { Plan } from '../../../../src/core/plan/plan';
import { finished } from '../../../../src/core/stepwise';
import { demoPlan } from '../../../drawing/demo-plan';
import { inputOf, type Named, ROUND } from '../../samples';
import { infractions } from './infractions';

const HOURS = { Item: 'Bench', Value: 5, Unit: 'hours a day' };
const START = { Item: 'Start', Value: 46531, Unit: 'day of start' };
const planOf = (pairage: readonly Named[], last: Named = {}, rates: readonly Named[] = [HOURS]) =>
  new Plan(inputOf({ pairage, lasts: [{ ...ROUND, ...last }], rates }));
const daysOf = (plan: Plan) => finished(plan.benchDays());

describe('the demo’s days at the bench', () => {
  const { plan } = demoPlan();
  const days = daysOf(plan);

  it('keep every rule of the bench (each looked at by itself, on a clock without closed days)', () => {
    const { lots } = lotsOf(plan.runs, plan.input);
    const schedule = finished(scheduled(lots, new WorkingTime(420, undefined, 7)));
    expect(lots.length).toBeGreaterThan(40);
    expect(infractions(lots, schedule, { minutes: 420 })).toEqual([]);
  });

  it('have all the minutes that Batches has, and never more a day than the bench works', () => {
    const all = days.lines.reduce((sum, { minutes }) => sum + minutes, 0);
    const wanted = plan.batches.reduce((sum, { minutes = 0 }) => sum + minutes, 0);
    // Moments are counted from the spreadsheet's day 0: of their digits, eight are whole minutes.
    expect(all).toBeCloseTo(wanted, 4);
    const byDay = new Map<number, number>();
    for (const { day, minutes } of days.lines) byDay.set(day, (byDay.get(day) ?? 0) + minutes);
    expect(Math.max(...byDay.values())).toBeLessThanOrEqual(420 + 1e-6);
  });

  it('make every pair once, in the batches that Batches has and by the days that it has', () => {
    const key = (last: string, size: number, style: string, customer: string | undefined) =>
      [last, size, style, customer].join();
    const made = new Map<string, { pairs: number; from: number; to: number; done: number }>();
    for (const { lot, waits, date = 0 } of days.lines) {
      if (waits) continue;
      const own = key(lot.last.code, lot.size, lot.run.style.code, lot.row.customer);
      const known = made.get(own) ?? { pairs: 0, from: Infinity, to: 0, done: 0 };
      const { pairs, batch } = lot;
      made.set(own, {
        pairs: known.pairs + pairs,
        from: Math.min(known.from, batch),
        to: Math.max(known.to, batch),
        done: Math.max(known.done, date),
      });
    }
    for (const { last, size, style, customer, pairs, from, to, done } of plan.batches) {
      expect(made.get(key(last, size, style, customer)), style).toEqual({ pairs, from, to, done });
    }
  });

  it('fall on no closed day', () => {
    // The demo's week has six days, and day 1 of the spreadsheet's count from 30 December 1899 was a Sunday.
    expect(days.lines.filter(({ date = 0 }) => (date - 1) % 7 === 0)).toEqual([]);
  });
});

describe('a bench that works round the clock', () => {
  it('makes every lot on one day, also where its last minute is the last of the day', () => {
    const rates = (minutes: number) => [
      { ...HOURS, Value: 24 },
      { Item: 'All of it', Value: minutes, Unit: 'minutes a pair', Step: 'finish' },
    ];
    for (const minutes of [1, 10, 45]) {
      for (const pairs of [1, 16, 36]) {
        // Pairs stay whole days on their lasts and are pulled as the day closes, which takes no minutes.
        const made = daysOf(planOf([{ Style: 'Betony', 38: pairs }], {}, rates(minutes))).lines.filter(
          ({ waits }) => !waits,
        );
        expect(new Set(made.map(({ lot }) => lot)).size, `${minutes}, ${pairs}`).toBe(made.length);
        expect(made.reduce((sum, { lot }) => sum + lot.pairs, 0)).toBe(pairs);
      }
    }
  });
});

describe('steps of a day', () => {
  const { plan } = demoPlan();
  const { lines } = daysOf(plan);
  const numbersOf = (ranges: readonly { readonly from: number; readonly to: number }[]) =>
    ranges.flatMap(({ from, to }) => Array.from({ length: to - from + 1 }, (_, i) => from + i));

  it('are each done on one day, all of them, and none is in part on a day after', () => {
    const lots = new Map<(typeof lines)[number]['lot'], typeof lines>();
    for (const line of lines) lots.set(line.lot, [...(lots.get(line.lot) ?? []), line]);
    expect(lots.size).toBeGreaterThan(40);
    for (const [lot, own] of lots) {
      const done = own.flatMap(({ steps }) => numbersOf(steps.done));
      const wanted = lot.tasks.flatMap(({ number }) => number ?? []);
      expect([...done].sort((a, b) => a - b)).toEqual(wanted);
      for (const { steps, day } of own) {
        for (const number of numbersOf(steps.inPart)) {
          const on = own.find((line) => numbersOf(line.steps.done).includes(number))!;
          expect(on.day).toBeGreaterThan(day);
        }
      }
    }
    expect(lines.some(({ steps }) => steps.done.length > 1)).toBe(true);
  });
});

describe('pairs that are cut', () => {
  const rates = [
    HOURS,
    { Item: 'Cutting', Value: 5, Unit: 'minutes a piece' },
    { Item: 'Joint', Value: 3, Unit: 'minutes a joint' },
  ];
  const row = { Style: 'Betony', 38: 2 };
  const planned = (Cut: number | string, more: readonly Named[] = []) => planOf([{ ...row, Cut }, ...more], {}, rates);
  const [left, cut] = [planned(''), planned(2)];
  const pieces = left.runs.styles[0]!.sizes[0]!.bottom.layers.length;
  // Two pairs, two feet, 5 minutes a piece (worked by hand).
  const saved = 2 * 2 * pieces * 5;
  const hours = (plan: Plan) => plan.costs.reduce((sum, one) => sum + one.hours, 0);

  it('take no more time for cutting out, at the bench, in batches and on its days', () => {
    expect(pieces).toBeGreaterThan(1);
    expect(60 * (hours(left) - hours(cut))).toBeCloseTo(saved, 9);
    expect(cut.summary().hours).toBeCloseTo(hours(cut), 9);
    const inBatches = (plan: Plan) => plan.batches.reduce((sum, { minutes = 0 }) => sum + minutes, 0);
    expect(inBatches(left) - inBatches(cut)).toBeCloseTo(saved, 9);
    const onDays = (plan: Plan) => daysOf(plan).lines.reduce((sum, { minutes }) => sum + minutes, 0);
    expect(onDays(cut)).toBeCloseTo(inBatches(cut), 4);
    const numbers = daysOf(cut)
      .lines.flatMap(({ steps }) => steps.done)
      .map(({ from }) => from);
    expect(Math.min(...numbers)).toBe(pieces + 1);
  });

  it('cost the work that they took, as others', () => {
    expect(cut.costs[0]!.minutes).toBe(left.costs[0]!.minutes);
    expect(cut.costs[0]!.work).toBe(left.costs[0]!.work);
  });

  it('leave the others their cutting out', () => {
    const both = planned(2, [{ Style: 'Betony', 38: 1 }]);
    const all = planned('', [{ Style: 'Betony', 38: 1 }]);
    expect(60 * (hours(all) - hours(both))).toBeCloseTo(saved, 9);
  });

  it('keep every rule of the bench', () => {
    const { lots } = lotsOf(cut.runs, cut.input);
    const schedule = finished(scheduled(lots, new WorkingTime(300, undefined, 7)));
    expect(infractions(lots, schedule, { minutes: 300 })).toEqual([]);
  });
});

describe('days at the bench', () => {
  it('hold a last for its days, batch after batch: 4 pairs on 1 pair of lasts for 2 days take 8 (derived, as Batches)', () => {
    const plan = planOf([{ Style: 'Betony', 38: 4 }], { 'Pairs on hand': 1, 'Days on last': 2 }, [HOURS, START]);
    const made = daysOf(plan).lines.filter(({ waits }) => !waits);
    expect(made.map(({ lot, day, date }) => [lot.batch, day, date])).toEqual([
      [1, 3, 46533],
      [2, 5, 46535],
      [3, 7, 46537],
      [4, 9, 46539],
    ]);
    expect(made.at(-1)?.date).toBe(plan.batches[0]?.done);
  });

  it('work at what is due soonest first, whatever its row (worked by hand)', () => {
    const work = { Item: 'Making', Value: 150, Unit: 'minutes a pair' };
    const plan = planOf(
      [
        { Style: 'Betony', Customer: 'Later', Due: 46600, 38: 1 },
        { Style: 'Betony', Customer: 'Sooner', Due: 46540, 38: 2, 39: 2 },
      ],
      { 'Days on last': 0.1 },
      [HOURS, START, work],
    );
    const { lines } = daysOf(plan);
    // Two pairs of 2.5 hours are a day of five hours; the first size fills day 1, the second day 2.
    expect(
      lines.filter(({ minutes }) => minutes > 0).map(({ day, lot, minutes }) => [day, lot.row.customer, minutes]),
    ).toEqual([
      [1, 'Sooner', 300],
      [2, 'Sooner', 300],
      [3, 'Later', 150],
    ]);
  });

  it('tell by how many days an order is late, where there is a day of start', () => {
    const pairage = [{ Style: 'Betony', Due: 46534, 38: 4 }];
    const lasts = { 'Pairs on hand': 1, 'Days on last': 2 };
    const late = daysOf(planOf(pairage, lasts, [HOURS, START])).lines.flatMap((line) => line.late ?? []);
    expect(late).toEqual([0, 1, 3, 5]);
    expect(daysOf(planOf(pairage, lasts)).lines.every((line) => line.late === undefined)).toBe(true);
  });

  it('leave out what has no lasts and say what to enter; without hours of a day there are none', () => {
    const none = daysOf(planOf([{ Style: 'Betony', 38: 1 }], { 'Pairs on hand': 0 }));
    expect(none.lines).toEqual([]);
    expect(none.leftOut.map(({ why }) => why.message)).toEqual([
      'row 1 of Lasts, Pairs on hand: there is no pair of lasts in size 38; get one, or take its pairs out of Pairage',
    ]);
    const blank = daysOf(planOf([{ Style: 'Betony', 38: 1 }], { 'Pairs on hand': '' }));
    expect(blank.leftOut.map(({ why }) => why.reason)).toEqual(['enter how many pairs of these lasts you have']);
    expect(() => daysOf(planOf([{ Style: 'Betony', 38: 1 }], {}, []))).toThrow(/hours a day/);
  });

  it('refuse what nobody could follow', () => {
    const many = planOf([{ Style: 'Betony', 38: 5000 }], { 'Pairs on hand': 1 });
    const why = 'it has more than 2000 batches; plan it in parts';
    expect(() => daysOf(many)).toThrow(why);
    expect(many.batches).toMatchObject([{ to: 5000, days: undefined, done: undefined }]);
    expect(many.checks.filter(({ kind }) => kind === 'daysUntold')).toMatchObject([
      { verdict: 'lookAt', problem: { reason: expect.stringContaining(why) as string } },
    ]);
  });
});
