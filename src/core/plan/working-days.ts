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

function opened(day: number, week: number): number {
  const weekday = (((Math.floor(day) - MONDAY) % WEEK) + WEEK) % WEEK;
  return weekday < week ? day : day + WEEK - weekday;
}
