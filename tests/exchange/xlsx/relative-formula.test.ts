import { translateFormulaToA1, translateFormulaToR1C1 } from '@borgar/fx';
import { describe, expect, it } from 'vitest';
import { formulaAt, relativeFormula } from '../../../src/exchange/xlsx/relative-formula';

describe('a formula that cells share', () => {
  const formulas = [
    '=C5+$C5+C$5+$C$5',
    "=SUM('a b'!A1:B2,Lasts!D4,$A$1:$B$2)",
    '=COUNT(A:A,$B:$B,3:4,$3:$4)',
    '="A1"&LEN(B2)+log10(3)',
    '=SOLEBENCH.LAYERS(A1,B1)*Mine',
    '=IF(SUM({1,2;3,4})=10,A1,"")',
  ];

  it.each(formulas)('%s moves with its cell as another library moves it', (formula) => {
    const shared = relativeFormula(formula, 4, 3);
    for (const [row, column, address] of [
      [4, 3, 'D5'],
      [9, 3, 'D10'],
      [20, 30, 'AE21'],
    ] as const) {
      const expected = translateFormulaToA1(translateFormulaToR1C1(formula, 'D5'), address, { mergeRefs: true });
      expect(formulaAt(shared, row, column)).toBe(expected);
    }
  });
});
