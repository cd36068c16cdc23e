import { Problem } from '../../problem';
import type { Last } from '../../last/last';
import type { PairageRow, PlanInput } from '../inputs';
import { distinctLeftOut, type LeftOut } from '../left-out';
import { inTurn, lastsOf, type Ordered, type Queue, queuesOf } from '../queues';
import type { Runs, SizeRun, StyleRun } from '../runs';
import { type Task, tasksOf, withoutCutting } from './tasks';

/** Pairs of one order and size that are on their lasts together: what an order has of one batch. */
export interface Lot {
  readonly row: PairageRow;
  readonly run: StyleRun;
  readonly sizeRun: SizeRun;
  readonly last: Last;
  /** In the last's own system. */
  readonly size: number;
  /** Pairs of lasts on hand in this size. */
  readonly onHand: number;
  /** Which use of these lasts it is, from 1. */
  readonly batch: number;
  readonly pairs: number;
  readonly tasks: readonly Task[];
}

/** Lots in the order in which the bench prefers them, with what is left out. */
export interface Lots {
  readonly lots: readonly Lot[];
  readonly leftOut: readonly LeftOut[];
}

/** Pairs of lasts that a queue has; undefined where nobody has said. */
export type LastsOf = (queue: Queue) => number | undefined;

/** Lots of all orders: the soonest due first, of one order batch by batch, of one batch last by last and size by size. */
export function lotsOf(
  runs: Runs,
  input: Pick<PlanInput, 'pairage' | 'rates' | 'stock'>,
  lasts: LastsOf = lastsOf,
): Lots {
  const queues = queuesOf(runs, input.pairage);
  const leftOut = queues.flatMap((queue) => (lasts(queue) ? [] : queue.orders.map((order) => lacking(queue, order))));
  const lots = queues.flatMap((queue) => lotsOfQueue(queue, lasts(queue), input));
  // Sorting keeps the order of what is alike.
  return {
    lots: lots.sort((a, b) => inTurn(a.row, b.row) || a.batch - b.batch),
    leftOut: distinctLeftOut(leftOut),
  };
}

function lotsOfQueue(
  { last, size, orders }: Queue,
  onHand: number | undefined,
  input: Pick<PlanInput, 'rates' | 'stock'>,
): Lot[] {
  if (!onHand) return [];
  let before = 0;
  return orders.flatMap(({ row, run, sizeRun, pairs }) => {
    const all = tasksOf(run, input).get(sizeRun) ?? [];
    const tasks = row.cut ? withoutCutting(all) : all;
    const lots: Lot[] = [];
    for (let left = pairs; left > 0;) {
      const batch = Math.floor(before / onHand) + 1;
      const own = Math.min(left, batch * onHand - before);
      lots.push({ row, run, sizeRun, last, size, onHand, batch, pairs: own, tasks });
      before += own;
      left -= own;
    }
    return lots;
  });
}

function lacking(queue: Queue, { run }: Ordered): LeftOut {
  const { last, size } = queue;
  const none = lastsOf(queue) === 0;
  const own = last.pairsBySize.has(size);
  const place = { argument: 'lasts', table: 'Lasts', row: last.row, column: own ? String(size) : 'Pairs on hand' };
  const why = none
    ? `there is no pair of lasts in size ${size}; get one, or take its pairs out of Pairage`
    : 'enter how many pairs of these lasts you have';
  return { name: run.style.code, why: new Problem('unavailable', place, why) };
}
