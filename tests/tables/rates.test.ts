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
