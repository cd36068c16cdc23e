import { describe, expect, it } from 'vitest';
import { afterWorkingDays, beforeWorkingDays } from '../../../src/core/plan/working-days';

// Day 46531 of the spreadsheet is 24 May 2027, a Monday: 46529 days before it, on day 2, was Monday 1 January 1900.
const MONDAY = 46531;
const date = (day: number) => new Date(Date.UTC(1899, 11, 30) + day * 86_400_000);

describe('afterWorkingDays', () => {
  it('counts every day of a week of seven', () => {
    expect([0, 1, 10].map((days) => afterWorkingDays(MONDAY, days, 7))).toEqual([MONDAY, MONDAY + 1, MONDAY + 10]);
  });

  it('passes over Sundays in a week of six, Saturdays too in one of five', () => {
    expect(date(MONDAY).getUTCDay()).toBe(1);
    // Monday and five days more are Saturday; the sixth is the next Monday.
    expect([5, 6, 12].map((days) => afterWorkingDays(MONDAY, days, 6))).toEqual([MONDAY + 5, MONDAY + 7, MONDAY + 14]);
    expect([4, 5, 10].map((days) => afterWorkingDays(MONDAY, days, 5))).toEqual([MONDAY + 4, MONDAY + 7, MONDAY + 14]);
  });

  it('begins on the next open day, and agrees with counting day by day', () => {
    expect(afterWorkingDays(MONDAY - 1, 0, 6)).toBe(MONDAY);
    for (const week of [1, 2, 3, 4, 5, 6, 7]) {
      for (let start = MONDAY; start < MONDAY + 7; start++) {
        const open = (day: number) => (date(day).getUTCDay() + 6) % 7 < week;
        let day = start;
        while (!open(day)) day += 1;
        for (let days = 0; days < 25; days++) {
          expect(afterWorkingDays(start, days, week)).toBe(day);
          do day += 1;
          while (!open(day));
        }
      }
    }
  });
});

describe('beforeWorkingDays', () => {
  it('leads back to a day by so many working days (every day of four weeks)', () => {
    for (let day = MONDAY; day < MONDAY + 28; day++) {
      for (const week of [1, 5, 6, 7]) {
        for (const days of [0, 1, 4, 13]) {
          const from = beforeWorkingDays(day, days, week);
          expect(afterWorkingDays(from, days, week)).toBe(afterWorkingDays(day, 0, week));
          expect(afterWorkingDays(from, 0, week)).toBe(from);
        }
      }
    }
  });
});
