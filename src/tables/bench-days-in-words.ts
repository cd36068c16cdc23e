import type { BenchChange, BenchDays, BenchLine } from '../core/plan/bench-days/bench-days';
import type { Help, LateOrder } from '../core/plan/bench-days/late-orders';
import { counted } from './counted';
import { dayInWords, weekdayInWords } from './day';
import { WAIT_WORDS } from './words';

/** One day at the bench, with what is done on it. */
export interface BenchDay {
  /** Counted from 1. */
  readonly day: number;
  readonly date: number | undefined;
  readonly lines: readonly BenchLine[];
  readonly minutes: number;
  /** Pairs of lasts that are taken, and pairs that are made. */
  readonly lasts: number;
  readonly made: number;
}

/** The days one after the other; a day on which nothing is done and no last is taken is none of them. */
export function dayByDay({ lines }: Pick<BenchDays, 'lines'>): readonly BenchDay[] {
  const days = new Map<number, BenchLine[]>();
  for (const line of lines) {
    const own = days.get(line.day);
    if (own) own.push(line);
    else days.set(line.day, [line]);
  }
  return [...days].map(([day, own]) => ({
    day,
    date: own[0]?.date,
    lines: own,
    minutes: sum(own, ({ minutes }) => minutes),
    lasts: sum(own, ({ lasts }) => lasts),
    made: sum(own, ({ waits, lot }) => (waits ? 0 : lot.pairs)),
  }));
}

function sum(lines: readonly BenchLine[], of: (line: BenchLine) => number): number {
  return lines.reduce((all, line) => all + of(line), 0);
}

/** "Day 3, Wed 26 May 2027". */
export function benchDayInWords({ day, date }: Pick<BenchDay, 'day' | 'date'>): string {
  return date === undefined ? `Day ${day}` : `Day ${day}, ${weekdayInWords(date)}`;
}

/** What pairs wait for when the day is over: "the press, until day 4"; "made", "made, 2 days late". */
export function thenInWords({ waits, late }: BenchLine): string {
  if (waits)
    return `${WAIT_WORDS[waits.what]}, until ${waits.date === undefined ? `day ${waits.until}` : dayInWords(waits.date)}`;
  return late ? `made, ${counted(late, 'day')} late` : 'made';
}

/** "Comfrey for Harbour theatre: due 12 Jul 2027, made 14 Jul 2027, 2 days late". */
export function lateInWords({ style, row, due, made, days }: LateOrder): string {
  const whose = row.customer === undefined ? style : `${style} for ${row.customer}`;
  return `${whose}: due ${dayInWords(due)}, made ${dayInWords(made)}, ${counted(days, 'day')} late`;
}

/** "8 hours a day: on time". @param hours that the bench works in a day now */
export function helpInWords({ change, days }: Help, hours: number): string {
  return `${changeInWords(change, hours)}: ${days === 0 ? 'on time' : `${counted(days, 'day')} late`}`;
}

/** "8 hours a day", "one more pair of lasts Town in 38". */
export function changeInWords({ moreHours, moreLasts, sooner, ahead }: BenchChange, hours: number): string {
  const what = [
    moreHours === undefined ? '' : `${Number((hours + moreHours).toFixed(2))} hours a day`,
    moreLasts === undefined ? '' : `one more pair of lasts ${moreLasts.last} in ${moreLasts.sizes.join(', ')}`,
    sooner === undefined ? '' : `a start ${sooner === 1 ? 'one day' : `${sooner} days`} of work sooner`,
    ahead === undefined ? '' : 'its pairs taken before all others (give it a sooner day due)',
  ];
  return what.filter(Boolean).join(' and ');
}
