import { derived } from '../derived';
import type { PairageRow, PlanInput } from './inputs';
import { daysOf, type Making } from '../steps/making';
import { workOf } from './cost/cost';
import type { Made, MadeDays } from './bench-days/made';
import { ratesOf } from './cost/rates';
import { inTurn, lastsOf, type Ordered, type Queue, queuesOf } from './queues';
import type { Runs } from './runs';
import { afterWorkingDays } from './working-days';

/** One order's pairs on one size of one last: which batches they take and when they are done. */
export interface Batch {
  readonly last: string;
  /** In the last's own system. */
  readonly size: number;
  readonly style: string;
  readonly order: PairageRow;
  readonly customer: string | undefined;
  readonly due: number | undefined;
  readonly pairs: number;
  /** Pairs of orders that are due sooner, on the same lasts. */
  readonly earlier: number;
  /** Pairs of lasts; undefined where the maker has not said. */
  readonly onHand: number | undefined;
  /** The batches of this last and size that it is in, from 1; undefined where there is no last. */
  readonly from: number | undefined;
  readonly to: number | undefined;
  /** Work that is still to be done on one of its pairs and on all of them, minutes. */
  readonly minutesAPair: number | undefined;
  readonly minutes: number | undefined;
  /** Work on all orders that are due no later, minutes, and working days until the bench is through with it. */
  readonly minutesThrough: number | undefined;
  readonly benchDays: number | undefined;
  /** Nights and waits of one of its pairs, and the working days that it is in the making with its minutes. */
  readonly making: Making | undefined;
  readonly makingDays: number | undefined;
  /**
   * Working days from the start until the last of its pairs is made, as the bench's days have it; without hours of a day,
   * until it is off its last.
   */
  readonly days: number | undefined;
  /** The day itself, where a day of start is given. */
  readonly done: number | undefined;
}

type BatchInput = Pick<PlanInput, 'pairage' | 'rates' | 'stock'>;

/**
 * The batches of all lasts: orders take the lasts of a size in turn, the soonest due first, and fill up each other's last
 * batch. Batches = ⌈pairs / last pairs on hand⌉. Where the hours of a day are given, an order is done when the days at the
 * bench have it made; else after batches × days on the last (derived).
 * @param made undefined where no hours of a day are given, or the days at the bench are more than can be told of
 */
export function batches(runs: Runs, input: BatchInput, made?: MadeDays): readonly Batch[] {
  const rates = ratesOf(input.rates);
  const start = rates.one('day of start', []);
  const week = rates.one('days a week', []) ?? 7;
  const hours = rates.one('hours a day', []);
  // Without hours of a day no minutes are looked at, and no edit of their rows counts.
  const bench = hours === undefined ? [] : [input.rates, input.stock, made];
  return before(input.pairage, [start, week, hours, ...bench, ...runs.styles], () => {
    const queues = queuesOf(runs, input.pairage);
    const taken = hours === undefined ? undefined : new BenchTime(queues, input, 60 * hours);
    const done = ({ row, sizeRun }: Ordered, byLasts: number | undefined): Done => {
      if (hours !== undefined) return made?.get(row)?.get(sizeRun) ?? NOT_KNOWN;
      if (byLasts === undefined) return NOT_KNOWN;
      return { days: byLasts, date: start && afterWorkingDays(start, Math.ceil(byLasts - 1e-9), week) };
    };
    return queues.flatMap((queue) => batchesOf(queue, taken, done));
  });
}

const before = derived<readonly PairageRow[], readonly Batch[]>('batches');

type Done = { readonly [Key in keyof Made]: Made[Key] | undefined };

const NOT_KNOWN: Done = { days: undefined, date: undefined };

/** What orders take of the bench's time, as their steps have it. */
class BenchTime {
  private readonly through = new Map<PairageRow, number>();

  constructor(
    queues: readonly Queue[],
    private readonly input: BatchInput,
    private readonly minutesADay: number,
  ) {
    const all = queues.flatMap(({ orders }) => orders);
    const byRow = new Map<PairageRow, number>();
    for (const order of all) byRow.set(order.row, (byRow.get(order.row) ?? 0) + this.minutes(order));
    let sum = 0;
    for (const [row, minutes] of [...byRow].sort(([a], [b]) => inTurn(a, b))) {
      sum += minutes;
      this.through.set(row, sum);
    }
  }

  /** Of pairs that are cut, without cutting them out. */
  minutesAPair({ run, sizeRun, row }: Ordered): number {
    const { minutes, cutting } = workOf(run, this.input).get(sizeRun) ?? { minutes: 0, cutting: 0 };
    return row.cut ? minutes - cutting : minutes;
  }

  minutes(order: Ordered): number {
    return order.pairs * this.minutesAPair(order);
  }

  /** Of an order and all that are due no later. */
  minutesThrough({ row }: Ordered): number {
    return this.through.get(row) ?? 0;
  }

  daysThrough(order: Ordered): number {
    return this.minutesThrough(order) / this.minutesADay;
  }

  making({ run, sizeRun }: Ordered): Making {
    return workOf(run, this.input).get(sizeRun)?.making ?? { nights: 0, waits: 0 };
  }

  daysInMaking(order: Ordered): number {
    return daysOf(this.making(order), this.minutesAPair(order), this.minutesADay);
  }
}

function batchesOf(
  queue: Queue,
  bench: BenchTime | undefined,
  doneBy: (order: Ordered, byLasts: number | undefined) => Done,
): readonly Batch[] {
  const { last, size, orders } = queue;
  const onHand = lastsOf(queue);
  let before = 0;
  return orders.map((order): Batch => {
    const { row, pairs, run } = order;
    const earlier = before;
    const from = onHand ? Math.floor(earlier / onHand) + 1 : undefined;
    before += pairs;
    const to = onHand ? Math.ceil(before / onHand) : undefined;
    const { days, date: done } = doneBy(order, to && to * last.daysOnLast);
    return {
      last: last.code,
      size,
      style: run.style.code,
      order: row,
      customer: row.customer,
      due: row.due,
      pairs,
      earlier,
      onHand,
      from,
      to,
      minutesAPair: bench?.minutesAPair(order),
      minutes: bench?.minutes(order),
      minutesThrough: bench?.minutesThrough(order),
      benchDays: bench?.daysThrough(order),
      making: bench?.making(order),
      makingDays: bench?.daysInMaking(order),
      days,
      done,
    };
  });
}
