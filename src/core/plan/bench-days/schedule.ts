import type { Stepwise } from '../../stepwise';
import type { Lot } from './lots';
import type { Task, Wait } from './tasks';
import { afterWait, type WorkingTime } from './working-time';

/** When a task is done, by the clock. */
export interface TaskTimes {
  /** When it could be begun, were the bench free, and what it waited for until then. */
  readonly ready: number;
  readonly waited: Wait | undefined;
  readonly begun: number;
  readonly ended: number;
}

/** When a lot is made. */
export interface LotTimes {
  /** In the order of its tasks. */
  readonly tasks: readonly TaskTimes[];
  /** When it takes its lasts, and when these are free again. */
  readonly taken: number;
  readonly freed: number;
}

/** When the last task of a lot ends, by the clock, and on which day of work. */
export interface MadeTime {
  readonly ended: number;
  readonly day: number;
}

/** A piece of work without a break. */
export interface Stretch {
  /** Place of the lot, and of its task. */
  readonly lot: number;
  readonly task: number;
  readonly from: number;
  readonly to: number;
}

export interface Schedule {
  /** In the order of the lots. */
  readonly times: readonly LotTimes[];
  /** In the order in which they are worked. */
  readonly stretches: readonly Stretch[];
  /** In the order of the lots. */
  readonly made: readonly MadeTime[];
}

/** Moments closer than this are one, minutes. */
export const SAME = 1e-6;

/** So many steps of the work between two pauses. */
const PAUSE = 1000;

/**
 * List scheduling on one bench: at every moment the first lot in the list of which something can be done is worked at, the
 * first such task in the order of the bench; it is laid aside as soon as something before it in the list can go on. A list
 * by days due is the rule of the earliest due date, which keeps the greatest lateness least where nothing waits
 * (R. Butterworth, Machine Scheduling, 1.3 Due Dates).
 *
 * A task waits for those before it and for what dries of them; the first on the last for the lasts, which are taken by all
 * pairs of a lot at once and in the order of the list; pulling the last for the days on it. There is one press, which takes
 * pair after pair. What is coated is joined in one sitting: none is begun that the day is too short for, and no second one
 * beside it.
 */
export function* scheduled(lots: readonly Lot[], time: WorkingTime): Stepwise<Schedule> {
  const bench = new BenchAtWork(lots, time);
  for (let step = 1; bench.goOn(); step++) if (step % PAUSE === 0) yield;
  return bench.schedule;
}

/** When each lot is made, by the same rule, where nothing else of it is asked for; undefined once `enough` says so. */
export function* madeBy(
  lots: readonly Lot[],
  time: WorkingTime,
  enough: (lot: Lot, made: MadeTime) => boolean,
): Stepwise<readonly MadeTime[] | undefined> {
  const bench = new BenchAtWork(lots, time, enough);
  for (let step = 1; bench.goOn(); step++) if (step % PAUSE === 0) yield;
  return bench.isEnough ? undefined : bench.made;
}

/** Pairs of lasts of one size that are free, and who takes them next. */
interface Shelf {
  free: number;
  readonly waiting: LotAtWork[];
}

/** What changes of a lot. */
class LotAtWork {
  /** Tasks whose predecessors are done and that are not, rising. */
  readonly open: number[] = [];
  /** When its lasts can be had. */
  lastsAt = Infinity;
  taken = Infinity;
  freed = Infinity;
  /** When it has lain long enough on its lasts. */
  rested = Infinity;
  /** When its last task so far has ended, and on which day of work. */
  ended = -Infinity;
  day = 0;

  /** @param first place of its first task among those of all lots */
  constructor(
    readonly place: number,
    readonly lot: Lot,
    readonly shelf: Shelf,
    readonly first: number,
  ) {
    lot.tasks.forEach(({ before }, i) => {
      if (before.length === 0) this.open.push(i);
    });
  }

  toOpen(place: number): void {
    const { open } = this;
    let at = open.length;
    open.push(place);
    for (; at > 0 && open[at - 1]! > place; at--) open[at] = open[at - 1]!;
    open[at] = place;
  }

  fromOpen(place: number): void {
    const { open } = this;
    for (let at = open.indexOf(place) + 1; at < open.length; at++) open[at - 1] = open[at]!;
    open.pop();
  }
}

/**
 * What changes of all tasks stands in lists as long as they are many, lot by lot: the bench is asked for its next step
 * thousands of times, for every remedy that is tried.
 */
class BenchAtWork {
  isEnough = false;
  private now: number;
  private day = 0;
  private readonly all: readonly LotAtWork[];
  private active: readonly LotAtWork[];
  private readonly left: Float64Array;
  private readonly ready: Float64Array;
  private readonly begun: Float64Array;
  private readonly ended: Float64Array;
  private readonly missing: Uint16Array;
  private readonly waited: (Wait | undefined)[];
  /** When something of each lot can go on, as far as that is known: before all time where it is to be found anew. */
  private readonly soonest: Float64Array;
  /** Lots whose soonest hangs on press, sitting and day. */
  private readonly hanging: number[] = [];
  private readonly stretches: Stretch[] = [];
  /** Films that dry, and the place of the task that joins them. */
  private sitting: { readonly lot: LotAtWork; readonly join: number } | undefined;
  /** Whether the press is being filled, and when it is free again. */
  private pressing = false;
  private pressFree = -Infinity;

  /** @param enough where given, no stretches are kept, and nothing is gone on with once it says so of a lot that is made */
  constructor(
    lots: readonly Lot[],
    private readonly time: WorkingTime,
    private readonly enough?: (lot: Lot, made: MadeTime) => boolean,
  ) {
    this.now = time.begins(0);
    const shelves = new Map<string, Shelf>();
    let tasks = 0;
    this.all = lots.map((lot, i) => {
      const key = `${lot.last.code} ${lot.size}`;
      const shelf = shelves.get(key) ?? { free: lot.onHand, waiting: [] };
      shelves.set(key, shelf);
      const one = new LotAtWork(i, lot, shelf, tasks);
      tasks += lot.tasks.length;
      shelf.waiting.push(one);
      return one;
    });
    this.left = new Float64Array(tasks);
    this.missing = new Uint16Array(tasks);
    for (const { first, lot } of this.all) this.lay(lot, first);
    this.ready = new Float64Array(tasks).fill(this.now);
    this.begun = new Float64Array(tasks).fill(Infinity);
    this.ended = new Float64Array(tasks).fill(Infinity);
    this.waited = Array.from({ length: tasks });
    this.soonest = new Float64Array(lots.length).fill(-Infinity);
    this.active = this.all.filter(({ open }) => open.length > 0);
    for (const shelf of shelves.values()) this.offer(shelf);
  }

  get schedule(): Schedule {
    return { times: this.all.map((lot) => this.timesOf(lot)), stretches: this.stretches, made: this.made };
  }

  /** In the order of the lots. */
  get made(): readonly MadeTime[] {
    return this.all.map(({ ended, day }) => ({ ended, day }));
  }

  /** Works on until something ends, or waits. @returns whether anything is left */
  goOn(): boolean {
    if (this.active.length === 0 || this.isEnough) return false;
    const next = this.next();
    if (typeof next === 'number') this.waitUntil(next);
    else this.work(next);
    return true;
  }

  private lay({ tasks, pairs }: Lot, first: number): void {
    for (let i = 0; i < tasks.length; i++) {
      const { minutes, before } = tasks[i]!;
      this.left[first + i] = pairs * minutes;
      this.missing[first + i] = before.length;
    }
  }

  private timesOf({ lot, first, taken, freed }: LotAtWork): LotTimes {
    const { ready, waited, begun, ended } = this;
    const tasks = lot.tasks.map((_, i) => {
      const at = first + i;
      return { ready: ready[at]!, waited: waited[at], begun: begun[at]!, ended: ended[at]! };
    });
    return { tasks, taken, freed };
  }

  /** What is worked at now, else when something can be: a sitting goes before all else, then the list. */
  private next(): Work | number {
    const { sitting, active, soonest } = this;
    const now = this.now + SAME;
    let until = Infinity;
    if (sitting) {
      const found = this.nextOf(sitting.lot, until, sitting.join);
      if (typeof found !== 'number') return found;
      until = Math.min(until, found);
    }
    for (let i = 0; i < active.length; i++) {
      const lot = active[i]!;
      let at = soonest[lot.place]!;
      if (at <= now) {
        const found = this.nextOf(lot, until);
        if (typeof found !== 'number') return found;
        at = soonest[lot.place] = found;
      }
      if (at < until) until = at;
    }
    return until;
  }

  /**
   * What of a lot is worked at now, else when something of it can be.
   * @param until when something that goes before it can go on
   * @param last task that is looked at; without it, all
   */
  private nextOf(lot: LotAtWork, until: number, last = Infinity): Work | number {
    const { open } = lot;
    let soonest = Infinity;
    let hangs = false;
    for (let i = 0; i < open.length && open[i]! <= last; i++) {
      const place = open[i]!;
      const task = lot.lot.tasks[place]!;
      const at = this.beginsAt(lot, place, task);
      if (at <= this.now + SAME) return { lot, place, until: Math.min(until, soonest) };
      if (at < soonest) soonest = at;
      hangs ||= task.pressed > 0 || task.sitting.length > 0;
    }
    if (hangs && last === Infinity) this.hanging.push(lot.place);
    return soonest;
  }

  /** Press, sitting or day have become others: what hangs on them is found anew. */
  private turn(): void {
    for (let i = 0; i < this.hanging.length; i++) this.soonest[this.hanging[i]!] = -Infinity;
    this.hanging.length = 0;
  }

  /** When a task may be begun or gone on with, as far as that can be foreseen. */
  private beginsAt(lot: LotAtWork, place: number, task: Task): number {
    const at = lot.first + place;
    if (this.begun[at]! < Infinity) return this.now;
    if (task.onLast && lot.taken === Infinity) {
      if (lot.lastsAt === Infinity) return Infinity;
      this.wait(at, lot.lastsAt, 'lasts');
    }
    if (task.pulls && lot.taken < Infinity) {
      if (lot.rested === Infinity) lot.rested = this.time.afterDays(lot.taken, lot.lot.last.daysOnLast);
      this.wait(at, lot.rested, 'days on last');
    }
    if (task.pressed > 0) {
      if (this.pressing) return Infinity;
      this.wait(at, this.pressFree, 'press');
    }
    const ready = this.ready[at]!;
    if (ready > this.now + SAME || task.sitting.length === 0) return ready;
    const { sitting } = this;
    if (sitting && !(sitting.lot === lot && place < sitting.join)) return Infinity;
    return this.hasTime(lot, place, task) ? this.now : this.time.begins(this.day + 1);
  }

  private wait(at: number, until: number, waitsFor: Wait): void {
    if (until <= this.ready[at]! + SAME) return;
    this.ready[at] = until;
    this.waited[at] = waitsFor;
  }

  /** Whether a sitting ends before the day does; one that is longer than a day is begun with a day. */
  private hasTime({ first }: LotAtWork, place: number, { sitting, wait }: Task): boolean {
    let need = wait + this.left[first + place]!;
    for (let i = 0; i < sitting.length; i++) need += this.left[first + sitting[i]!]!;
    if (need <= this.time.minutes) return this.now + need <= this.time.closes(this.day) + SAME;
    return this.now <= this.time.begins(this.day) + SAME;
  }

  private waitUntil(moment: number): void {
    this.turn();
    if (moment < Infinity) {
      this.day = this.time.dayAt(moment + SAME, this.day);
      this.now = Math.max(moment, this.time.begins(this.day));
    } else if (this.sitting) {
      // Something else than its films keeps it waiting; others go on meanwhile.
      this.sitting = undefined;
    } else {
      throw new Error('Nothing can be done at the bench although not all is done.');
    }
  }

  private work({ lot, place, until }: Work): void {
    const { now } = this;
    const at = lot.first + place;
    const task = lot.lot.tasks[place]!;
    this.soonest[lot.place] = -Infinity;
    if (this.begun[at] === Infinity) this.begin(lot, place, task);
    const closes = this.time.closes(this.day);
    const end = Math.min(now + this.left[at]!, closes, until);
    if (end > now && !this.enough) this.stretches.push({ lot: lot.place, task: place, from: now, to: end });
    this.left[at]! -= end - now;
    this.now = end;
    if (this.left[at]! <= SAME) this.end(lot, place, task);
    if (end < closes - SAME) return;
    this.now = this.time.begins(++this.day);
    this.turn();
  }

  private begin(lot: LotAtWork, place: number, { onLast, sitting, pressed }: Task): void {
    this.begun[lot.first + place] = this.now;
    if (pressed > 0) this.pressing = true;
    if (onLast && lot.taken === Infinity) {
      const { shelf } = lot;
      lot.taken = this.now;
      shelf.free -= lot.lot.pairs;
      shelf.waiting.shift();
      this.offer(shelf);
    }
    const join = sitting.at(-1);
    if (join !== undefined) this.sitting = { lot, join: Math.max(join, this.sitting?.join ?? join) };
    if (pressed > 0 || join !== undefined) this.turn();
  }

  private end(lot: LotAtWork, place: number, { wait, waitsFor, pressed, pulls, after }: Task): void {
    const { now } = this;
    this.left[lot.first + place] = 0;
    this.ended[lot.first + place] = lot.ended = now;
    lot.day = this.day;
    const out = now + lot.lot.pairs * pressed;
    if (pressed > 0) {
      this.pressing = false;
      this.pressFree = out;
      this.turn();
    }
    lot.fromOpen(place);
    const dry = afterWait(now, wait);
    for (let i = 0; i < after.length; i++)
      this.release(lot, after[i]!, Math.max(dry, out), out > dry ? 'press' : waitsFor);
    if (this.sitting?.lot === lot && this.sitting.join === place) {
      this.sitting = undefined;
      this.turn();
    }
    const made = lot.open.length === 0;
    if (made) this.active = this.active.filter((one) => one !== lot);
    if (pulls || made) this.free(lot);
    if (made && this.enough?.(lot.lot, lot)) this.isEnough = true;
  }

  /** What waits for a task that is done may follow from a moment on. */
  private release(lot: LotAtWork, place: number, from: number, waitsFor: Wait): void {
    const at = lot.first + place;
    this.wait(at, from, waitsFor);
    if (--this.missing[at]! === 0) lot.toOpen(place);
  }

  private free(lot: LotAtWork): void {
    const { shelf } = lot;
    if (lot.freed < Infinity) return;
    lot.freed = this.now;
    if (lot.taken === Infinity) shelf.waiting.splice(shelf.waiting.indexOf(lot), 1);
    else shelf.free += lot.lot.pairs;
    this.offer(shelf);
  }

  /** Who is next has the lasts as soon as there are enough of them. */
  private offer({ free, waiting: [next] }: Shelf): void {
    if (!next || free < next.lot.pairs) return;
    next.lastsAt = this.now;
    this.soonest[next.place] = -Infinity;
  }
}

/** A task that can be worked at now. */
interface Work {
  readonly lot: LotAtWork;
  readonly place: number;
  /** When something that goes before it can go on. */
  readonly until: number;
}
