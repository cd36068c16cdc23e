import { describe, expect, it } from 'vitest';
import { isOfDay, isOfTime } from '../../../src/exchange/xlsx/number-formats';

/** Codes of days and times: ECMA-376 part 1, 18.8.31. */
const DAYS = [
  'dd.mm.yyyy',
  'd-mmm',
  'mmm-yy',
  'm/d/yy h:mm',
  'yyyy-mm-dd\\Thh:mm:ss',
  'mmmm',
  'mm',
  '[$-407]ddd',
  'h:mm d',
];
const TIMES = [
  'h:mm',
  '[h]:mm',
  '[h]:mm:ss',
  'mm:ss',
  'mmss.0',
  '[mm]:ss',
  '[ss]',
  'h:mm AM/PM',
  'h "day"',
  '[Red]h:mm:ss',
];

describe('isOfDay', () => {
  it.each(DAYS)('%s shows a day, month or year', (format) => {
    expect(isOfDay(format)).toBe(true);
  });

  it.each(TIMES)('%s shows a time alone', (format) => {
    expect(isOfTime(format)).toBe(true);
    expect(isOfDay(format)).toBe(false);
  });

  it.each(['General', '0.00', '0.00E+00', '#,##0 "mm"', '[Red]0'])('%s shows a number', (format) => {
    expect(isOfDay(format)).toBe(false);
  });
});
