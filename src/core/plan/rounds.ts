import { convertSize } from '../sizes/convert';
import { fold } from './codes';
import type { Runs } from './runs';

/** How often the lasts of one size must be used to make a run. */
export interface Round {
  readonly last: string;
  /** In the last's own system. */
  readonly size: number;
  readonly pairs: number;
  /** Pairs of lasts; undefined where the maker has not said. */
  readonly onHand: number | undefined;
  /** undefined where there is no last. */
  readonly rounds: number | undefined;
  readonly days: number | undefined;
}

/** Rounds = ⌈pairs of a size / last pairs on hand⌉, days = rounds × days on the last (derived). */
export function rounds(runs: Runs): readonly Round[] {
  const wanted = new Map<string, { run: Runs['styles'][number]; size: number; pairs: number }>();
  for (const run of runs.styles) {
    for (const { size, system, pairs } of run.sizes) {
      const own = Number(convertSize(size, system, run.last.system).toFixed(2));
      const key = `${fold(run.last.code)} ${own}`;
      wanted.set(key, { run, size: own, pairs: (wanted.get(key)?.pairs ?? 0) + pairs });
    }
  }
  return [...wanted.values()]
    .sort((a, b) => a.run.last.row - b.run.last.row || a.size - b.size)
    .map(({ run: { last }, size, pairs }) => {
      const onHand = last.pairsBySize.get(size) ?? last.pairsOnHand;
      const count = onHand ? Math.ceil(pairs / onHand) : undefined;
      return { last: last.code, size, pairs, onHand, rounds: count, days: count && count * last.daysOnLast };
    });
}
