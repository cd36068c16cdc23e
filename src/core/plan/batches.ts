import { derived } from '../derived';
import { convertSize } from '../sizes/convert';
import { fold } from './codes';
import type { PairageRow, PlanInput } from './inputs';
import { ratesOf } from './cost/rates';
import type { Runs, StyleRun } from './runs';

/** One order's pairs on one size of one last: which batches they take and when they are done. */
export interface Batch {
  readonly last: string;
  /** In the last's own system. */
  readonly size: number;
  readonly style: string;
  readonly customer: string | undefined;
  readonly due: number | undefined;
  readonly pairs: number;
  /** Pairs of lasts; undefined where the maker has not said. */
  readonly onHand: number | undefined;
  /** The batches of this last and size that it is in, from 1; undefined where there is no last. */
  readonly from: number | undefined;
  readonly to: number | undefined;
  /** Days from the start until the last of its pairs is off its last. */
  readonly days: number | undefined;
  /** The day itself, where a day of start is given. */
  readonly done: number | undefined;
}

/**
 * The batches of all lasts: orders take the lasts of a size in turn, the soonest due first, and fill up each other's last
 * batch. Batches = ⌈pairs / last pairs on hand⌉, days = batches × days on the last (derived).
 */
export function batches(runs: Runs, input: Pick<PlanInput, 'pairage' | 'rates'>): readonly Batch[] {
  const start = ratesOf(input.rates).one('day of start', []);
  return before(input.pairage, [start, ...runs.styles], () => batchesFrom(runs, input.pairage, start));
}

const before = derived<readonly PairageRow[], readonly Batch[]>('batches');

function batchesFrom(runs: Runs, pairage: readonly PairageRow[], start: number | undefined): readonly Batch[] {
  const queues = new Map<
    string,
    { run: StyleRun; size: number; orders: { row: PairageRow; pairs: number; run: StyleRun }[] }
  >();
  for (const run of runs.styles) {
    for (const row of pairage) {
      if (fold(row.style) !== fold(run.style.code)) continue;
      for (const [size, pairs] of row.pairs) {
        // A size that the last cannot have has no bottom and no batch; the runs tell of it.
        const built = run.sizes.some((one) => one.size === size && one.system === (row.system ?? run.last.system));
        if (pairs === 0 || !built) continue;
        const own = Number(convertSize(size, row.system ?? run.last.system, run.last.system).toFixed(2));
        const key = `${fold(run.last.code)} ${own}`;
        const queue = queues.get(key) ?? { run, size: own, orders: [] };
        queue.orders.push({ row, pairs, run });
        queues.set(key, queue);
      }
    }
  }
  return [...queues.values()]
    .sort((a, b) => a.run.last.row - b.run.last.row || a.size - b.size)
    .flatMap(({ run: { last }, size, orders }) => {
      const onHand = last.pairsBySize.get(size) ?? last.pairsOnHand;
      const inTurn = [...orders].sort(
        (a, b) => (a.row.due ?? Infinity) - (b.row.due ?? Infinity) || a.row.row - b.row.row,
      );
      let before = 0;
      return inTurn.map(({ row, pairs, run }): Batch => {
        const from = onHand ? Math.floor(before / onHand) + 1 : undefined;
        before += pairs;
        const to = onHand ? Math.ceil(before / onHand) : undefined;
        const days = to === undefined ? undefined : to * last.daysOnLast;
        return {
          last: last.code,
          size,
          style: run.style.code,
          customer: row.customer,
          due: row.due,
          pairs,
          onHand,
          from,
          to,
          days,
          done: start !== undefined && days !== undefined ? start + Math.ceil(days) : undefined,
        };
      });
    });
}
