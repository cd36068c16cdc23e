import type { Stepwise } from '../../stepwise';
import { ratesOf } from '../cost/rates';
import type { PairageRow } from '../inputs';
import { inTurn } from '../queues';
import type { Runs } from '../runs';
import { type BenchChange, type BenchDays, type BenchDaysInput, type MadeLot, madeWith } from './bench-days';
import type { Lot } from './lots';

/** An order that is made after the day on which it is due. */
export interface LateOrder {
  readonly row: PairageRow;
  readonly style: string;
  /** The spreadsheet's days. */
  readonly due: number;
  readonly made: number;
  readonly days: number;
}

/** What would make an order less late. */
export interface Help {
  readonly change: BenchChange;
  /** Days that it would still be late; 0 is on time. */
  readonly days: number;
}

/** Orders that are late, each with the day on which the last of its pairs is made. */
export function lateOrders({ made }: Pick<BenchDays, 'made'>): readonly LateOrder[] {
  const late = new Map<PairageRow, LateOrder>();
  for (const { lot, date } of made) {
    const { row, run } = lot;
    if (date === undefined || row.due === undefined) continue;
    const days = date - row.due;
    if (days <= (late.get(row)?.days ?? 0)) continue;
    late.set(row, { row, style: run.style.code, due: row.due, made: date, days });
  }
  return [...late.values()];
}

/** A late order, and what would help. */
export interface LateWithHelp {
  readonly late: LateOrder;
  /** What does not help is not there; undefined where it was not tried. */
  readonly helps: readonly Help[] | undefined;
}

/** How many changes of hours, lasts and the first day are tried for one order, and for how many orders. */
const MOST_HOURS = 2;
const MOST_SOONER = 3;
const MOST_HELPED = 6;
/** More batches than these, and trying takes longer than anyone waits. */
const MOST_LOTS = 400;

/** Days by which each order is late, by its row. */
type Lateness = ReadonlyMap<number, number>;

/**
 * What would help late orders: an hour or two more a day, a pair more of the lasts that something waits for, a sooner
 * beginning, another order of styles; each by itself, worked out as the days themselves are.
 */
export function* lateWithHelp(days: BenchDays, runs: Runs, input: BenchDaysInput): Stepwise<readonly LateWithHelp[]> {
  const all = lateOrders(days);
  const bench = new Trials(days, runs, input);
  const list: LateWithHelp[] = [];
  for (const late of all) {
    if (list.length >= MOST_HELPED || days.made.length > MOST_LOTS) {
      list.push({ late, helps: undefined });
      continue;
    }
    const helps: Help[] = [];
    for (const changes of [hours(input), lasts(late, days), ahead(late, days), sooner(late, days)]) {
      for (const change of changes) {
        const left = yield* bench.lateBy(late, change);
        if (left < late.days) helps.push({ change, days: left });
        // More of the same is not asked for where less is enough.
        if (left === 0) break;
      }
    }
    list.push({ late, helps });
  }
  return list;
}

/** What has been tried, each change once. */
class Trials {
  private readonly due: ReadonlyMap<number, number | undefined>;
  private readonly now: Lateness;
  private readonly tried = new Map<string, Lateness | undefined>();

  constructor(
    { made }: BenchDays,
    private readonly runs: Runs,
    private readonly input: BenchDaysInput,
  ) {
    this.due = new Map(input.pairage.map(({ row, due }) => [row, due]));
    this.now = this.latenessOf(made);
  }

  /** Days by which an order is late with a change; as many as without it where that is unfair. */
  *lateBy({ row: { row }, days }: LateOrder, change: BenchChange): Stepwise<number> {
    const key = JSON.stringify(change);
    if (!this.tried.has(key)) {
      // Going first is no help where others come later by it.
      const unfair = change.ahead === undefined ? undefined : this.isLater;
      const made = yield* madeWith(this.runs, this.input, change, unfair);
      this.tried.set(key, made && this.latenessOf(made));
    }
    const then = this.tried.get(key);
    return then ? (then.get(row) ?? 0) : days;
  }

  private readonly isLater = (lot: Lot, date: number | undefined): boolean => {
    return (this.by(lot, date) ?? 0) > (this.now.get(lot.row.row) ?? 0);
  };

  private latenessOf(made: readonly MadeLot[]): Lateness {
    const late = new Map<number, number>();
    for (const { lot, date } of made) {
      const days = this.by(lot, date);
      if (days !== undefined) late.set(lot.row.row, Math.max(days, late.get(lot.row.row) ?? 0));
    }
    return late;
  }

  /** Days by which a lot is late; undefined where that is not known. */
  private by({ row: { row } }: Lot, date: number | undefined): number | undefined {
    const due = this.due.get(row);
    return date === undefined || due === undefined ? undefined : Math.max(0, date - due);
  }
}

/** Where others go before it. */
function ahead({ row }: LateOrder, { made }: BenchDays): readonly BenchChange[] {
  return made.some(({ lot }) => lot.row !== row && inTurn(lot.row, row) < 0) ? [{ ahead: row.row }] : [];
}

function hours({ rates }: Pick<BenchDaysInput, 'rates'>): readonly BenchChange[] {
  const now = ratesOf(rates).one('hours a day', []);
  if (now === undefined) return [];
  const more = Array.from({ length: MOST_HOURS }, (_, i) => i + 1);
  return more.filter((one) => now + one <= 24).map((moreHours) => ({ moreHours }));
}

/** A pair more in each size of the order's last that something waits for. */
function lasts({ row }: LateOrder, { lines }: BenchDays): readonly BenchChange[] {
  const own = new Set(lines.filter(({ lot }) => lot.row === row).map(({ lot }) => lot.last.code));
  const waiting = lines.filter(({ lot, waits }) => waits?.what === 'lasts' && own.has(lot.last.code));
  return [...own].flatMap((last) => {
    const sizes = [...new Set(waiting.filter(({ lot }) => lot.last.code === last).map(({ lot }) => lot.size))];
    return sizes.length > 0 ? [{ moreLasts: { last, sizes: sizes.sort((a, b) => a - b), pairs: 1 } }] : [];
  });
}

/** As many days of work as lie between the day due and the day made, and some more where nights do not fall alike. */
function sooner({ due, made }: LateOrder, { lines }: BenchDays): readonly BenchChange[] {
  const between = new Set(lines.flatMap(({ date = 0 }) => (date > due && date <= made ? [date] : []))).size;
  return Array.from({ length: MOST_SOONER }, (_, i) => ({ sooner: Math.max(1, between) + i }));
}
