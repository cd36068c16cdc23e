import { itemAt } from '../../item-at';
import { Problem } from '../../problem';
import type { Stepwise } from '../../stepwise';
import type { StepKind } from '../../steps/step';
import { ratesOf } from '../cost/rates';
import type { PairageRow, PlanInput } from '../inputs';
import type { LeftOut } from '../left-out';
import { lastsOf, type Queue, queuesOf } from '../queues';
import type { Runs } from '../runs';
import { beforeWorkingDays } from '../working-days';
import { type LastsOf, type Lot, type Lots, lotsOf } from './lots';
import { type LotTimes, madeBy, type MadeTime, SAME, type Schedule, scheduled, type TaskTimes } from './schedule';
import { tasksOf, type Wait } from './tasks';
import { WorkingTime } from './working-time';

/** What a lot waits for when a day is over: besides what keeps a task, its turn at the bench. */
export type WaitAtNight = Wait | 'its turn';

/** Numbers on the ticket from one to another, both included. */
export interface StepRange {
  readonly from: number;
  readonly to: number;
}

/** Steps of one day, rising. */
export interface StepsOfDay {
  /** That are done with when the day is over. */
  readonly done: readonly StepRange[];
  /** That are worked at and gone on with on a later day. */
  readonly inPart: readonly StepRange[];
}

/** What is done on one day to one lot, or that it lies on its lasts. */
export interface BenchLine {
  readonly lot: Lot;
  /** Day of work, from 1; the spreadsheet's day where a day of start is given. */
  readonly day: number;
  readonly date: number | undefined;
  /** Steps that are worked at. */
  readonly steps: StepsOfDay;
  /** Without mere waiting; undefined stands for work that is of no step. */
  readonly kinds: readonly (StepKind | undefined)[];
  /** Work of this day, and of the lot in all. */
  readonly minutes: number;
  readonly minutesInAll: number;
  /** Pairs of lasts that it has when the day is over, or had on this day. */
  readonly lasts: number;
  /** What it waits for when the day is over, and the day of work on which that is over; undefined where it is made. */
  readonly waits: { readonly what: WaitAtNight; readonly until: number; readonly date: number | undefined } | undefined;
  /** Days by which it is late, on the day on which it is made; 0 where it is not, undefined where that is not known. */
  readonly late: number | undefined;
}

/** When a lot is made. */
export interface MadeLot {
  readonly lot: Lot;
  /** Days of work from the start until then, parts of a day too. */
  readonly days: number;
  /** Day of work, from 1, as its last line has it; the spreadsheet's day where a day of start is given. */
  readonly day: number;
  readonly date: number | undefined;
}

/** The days of the bench, from the first to the one on which all is made. */
export interface BenchDays {
  readonly lines: readonly BenchLine[];
  /** All lots, in the order in which the lines have them. */
  readonly made: readonly MadeLot[];
  readonly leftOut: readonly LeftOut[];
  /** That the bench works in a day. */
  readonly minutesADay: number;
}

/** What a plan's days at the bench are made from. */
export type BenchDaysInput = Pick<PlanInput, 'pairage' | 'rates' | 'stock'>;

/** More batches than these, or more lines, are nothing that a maker could follow. */
const MOST_LOTS = 2000;
const MOST_LINES = 20_000;

/** What might be otherwise than the tables have it. */
export interface BenchChange {
  /** Hours that the bench works longer in a day. */
  readonly moreHours?: number;
  /** Days of work that it begins sooner. */
  readonly sooner?: number;
  /** Pairs of lasts that there are besides, in some sizes of a last. */
  readonly moreLasts?: { readonly last: string; readonly sizes: readonly number[]; readonly pairs: number };
  /** Row of the order that is taken before all others. */
  readonly ahead?: number;
}

/**
 * What is done on which day at the bench, by list scheduling.
 * @throws Problem where no hours of a day are given, and where it is more than could be followed.
 */
export function* benchDays(runs: Runs, input: BenchDaysInput): Stepwise<BenchDays> {
  const { lots, leftOut, time } = yield* laidOut(runs, input, {});
  const schedule = yield* scheduled(lots, time);
  const dated = isDated(input);
  const lines = linesOf(lots, schedule, time, dated);
  return { lines, made: madeLots(lots, schedule.made, time, dated), leftOut, minutesADay: time.minutes };
}

/**
 * When everything would be made, were something otherwise.
 * @param enough says of a lot that is made, and its day where a day of start is given, that the rest need not be known
 * @returns undefined where that was enough
 * @throws Problem as benchDays
 */
export function* madeWith(
  runs: Runs,
  given: BenchDaysInput,
  change: BenchChange,
  enough: (lot: Lot, date: number | undefined) => boolean = () => false,
): Stepwise<readonly MadeLot[] | undefined> {
  const input = change.ahead === undefined ? given : { ...given, pairage: withAhead(given.pairage, change.ahead) };
  const { lots, time } = yield* laidOut(runs, input, change);
  const dated = isDated(input);
  const made = yield* madeBy(lots, time, (lot, { day }) => enough(lot, dated ? time.dateOf(day) : undefined));
  return made && madeLots(lots, made, time, dated);
}

/** Lots in the order in which the bench prefers them, and the time that it has. */
function* laidOut(runs: Runs, input: BenchDaysInput, change: BenchChange): Stepwise<Lots & { time: WorkingTime }> {
  const time = workingTime(input, change);
  const lastsOf = lastsWith(change);
  if (fewestLots(queuesOf(runs, input.pairage), lastsOf) > MOST_LOTS) {
    throw tooMany(`it has more than ${MOST_LOTS} batches`);
  }
  for (const run of runs.styles) {
    tasksOf(run, input);
    yield;
  }
  return { ...lotsOf(runs, input, lastsOf), time };
}

function isDated({ rates }: BenchDaysInput): boolean {
  return ratesOf(rates).one('day of start', []) !== undefined;
}

function withAhead(pairage: readonly PairageRow[], ahead: number): readonly PairageRow[] {
  return pairage.map((row) => (row.row === ahead ? { ...row, due: -Infinity } : row));
}

/** Day by day, of one day in the order of the lots. */
function madeLots(
  lots: readonly Lot[],
  made: readonly MadeTime[],
  time: WorkingTime,
  dated: boolean,
): readonly MadeLot[] {
  const all = lots.flatMap((lot, i): readonly MadeLot[] => {
    const { ended, day } = itemAt(made, i);
    if (lot.tasks.length === 0) return [];
    const days = day + Math.max(0, ended - time.begins(day)) / time.minutes;
    return [{ lot, days, day: day + 1, date: dated ? time.dateOf(day) : undefined }];
  });
  return all.sort((a, b) => a.day - b.day);
}

function fewestLots(queues: readonly Queue[], lasts: LastsOf): number {
  return queues.reduce((sum, queue) => {
    const pairs = queue.orders.reduce((all, order) => all + order.pairs, 0);
    return sum + pairs / (lasts(queue) || Infinity);
  }, 0);
}

function lastsWith({ moreLasts }: BenchChange): LastsOf {
  return (queue) => {
    const own = lastsOf(queue);
    const more = moreLasts?.last === queue.last.code && moreLasts.sizes.includes(queue.size);
    return own !== undefined && more ? own + moreLasts.pairs : own;
  };
}

/** @throws Problem where no hours of a day are given. */
function workingTime({ rates }: Pick<PlanInput, 'rates'>, { moreHours = 0, sooner = 0 }: BenchChange): WorkingTime {
  const found = ratesOf(rates);
  const hours = found.one('hours a day', []);
  if (hours === undefined) {
    const sentence = 'say in a row with the unit hours a day how long the bench works in a day';
    throw new Problem('unavailable', { argument: 'rates', table: 'Costs and times' }, sentence);
  }
  const start = found.one('day of start', []);
  const week = found.one('days a week', []) ?? 7;
  const begins = start === undefined ? undefined : beforeWorkingDays(Math.floor(start), sooner, week);
  return new WorkingTime(60 * Math.min(24, hours + moreHours), begins, week);
}

function tooMany(why: string): Problem {
  const sentence = `the run is more than its days can be told of: ${why}; plan it in parts`;
  return new Problem('unavailable', { argument: 'pairage', table: 'Pairage' }, sentence);
}

/** What one lot has of one day. */
interface Worked {
  minutes: number;
  readonly tasks: Set<number>;
}

function linesOf(lots: readonly Lot[], schedule: Schedule, time: WorkingTime, dated: boolean): readonly BenchLine[] {
  const worked = workedOn(lots, schedule, time);
  const lines = lots.flatMap((lot, i) => {
    const times = itemAt(schedule.times, i);
    const days = daysOf(worked[i]!, times, time);
    if (days.length > MOST_LINES) throw tooMany(`it has more than ${MOST_LINES} lines`);
    const minutes = lot.pairs * lot.tasks.reduce((sum, task) => sum + task.minutes, 0);
    return days.map((day) => lineOf(lot, minutes, times, day, worked[i]!.get(day), time, dated));
  });
  if (lines.length > MOST_LINES) throw tooMany(`it has more than ${MOST_LINES} lines`);
  // Sorting keeps the order of the lots.
  return lines.sort((a, b) => a.day - b.day);
}

/** What is worked by day, lot by lot. */
function workedOn(
  lots: readonly Lot[],
  { times, stretches }: Schedule,
  time: WorkingTime,
): readonly ReadonlyMap<number, Worked>[] {
  const all = lots.map(() => new Map<number, Worked>());
  const of = (lot: number, day: number): Worked => {
    const own = all[lot]!;
    const known = own.get(day) ?? { minutes: 0, tasks: new Set() };
    own.set(day, known);
    return known;
  };
  let day = 0;
  for (const { lot, task, from, to } of stretches) {
    day = time.dayAt(from, day);
    const one = of(lot, day);
    one.minutes += to - from;
    one.tasks.add(task);
  }
  // What takes no minutes is done all the same.
  times.forEach(({ tasks }, lot) => {
    tasks.forEach(({ begun, ended }, task) => {
      if (ended <= begun) of(lot, dayOfMoment(begun, time)).tasks.add(task);
    });
  });
  return all;
}

/** The day of what takes no minutes: where one day closes as the next begins, the one that closes, which has it done. */
function dayOfMoment(moment: number, time: WorkingTime): number {
  const day = time.dayAt(moment);
  return day > 0 && moment <= time.closes(day - 1) + SAME ? day - 1 : day;
}

/** Days on which a lot is worked at or has its lasts. */
function daysOf(worked: ReadonlyMap<number, Worked>, { taken, freed }: LotTimes, time: WorkingTime): readonly number[] {
  const days = new Set(worked.keys());
  if (taken < Infinity) for (let day = time.dayAt(taken); time.begins(day) < freed - SAME; day++) days.add(day);
  return [...days].sort((a, b) => a - b);
}

function lineOf(
  lot: Lot,
  minutesInAll: number,
  times: LotTimes,
  day: number,
  worked: Worked | undefined,
  time: WorkingTime,
  dated: boolean,
): BenchLine {
  const places = [...(worked?.tasks ?? [])].sort((a, b) => a - b);
  const tasks = places.map((place) => lot.tasks[place]!);
  const closes = time.closes(day);
  const isDone = (place: number) => times.tasks[place]!.ended <= closes + SAME;
  const steps = (done: boolean) =>
    rangesOf(places.filter((place) => isDone(place) === done).flatMap((place) => lot.tasks[place]!.number ?? []));
  const dateOf = (at: number) => (dated ? time.dateOf(at) : undefined);
  const waits = waitingAt(lot, times, closes, time);
  const { due } = lot.row;
  return {
    lot,
    day: day + 1,
    date: dateOf(day),
    steps: { done: steps(true), inPart: steps(false) },
    kinds: [...new Set(tasks.map(({ kind }) => kind))].filter((kind) => kind !== 'wait'),
    minutes: worked?.minutes ?? 0,
    minutesInAll,
    lasts: times.taken < closes ? lot.pairs : 0,
    waits: waits && { what: waits.what, until: waits.day + 1, date: dateOf(waits.day) },
    late: waits || due === undefined || !dated ? undefined : Math.max(0, time.dateOf(day) - due),
  };
}

/** Rising numbers as the fewest ranges that hold them and no others. */
function rangesOf(numbers: readonly number[]): readonly StepRange[] {
  const ranges: { from: number; to: number }[] = [];
  for (const number of numbers) {
    const last = ranges.at(-1);
    if (last?.to === number - 1) last.to = number;
    else ranges.push({ from: number, to: number });
  }
  return ranges;
}

/** What keeps a lot from going on when a day closes: of the tasks that come next, the one that can be done first. */
function waitingAt(
  { tasks }: Lot,
  { tasks: times }: LotTimes,
  closed: number,
  time: WorkingTime,
): { readonly what: WaitAtNight; readonly day: number } | undefined {
  const left: TaskTimes[] = [];
  for (let i = 0; i < times.length; i++) {
    const one = times[i]!;
    if (one.ended > closed && tasks[i]!.before.every((earlier) => times[earlier]!.ended <= closed)) left.push(one);
  }
  if (left.length === 0) return undefined;
  const next = left.reduce((first, one) => (one.ready < first.ready ? one : first));
  if (next.begun < closed || next.ready <= closed || next.waited === undefined) {
    const begun = Math.min(...left.map((one) => Math.max(closed, one.begun)));
    return { what: 'its turn', day: time.dayAt(begun) };
  }
  return { what: next.waited, day: time.dayAt(next.ready) };
}
