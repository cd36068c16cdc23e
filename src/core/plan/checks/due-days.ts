import { itemRound } from '../../item-at';
import { inYear, yearOf } from '../../calendar';
import { askedOf, type PairageRow } from '../inputs';
import type { Check } from './check';

/** Between days of one run there is no longer gap than this, unless the year of some is a slip, days. */
const FAR = 183;

/**
 * Days due that lie far from those of most rows, where the same day of another year would not: a spreadsheet takes a day
 * that is typed without its year for one of this year.
 */
export function dueDayChecks(pairage: readonly PairageRow[]): readonly Check[] {
  const dated = pairage.flatMap((row) => {
    const { pairs, due } = askedOf(row);
    return pairs > 0 && due !== undefined ? [{ row, due }] : [];
  });
  const groups = groupsOf(dated.map(({ due }) => due));
  // Of groups alike the latest is the run's: a missing year is taken for the present one, never for a later.
  const run = groups.reduce((most, one) => (one.length >= most.length ? one : most), []);
  const [first = 0, last = 0] = [run[0], run.at(-1)];
  return dated.flatMap(({ row, due }): Check[] => {
    if (due >= first && due <= last) return [];
    const meant = nearest(due, (first + last) / 2);
    const { style: subject, row: at, customer } = row;
    return [
      { kind: 'dueFar', subject, verdict: due < first ? 'putRight' : 'lookAt', row: at, customer, day: due, meant },
    ];
  });
}

/** Days in groups with a gap of more than FAR between them, in order. */
function groupsOf(days: readonly number[]): readonly (readonly number[])[] {
  const groups: number[][] = [];
  for (const day of [...days].sort((a, b) => a - b)) {
    const group = groups.at(-1);
    if (group && day - itemRound(group, -1) <= FAR) group.push(day);
    else groups.push([day]);
  }
  return groups;
}

/** The same day in whichever year brings it nearest to another day. */
function nearest(day: number, to: number): number {
  const years = [-1, 0, 1].map((more) => inYear(day, yearOf(to) + more));
  return years.reduce((best, one) => (Math.abs(one - to) < Math.abs(best - to) ? one : best));
}
