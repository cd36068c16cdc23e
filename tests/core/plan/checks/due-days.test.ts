import { describe, expect, it } from 'vitest';
import { isoOf } from '../../../../src/core/calendar';
import { dueDayChecks } from '../../../../src/core/plan/checks/due-days';
import { dayIn } from '../../../../src/tables/day';

const day = (iso: string): number => {
  const read = dayIn(iso);
  if (!read || !('day' in read)) throw new Error(`${iso} is no day`);
  return read.day;
};

/** Told of a run whose rows are due on these days: the row, and the day that was probably meant. */
const told = (...days: (string | undefined)[]) =>
  dueDayChecks(
    days.map((due, at) => ({
      row: at + 1,
      style: 'Betony',
      due: due === undefined ? undefined : day(due),
      pairs: new Map([[38, 2]]),
    })),
  ).map((check) => (check.kind === 'dueFar' ? `${check.row} ${isoOf(check.meant)}` : check.kind));

// Derived: days of a run lie within half a year of each other.
describe('days due far from the others', () => {
  it('are told with the same day of the run’s year', () => {
    expect(told('2027-05-28', '2026-06-14', '2027-07-02')).toEqual(['2 2027-06-14']);
    expect(told('2027-12-20', '2026-01-10', '2027-11-30')).toEqual(['2 2028-01-10']);
  });

  it('are told of two that disagree for the earlier, which a missing year makes', () => {
    expect(told('2026-06-14', '2027-05-28')).toEqual(['1 2027-06-14']);
    expect(told('2026-06-14', '2026-06-20', '2027-05-28', '2027-06-01')).toEqual(['1 2027-06-14', '2 2027-06-20']);
  });

  it('are none in a run that goes on for more than a year without a gap', () => {
    expect(told('2027-01-10', '2027-05-10', '2027-09-10', '2028-01-10', '2028-05-10')).toEqual([]);
  });

  it('are none where a row has no day, or is alone', () => {
    expect(told(undefined, '2027-06-14', undefined)).toEqual([]);
    expect(told()).toEqual([]);
  });
});
