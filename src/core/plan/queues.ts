import type { Last } from '../last/last';
import { convertSize } from '../sizes/convert';
import { fold } from './codes';
import type { PairageRow } from './inputs';
import type { Runs, SizeRun, StyleRun } from './runs';

/** Pairs of one size of an order. */
export interface Ordered {
  readonly row: PairageRow;
  readonly pairs: number;
  readonly run: StyleRun;
  readonly sizeRun: SizeRun;
}

/** What waits for the lasts of one size. */
export interface Queue {
  readonly last: Last;
  /** In the last's own system. */
  readonly size: number;
  /** In the order in which they take the lasts. */
  readonly orders: readonly Ordered[];
}

/** What waits for each last and size; orders take the lasts in turn, the soonest due first. */
export function queuesOf(runs: Runs, pairage: readonly PairageRow[]): readonly Queue[] {
  const queues = new Map<string, Queue & { readonly orders: Ordered[] }>();
  for (const run of runs.styles) {
    for (const row of pairage) {
      if (fold(row.style) !== fold(run.style.code)) continue;
      for (const [size, pairs] of row.pairs) {
        // A size that the last cannot have has no bottom and no batch; the runs tell of it.
        const sizeRun = run.sizes.find((one) => one.size === size && one.system === (row.system ?? run.last.system));
        if (pairs === 0 || !sizeRun) continue;
        const own = Number(convertSize(size, row.system ?? run.last.system, run.last.system).toFixed(2));
        const key = `${fold(run.last.code)} ${own}`;
        const queue = queues.get(key) ?? { last: run.last, size: own, orders: [] };
        queue.orders.push({ row, pairs, run, sizeRun });
        queues.set(key, queue);
      }
    }
  }
  for (const { orders } of queues.values()) orders.sort((a, b) => inTurn(a.row, b.row));
  return [...queues.values()].sort((a, b) => a.last.row - b.last.row || a.size - b.size);
}

/** The soonest due first; of those due alike, as they stand. */
export function inTurn(a: PairageRow, b: PairageRow): number {
  return (a.due ?? Infinity) - (b.due ?? Infinity) || a.row - b.row;
}

/** Pairs of its lasts on hand; undefined where the maker has not said. */
export function lastsOf({ last, size }: Pick<Queue, 'last' | 'size'>): number | undefined {
  return last.pairsBySize.get(size) ?? last.pairsOnHand;
}
