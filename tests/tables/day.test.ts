import { describe, expect, it } from 'vitest';
import { yearOf } from '../../src/core/calendar';
import { dayIn } from '../../src/tables/day';

/** 14 June 2027: spreadsheets count 1 January 2000 as 36526, and 10,026 days lie between (derived). */
const JUNE_14 = 46552;

describe('dayIn', () => {
  it.each([
    '2027-06-14',
    ' 2027-6-14 ',
    '2027/06/14',
    '14/06/2027',
    '06/14/2027',
    '14-06-2027',
    '14.6.2027',
    '14. 06. 2027',
    '14 Jun 2027',
    '14 june 2027',
    '14th June, 2027',
    'June 14, 2027',
    '14-Jun-2027',
  ])('understands %s', (text) => {
    expect(dayIn(text)).toEqual({ day: JUNE_14 });
  });

  it.each(['14 Jun', '14 June', 'Jun 14', '14.6.', '14/6', '14 Jun.'])(
    'takes %s for a day of the run’s year',
    (text) => {
      expect(dayIn(text, 2027)).toEqual({ day: JUNE_14 });
      expect(dayIn(text)).toEqual({ unclear: expect.stringContaining('has no year') });
    },
  );

  it('asks which of two numbers is the month where both can be', () => {
    expect(dayIn('06/07/2027')).toEqual({ unclear: 'may be 2027-07-06 or 2027-06-07; enter the one that is meant so' });
    expect(dayIn('6/7', 2027)).toEqual({ unclear: expect.stringContaining('2027-07-06 or 2027-06-07') });
    expect(dayIn('07/07/2027')).toEqual({ day: JUNE_14 + 23 });
    // With points, the day comes first wherever days are written so (common practice).
    expect(dayIn('6.7.2027')).toEqual(dayIn('2027-07-06'));
  });

  it('does not guess half a year', () => {
    expect(dayIn('14/06/27')).toEqual({ unclear: expect.stringContaining('no whole year') });
    expect(dayIn('14 Jun 27')).toEqual({ unclear: expect.stringContaining('no whole year') });
  });

  it.each(['2027-02-30', '31.6.2027', '14/06/0027', 'soon', '14 Foo 2027', '46552', '', '1 000'])(
    'knows no day in "%s"',
    (text) => {
      expect(dayIn(text, 2027)).toBeUndefined();
    },
  );

  it('tells the year of a day that the spreadsheet counts', () => {
    expect([yearOf(36526), yearOf(36525), yearOf(JUNE_14)]).toEqual([2000, 1999, 2027]);
  });
});
