import { describe, expect, it } from 'vitest';
import { withTodaysFunctions } from '../../src/workbook/former-functions';

describe('withTodaysFunctions', () => {
  it.each([
    ['=SOLEBENCH.ROUNDS(A1:B9,Styles!A3:Z40)', '=SOLEBENCH.BATCHES(A1:B9,Styles!A3:Z40)'],
    ['=SOLEBENCH.MIXEDCUTTING(A1:B9)', '=SOLEBENCH.LAYOUTSEARCH(A1:B9)'],
    [
      '=INDEX(solebench.rounds (A1:B9), 2, 8) + SOLEBENCH.ROUNDS(C1)',
      '=INDEX(SOLEBENCH.BATCHES (A1:B9), 2, 8) + SOLEBENCH.BATCHES(C1)',
    ],
  ])('writes %s as %s', (former, today) => {
    expect(withTodaysFunctions(former)).toBe(today);
  });

  it.each([
    '=SOLEBENCH.LAYERS(45,7)',
    '=ROUND(A1,2)+ROUNDS(A1)',
    '="SOLEBENCH.ROUNDS("&A1',
    "='SOLEBENCH.ROUNDS('!A1",
    '="say ""SOLEBENCH.ROUNDS(A1)"""',
    '=MYSOLEBENCH.ROUNDS(A1)',
    '=SOLEBENCH.ROUNDSOFAR(A1)',
    '',
  ])('leaves %s as it is', (formula) => {
    expect(withTodaysFunctions(formula)).toBe(formula);
  });
});
