/** Days of a week, from Monday on; the spreadsheet's day 2 was a Monday. */
const WEEK = 7;
const MONDAY = 2;

/**
 * The day on which so many working days are over, counted from a start: day numbers of the spreadsheet.
 * @param start whatever falls on a closed day begins on the next open one
 * @param days whole, 0 or more
 * @param week days worked in a week from Monday on, 1 to 7: 6 leaves out Sundays
 */
export function afterWorkingDays(start: number, days: number, week: number): number {
  let day = opened(start, week);
  day += Math.floor(days / week) * WEEK;
  for (let left = days % week; left > 0; left--) day = opened(day + 1, week);
  return day;
}

/** The day from which so many working days lead to a day, or to the next open one. @param days whole, 0 or more */
export function beforeWorkingDays(day: number, days: number, week: number): number {
  const end = opened(day, week);
  // A week never has more days than it has working days before it.
  for (let from = end - Math.ceil(days / week) * WEEK; ; from++) {
    if (afterWorkingDays(from, days, week) === end) return opened(from, week);
  }
}

function opened(day: number, week: number): number {
  const weekday = (((Math.floor(day) - MONDAY) % WEEK) + WEEK) % WEEK;
  return weekday < week ? day : day + WEEK - weekday;
}
