import { describe, expect, it } from 'vitest';
import { planCells } from '../../src/tables/plan-cells';
import { readPlan } from '../../src/tables/plan-input';
import { tableCells } from '../../src/workbook/table-cells';

const read = (value: unknown, unit: string) =>
  readPlan(
    planCells(
      new Map([
        ...Object.entries(tableCells()),
        [
          'Costs and times',
          [
            ['Item', 'Value', 'Unit'],
            ['Start', value, unit],
          ],
        ],
      ]),
    ),
  );
const rateOf = (value: unknown, unit = 'day of start') => read(value, unit).plan.input.rates[0]?.value;
const slipOf = (value: unknown, unit = 'day of start') => read(value, unit).problems[0]?.message;

describe('the day of start', () => {
  // Day 46356 of a spreadsheet is 30 November 2026 (day 1 is 1 January 1900, and 1900 counts as a leap year).
  it.each(['30.11.2026', '2026-11-30', '30 November 2026', '30/11/2026', 46356, '46356'])(
    'is read from %s, as days due are',
    (cell) => {
      expect(slipOf(cell)).toBeUndefined();
      expect(rateOf(cell)).toBe(46356);
    },
  );

  it.each(['Monday', '30.11.26', '11/12/2026', ''])('says in which form it is read where it is %s', (cell) => {
    expect(slipOf(cell)).toMatch(/^row 1 of Costs and times, Value: .*(\d{4}-\d\d-\d\d|enter)/);
  });
});

describe('values in other units', () => {
  it('are no days', () => {
    expect(slipOf('30.11.2026', 'minutes a pair')).toMatch(/^row 1 of Costs and times, Value: "30.11.2026" .*number/);
    expect(rateOf('2,5', 'minutes a pair')).toBe(2.5);
  });
});

describe('a share spoiled', () => {
  it.each([5, '5', '5 %', '5%', 0.05, '0,05'])(
    'is 5 % where %s is entered, as shares in other tables are read',
    (cell) => {
      expect(slipOf(cell, 'share spoiled')).toBeUndefined();
      expect(rateOf(cell, 'share spoiled')).toBeCloseTo(0.05, 12);
    },
  );

  it.each([0.5, 2.5, 99])('is %s as it stands below 1 and a percentage above', (cell) => {
    expect(rateOf(cell, 'share spoiled')).toBeCloseTo(cell < 1 ? cell : cell / 100, 12);
  });

  // 1 may be meant as 1 % or as all: neither is taken for granted.
  it.each([1, 100, '100 %', 500, '-5 %'])('of %s is refused with what would do', (cell) => {
    expect(slipOf(cell, 'share spoiled')).toMatch(
      /^row 1 of Costs and times, Value: .*not possible where the unit is share spoiled; .*5 or 0.05 for 5 %; 1 % is 0.01$/,
    );
  });

  it.each(['some', ''])('of "%s" asks for a number', (cell) => {
    expect(slipOf(cell, 'share spoiled')).toMatch(/number/);
  });
});
