import type { PairageRow } from '../inputs';
import type { SizeRun } from '../runs';
import type { BenchDays } from './bench-days';

/** When the bench has made the last of an order's pairs in one size. */
export interface Made {
  /** Days of work from the start until then, parts of a day too. */
  readonly days: number;
  /** The spreadsheet's day; undefined where no day of start is given. */
  readonly date: number | undefined;
}

/** By order and size; what is left out of the bench's days is not there. */
export type MadeDays = ReadonlyMap<PairageRow, ReadonlyMap<SizeRun, Made>>;

export function madeDays({ made }: Pick<BenchDays, 'made'>): MadeDays {
  const all = new Map<PairageRow, Map<SizeRun, Made>>();
  for (const { lot, days, date } of made) {
    const own = all.get(lot.row) ?? new Map<SizeRun, Made>();
    all.set(lot.row, own);
    if (days >= (own.get(lot.sizeRun)?.days ?? 0)) own.set(lot.sizeRun, { days, date });
  }
  return all;
}
