const DAY: Intl.DateTimeFormatOptions = { day: 'numeric', month: 'short' };

/** A day such as "26 Dec", with the year where it is not this one. @param at ms since 1970 */
export function dayInWords(at: number, now = Date.now()): string {
  const [day, today] = [new Date(at), new Date(now)];
  return day.toLocaleDateString('en-GB', day.getFullYear() === today.getFullYear() ? DAY : { ...DAY, year: 'numeric' });
}

/** A time such as "14:05", with the day where it is not today. @param at ms since 1970 */
export function timeInWords(at: number, now = Date.now()): string {
  const time = new Date(at).toLocaleTimeString('en-GB', { hour: '2-digit', minute: '2-digit' });
  return new Date(at).toDateString() === new Date(now).toDateString() ? time : `${dayInWords(at, now)}, ${time}`;
}
