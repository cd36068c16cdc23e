/** Number formats that files name by a number alone (ECMA-376 part 1, 18.8.30); dates as the standard gives them. */
export const BUILT_IN: ReadonlyMap<number, string> = new Map([
  [0, 'General'],
  [1, '0'],
  [2, '0.00'],
  [3, '#,##0'],
  [4, '#,##0.00'],
  [9, '0%'],
  [10, '0.00%'],
  [11, '0.00E+00'],
  [12, '# ?/?'],
  [13, '# ??/??'],
  [14, 'mm-dd-yy'],
  [15, 'd-mmm-yy'],
  [16, 'd-mmm'],
  [17, 'mmm-yy'],
  [18, 'h:mm AM/PM'],
  [19, 'h:mm:ss AM/PM'],
  [20, 'h:mm'],
  [21, 'h:mm:ss'],
  [22, 'm/d/yy h:mm'],
  [37, '#,##0 ;(#,##0)'],
  [38, '#,##0 ;[Red](#,##0)'],
  [39, '#,##0.00;(#,##0.00)'],
  [40, '#,##0.00;[Red](#,##0.00)'],
  [45, 'mm:ss'],
  [46, '[h]:mm:ss'],
  [47, 'mmss.0'],
  [48, '##0.0E+0'],
  [49, '@'],
]);

/** The first number that is free for formats of a file's own. */
export const FIRST_OWN = 164;

/** Whether a format shows a number as a day or a time. */
export function isOfTime(format: string): boolean {
  const bare = codesOf(format);
  return /[dmyhs]/i.test(bare) && !/general/i.test(bare);
}

/** Whether a format shows a day, month or year, with a time or without. A time alone is a part of a day, or hours gone by. */
export function isOfDay(format: string): boolean {
  if (!isOfTime(format)) return false;
  const bare = codesOf(format).replace(/[ap]m?\/[ap]m?|\[m+\]/gi, '');
  // An m after hours or before seconds is of minutes.
  const ofMinutes = /h+\]?[^a-z]*m{1,2}(?!m)|(?<!m)m{1,2}[^a-z]*s/gi;
  return /[dym]/i.test(bare.replace(ofMinutes, ''));
}

/** A format without what it writes as it stands, its colours and conditions. */
function codesOf(format: string): string {
  return format.replace(/"[^"]*"|\\.|_.|\*.|\[(?!h+\]|m+\]|s+\])[^\]]*\]/gi, '');
}
