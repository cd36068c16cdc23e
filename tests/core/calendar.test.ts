import { describe, expect, it } from 'vitest';
import { DAY_0, inYear, isoOf, MS_A_DAY, yearOf } from '../../src/core/calendar';

/** Days as spreadsheets count them: 1 January 1970, where other clocks begin, is 25569 (from memory). */
describe('the days of a spreadsheet', () => {
  it('are counted from the day that makes 1 January 1970 the 25569th', () => {
    expect(DAY_0 + 25_569 * MS_A_DAY).toBe(0);
    expect(isoOf(25_569)).toBe('1970-01-01');
  });

  it('have their year, on its first and its last day', () => {
    expect([25_568, 25_569, 25_569 + 364, 25_569 + 365].map(yearOf)).toEqual([1969, 1970, 1970, 1971]);
  });

  it('are the same in another year, and the day after where that has no 29 February', () => {
    // 1972 had a 29 February: 730 days after 1 January 1970 and 59 more.
    const leap = 25_569 + 730 + 59;
    expect(isoOf(leap)).toBe('1972-02-29');
    expect(isoOf(inYear(leap, 2028))).toBe('2028-02-29');
    expect(isoOf(inYear(leap, 2027))).toBe('2027-03-01');
    expect(isoOf(inYear(46_552, 2030))).toBe('2030-06-14');
  });
});
