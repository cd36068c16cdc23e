import type { Stepwise } from '../../stepwise';
import { ratesOf } from '../cost/rates';
import type { PairageRow } from '../inputs';
import type { Runs } from '../runs';
import { type BenchChange, type BenchDays, benchDays, type BenchDaysInput } from './bench-days';

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
export function lateOrders({ lines }: Pick<BenchDays, 'lines'>): readonly LateOrder[] {
  const late = new Map<PairageRow, LateOrder>();
  for (const { lot, late: days, date } of lines) {
    const { row, run } = lot;
    if (!days || date === undefined || row.due === undefined) continue;
    if (days <= (late.get(row)?.days ?? 0)) continue;
    late.set(row, { row, style: run.style.code, due: row.due, made: date, days });
  }
  return [...late.values()];
}

/** How many changes of hours, lasts and the first day are tried for one order. */
const MOST_HOURS = 2;
const MOST_SOONER = 3;

/**
 * What would help a late order: an hour or two more a day, a pair more of the lasts that something waits for, a sooner
 * beginning; each by itself, worked out as the days themselves are. What does not help is not there.
 */
export function* helpsFor(
  late: LateOrder,
  days: BenchDays,
  runs: Runs,
  input: BenchDaysInput,
): Stepwise<readonly Help[]> {
  const helps: Help[] = [];
  for (const changes of [hours(input), lasts(late, days), sooner(late, days)]) {
    for (const change of changes) {
      const others = lateOrders(yield* benchDays(runs, input, change));
      const left = others.find(({ row }) => row === late.row)?.days ?? 0;
      if (left < late.days) helps.push({ change, days: left });
      // More of the same is not asked for where less is enough.
      if (left === 0) break;
    }
  }
  return helps;
}

function hours({ rates }: Pick<BenchDaysInput, 'rates'>): readonly BenchChange[] {
  const now = ratesOf(rates).one('hours a day', []) ?? 24;
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
