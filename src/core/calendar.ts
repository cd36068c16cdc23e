/** The spreadsheet counts its days from 30 December 1899. */
export const DAY_0 = Date.UTC(1899, 11, 30);
export const MS_A_DAY = 86_400_000;

/** The year of a day that the spreadsheet counts. */
export function yearOf(day: number): number {
  return new Date(DAY_0 + day * MS_A_DAY).getUTCFullYear();
}

/** A day as 2027-06-14. */
export function isoOf(day: number): string {
  return new Date(DAY_0 + day * MS_A_DAY).toISOString().slice(0, 10);
}

/** The same day of another year, counted likewise; 29 February becomes 1 March where the year has none. */
export function inYear(day: number, year: number): number {
  const at = new Date(DAY_0 + day * MS_A_DAY);
  return (Date.UTC(year, at.getUTCMonth(), at.getUTCDate()) - DAY_0) / MS_A_DAY;
}
