import { itemAt } from '../core/item-at';
import { DAY_0, isoOf, MS_A_DAY, yearOf } from '../core/calendar';

export const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'] as const;
const WEEKDAYS = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'] as const;

/** A spreadsheet's day number in words: "14 Jun 2026". Day 1 is 1 January 1900, and 1900 counts as a leap year. */
export function dayInWords(day: number | undefined): string {
  if (day === undefined || !Number.isFinite(day)) return '';
  const date = dateOf(day);
  return `${date.getUTCDate()} ${MONTHS[date.getUTCMonth()]} ${date.getUTCFullYear()}`;
}

/** The same with its day of the week: "Mon 14 Jun 2027". */
export function weekdayInWords(day: number): string {
  return `${WEEKDAYS[dateOf(day).getUTCDay()]} ${dayInWords(day)}`;
}

function dateOf(day: number): Date {
  return new Date(DAY_0 + Math.floor(day) * MS_A_DAY);
}

/** The year of most days among cells, the earliest of equals; undefined where no cell has a day with its year. */
export function yearOfMost(cells: readonly unknown[]): number | undefined {
  const counts = new Map<number, number>();
  for (const cell of cells) {
    const said = typeof cell === 'string' ? dayIn(cell) : undefined;
    const day = typeof cell === 'number' ? cell : said && 'day' in said ? said.day : undefined;
    if (day === undefined || !(day >= 1 && day <= 200_000)) continue;
    counts.set(yearOf(day), (counts.get(yearOf(day)) ?? 0) + 1);
  }
  const most = Math.max(...counts.values());
  return counts.size === 0 ? undefined : Math.min(...[...counts].flatMap(([year, n]) => (n === most ? [year] : [])));
}

/** What a text says of a day: the spreadsheet's number of it, what keeps it from being one, or nothing. */
export type Day = { readonly day: number } | { readonly unclear: string } | undefined;

/**
 * Reads a day as makers write it: 2027-06-14, 14.6.2027, 14/06/2027, 14 June 2027, and without its year where the run's is
 * known. Of two numbers with strokes between them either may be the month: where both can be, it is unclear.
 * @param year the run's, for a day without one
 */
export function dayIn(text: string, year?: number): Day {
  const said = text.trim().replace(/,/g, ' ').replace(/\s+/g, ' ');
  const iso = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})$/.exec(said);
  if (iso) return whole(Number(iso[1]), Number(iso[2]), Number(iso[3]));
  const dotted = /^(\d{1,2})\. ?(\d{1,2})\.(?: ?(\d{2,4}))?$/.exec(said);
  if (dotted) return of(dotted[3], Number(dotted[2]), Number(dotted[1]), year);
  const stroked = /^(\d{1,2})[/-](\d{1,2})(?:[/-](\d{2,4}))?$/.exec(said);
  if (stroked) return ofStrokes(Number(stroked[1]), Number(stroked[2]), stroked[3], year);
  const named = /^(\d{1,2})(?:st|nd|rd|th)?[ .-]{0,2}([a-z]{3,9})\.?(?:[ -](\d{2,4}))?$/i.exec(said);
  if (named) return of(named[3], monthNamed(itemAt(named, 2)), Number(named[1]), year);
  const first = /^([a-z]{3,9})\.?[ -](\d{1,2})(?:st|nd|rd|th)?(?: (\d{2,4}))?$/i.exec(said);
  if (first) return of(first[3], monthNamed(itemAt(first, 1)), Number(first[2]), year);
  return undefined;
}

function ofStrokes(a: number, b: number, said: string | undefined, year: number | undefined): Day {
  if (a > 12 || a === b) return of(said, b, a, year);
  if (b > 12) return of(said, a, b, year);
  const days = [of(said, b, a, year), of(said, a, b, year)];
  const unclear = days.find((one) => one && 'unclear' in one);
  if (unclear) return unclear;
  const [one, other] = days.map((day) => (day && 'day' in day ? isoOf(day.day) : ''));
  return { unclear: `may be ${one} or ${other}; enter the one that is meant so` };
}

function of(said: string | undefined, month: number | undefined, day: number, year: number | undefined): Day {
  if (month === undefined) return undefined;
  if (said !== undefined && said.length !== 4) return { unclear: 'has no whole year; enter it such as 2027-06-14' };
  const own = said === undefined ? year : Number(said);
  return own === undefined
    ? { unclear: 'has no year, and no other day tells the year of the run; enter it such as 2027-06-14' }
    : whole(own, month, day);
}

function whole(year: number, month: number, day: number): Day {
  const at = new Date(Date.UTC(year, month - 1, day));
  if (year < 1900 || at.getUTCMonth() !== month - 1 || at.getUTCDate() !== day) return undefined;
  return { day: (at.getTime() - DAY_0) / MS_A_DAY };
}

function monthNamed(word: string): number | undefined {
  const at = MONTHS.findIndex((month) => word.toLowerCase().startsWith(month.toLowerCase()));
  return at < 0 ? undefined : at + 1;
}
