import { itemAt } from '../../item-at';
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
}

/** Moments closer than this are one, minutes. */
export const SAME = 1e-6;

/** So many steps of the work between two pauses. */
const PAUSE = 200;

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

/** Pairs of lasts of one size that are free, and who takes them next. */
interface Shelf {
  free: number;
  readonly waiting: LotAtWork[];
}

class LotAtWork {
  readonly left: number[];
  readonly ready: number[];
  readonly waited: (Wait | undefined)[];
  readonly begun: number[];
  readonly ended: number[];
  /** Tasks whose predecessors are done and that are not. */
  open: number[];
  /** When its lasts can be had. */
  lastsAt = Infinity;
  taken: number | undefined;
  freed: number | undefined;
  private readonly missing: number[];

  constructor(
    readonly place: number,
    readonly lot: Lot,
    readonly shelf: Shelf,
    start: number,
  ) {
    const { tasks, pairs } = lot;
    this.left = tasks.map(({ minutes }) => pairs * minutes);
    this.ready = tasks.map(() => start);
    this.waited = tasks.map(() => undefined);
    this.begun = tasks.map(() => Infinity);
    this.ended = tasks.map(() => Infinity);
    this.missing = tasks.map(({ before }) => before.length);
    this.open = tasks.flatMap(({ before }, i) => (before.length === 0 ? [i] : []));
  }

  task(place: number): Task {
    return itemAt(this.lot.tasks, place);
  }

  /** Ends a task; what waits for it may follow from a later moment on. */
  end(place: number, now: number, later: number, waitsFor: Wait): void {
    this.ended[place] = now;
    this.open = this.open.filter((one) => one !== place);
    for (const next of this.task(place).after) {
      this.wait(next, later, waitsFor);
      this.missing[next]!--;
      if (this.missing[next] === 0) this.open.push(next);
    }
    this.open.sort((a, b) => a - b);
  }

  wait(place: number, until: number, waitsFor: Wait): void {
    if (until <= this.ready[place]! + SAME) return;
    this.ready[place] = until;
    this.waited[place] = waitsFor;
  }

  get times(): LotTimes {
    const { lot, ready, waited, begun, ended, taken, freed } = this;
    const tasks = lot.tasks.map((_, i) => {
      return { ready: ready[i]!, waited: waited[i], begun: begun[i]!, ended: ended[i]! };
    });
    return { tasks, taken: taken ?? Infinity, freed: freed ?? Infinity };
  }
}

/** A task that can be worked at now. */
interface Work {
  readonly lot: LotAtWork;
  readonly place: number;
  /** When something that goes before it can go on. */
  readonly until: number;
}

class BenchAtWork {
  private now: number;
  private day = 0;
  private active: readonly LotAtWork[];
  private readonly all: readonly LotAtWork[];
  private readonly stretches: Stretch[] = [];
  /** Films that dry, and the place of the task that joins them. */
  private sitting: { readonly lot: LotAtWork; readonly join: number } | undefined;
  /** Whether the press is being filled, and when it is free again. */
  private pressing = false;
  private pressFree = -Infinity;

  constructor(
    lots: readonly Lot[],
    private readonly time: WorkingTime,
  ) {
    this.now = time.begins(0);
    const shelves = new Map<string, Shelf>();
    this.all = lots.map((lot, i) => {
      const key = `${lot.last.code} ${lot.size}`;
      const shelf = shelves.get(key) ?? { free: lot.onHand, waiting: [] };
      shelves.set(key, shelf);
      const one = new LotAtWork(i, lot, shelf, this.now);
      shelf.waiting.push(one);
      return one;
    });
    this.active = this.all.filter(({ open }) => open.length > 0);
    for (const shelf of shelves.values()) this.offer(shelf);
  }

  get schedule(): Schedule {
    return { times: this.all.map(({ times }) => times), stretches: this.stretches };
  }

  /** Works on until something ends, or waits. @returns whether anything is left */
  goOn(): boolean {
    if (this.active.length === 0) return false;
    const next = this.next();
    if (typeof next === 'number') this.waitUntil(next);
    else this.work(next);
    return true;
  }

  /** What is worked at now, else when something can be. */
  private next(): Work | number {
    let soonest = Infinity;
    for (const [lot, places] of this.inTurn()) {
      for (const place of places) {
        const at = this.beginsAt(lot, place);
        if (at <= this.now + SAME) return { lot, place, until: soonest };
        soonest = Math.min(soonest, at);
      }
    }
    return soonest;
  }

  /** A sitting goes before all else, then the list. */
  private *inTurn(): Generator<readonly [LotAtWork, readonly number[]]> {
    const { sitting } = this;
    if (sitting) yield [sitting.lot, sitting.lot.open.filter((place) => place <= sitting.join)];
    for (const lot of this.active) yield [lot, lot.open];
  }

  /** When a task may be begun or gone on with, as far as that can be foreseen. */
  private beginsAt(lot: LotAtWork, place: number): number {
    const task = lot.task(place);
    if (lot.begun[place]! < Infinity) return this.now;
    if (task.onLast && lot.taken === undefined) {
      if (lot.lastsAt === Infinity) return Infinity;
      lot.wait(place, lot.lastsAt, 'lasts');
    }
    if (task.pulls && lot.taken !== undefined) {
      lot.wait(place, this.time.afterDays(lot.taken, lot.lot.last.daysOnLast), 'days on last');
    }
    if (task.pressed > 0) {
      if (this.pressing) return Infinity;
      lot.wait(place, this.pressFree, 'press');
    }
    const ready = lot.ready[place]!;
    if (ready > this.now + SAME || task.sitting.length === 0) return ready;
    const { sitting } = this;
    if (sitting && !(sitting.lot === lot && place < sitting.join)) return Infinity;
    return this.hasTime(lot, place) ? this.now : this.time.begins(this.day + 1);
  }

  /** Whether a sitting ends before the day does; one that is longer than a day is begun with a day. */
  private hasTime(lot: LotAtWork, place: number): boolean {
    const { sitting, wait } = lot.task(place);
    const need = [place, ...sitting].reduce((sum, one) => sum + lot.left[one]!, wait);
    if (need <= this.time.minutes) return this.now + need <= this.time.closes(this.day) + SAME;
    return this.now <= this.time.begins(this.day) + SAME;
  }

  private waitUntil(moment: number): void {
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
    if (lot.begun[place] === Infinity) this.begin(lot, place);
    const end = Math.min(now + lot.left[place]!, this.time.closes(this.day), until);
    if (end > now) this.stretches.push({ lot: lot.place, task: place, from: now, to: end });
    lot.left[place]! -= end - now;
    this.now = end;
    if (lot.left[place]! <= SAME) this.end(lot, place);
    if (this.now >= this.time.closes(this.day) - SAME) this.now = this.time.begins(++this.day);
  }

  private begin(lot: LotAtWork, place: number): void {
    const { onLast, sitting, pressed } = lot.task(place);
    lot.begun[place] = this.now;
    if (pressed > 0) this.pressing = true;
    if (onLast && lot.taken === undefined) {
      const { shelf } = lot;
      lot.taken = this.now;
      shelf.free -= lot.lot.pairs;
      shelf.waiting.shift();
      this.offer(shelf);
    }
    const join = sitting.at(-1);
    if (join !== undefined) this.sitting = { lot, join: Math.max(join, this.sitting?.join ?? join) };
  }

  private end(lot: LotAtWork, place: number): void {
    const { now } = this;
    const { wait, waitsFor, pressed, pulls } = lot.task(place);
    lot.left[place] = 0;
    const out = now + lot.lot.pairs * pressed;
    if (pressed > 0) [this.pressing, this.pressFree] = [false, out];
    const dry = afterWait(now, wait);
    lot.end(place, now, Math.max(dry, out), out > dry ? 'press' : waitsFor);
    if (this.sitting?.lot === lot && this.sitting.join === place) this.sitting = undefined;
    const made = lot.open.length === 0;
    if (made) this.active = this.active.filter((one) => one !== lot);
    if (pulls || made) this.free(lot);
  }

  private free(lot: LotAtWork): void {
    const { shelf } = lot;
    if (lot.freed !== undefined) return;
    lot.freed = this.now;
    if (lot.taken === undefined) shelf.waiting.splice(shelf.waiting.indexOf(lot), 1);
    else shelf.free += lot.lot.pairs;
    this.offer(shelf);
  }

  /** Who is next has the lasts as soon as there are enough of them. */
  private offer({ free, waiting: [next] }: Shelf): void {
    if (next && free >= next.lot.pairs) next.lastsAt = this.now;
  }
}
