import { describe, expect, it } from 'vitest';
import { writeCsv } from '../../src/exchange/csv';

describe('CSV', () => {
  it('quotes as RFC 4180 has it (section 2, rules 5 to 7), lines ending in CR LF', () => {
    expect(
      writeCsv([
        ['a', 'b,c', 'd"e', 'f\r\ng'],
        [1, 2.5, undefined, NaN],
      ]),
    ).toBe('a,"b,c","d""e","f\r\ng"\r\n1,2.5,,\r\n');
  });

  it('makes text of what a spreadsheet would take for a formula', () => {
    for (const formula of ['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '\u200b=1', ' =1']) {
      expect(writeCsv([[formula]])).toContain(`'${formula}`);
    }
    expect(writeCsv([[-1]])).toBe('-1\r\n');
  });
});
