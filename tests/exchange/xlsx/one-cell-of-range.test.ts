import { describe, expect, it } from 'vitest';
import { withOneOfRanges, withoutMarks } from '../../../src/exchange/xlsx/one-cell-of-range';

/** First two: vendor's "Implicit intersection operator: @"; others derived from which arguments take one value (from memory). */
const marked: readonly (readonly [inFile: string, meant: string])[] = [
  ['=A1:A10', '=@A1:A10'],
  ['=SUM(A1:A10*B1:B10)', '=SUM(@A1:A10*@B1:B10)'],
  ['=A:A*2', '=@A:A*2'],
  ['=-Other!A1:A4%', '=-@Other!A1:A4%'],
  ['=\'My sheet\'!$A$1:$A$3&":"', '=@\'My sheet\'!$A$1:$A$3&":"'],
  ['=ABS( A1:A3 )', '=ABS( @A1:A3 )'],
  ['=IF(A1:A3>2,B1:B3,"")', '=IF(@A1:A3>2,@B1:B3,"")'],
  ['=SUM(IF(A1:A3>2,B1:B3))', '=SUM(IF(@A1:A3>2,B1:B3))'],
  ['=IFERROR(VLOOKUP(A:A,C1:D9,2,FALSE),"")', '=IFERROR(VLOOKUP(@A:A,C1:D9,2,FALSE),"")'],
  ['=SUMIFS(C1:C9,A1:A9,E1:E9,B1:B9,"x")', '=SUMIFS(C1:C9,A1:A9,@E1:E9,B1:B9,"x")'],
  ['=INDEX(B1:B9,MATCH(D:D,A1:A9,0))', '=INDEX(B1:B9,MATCH(@D:D,A1:A9,0))'],
];

describe('withOneOfRanges', () => {
  it.each(marked)('reads %s as %s', (inFile, meant) => {
    expect(withOneOfRanges(inFile)).toBe(meant);
    expect(withOneOfRanges(meant)).toBe(meant);
  });

  it.each([
    '=SUM(A1:A3)',
    '=SUM((A1:A3,C1:C3))',
    '=SUMPRODUCT((A1:A9="x")*B1:B9)',
    '=LOOKUP(2,1/(A1:A9="x"),B1:B9)',
    '=INDEX(B1:B9,MATCH(1,(A1:A9="x")*(C1:C9="y"),0))',
    '=SUMPRODUCT(ABS(A1:A3))',
    '=SOLEBENCH.LAYERS(A1:A3,6)',
    '=FILTER(A1:A9,B1:B9>2)',
    '=SUM(A1:INDEX(A:A,3))',
    '=A1:A3 A2:C2',
    '="A1:A3"',
    '=ROUND(@A1:A3,1)',
    '=no formula((A1:A3',
  ])('leaves %s, which means no one cell or says so itself', (formula) => {
    expect(withOneOfRanges(formula)).toBe(formula);
  });
});

describe('withoutMarks', () => {
  it.each(marked)('writes %s for %s', (inFile, meant) => {
    expect(withoutMarks(meant)).toBe(inFile);
  });

  it.each(['=A1', '=@SOLEBENCH.LAYERS(A1,B1)', '=SUM(@A1:A3)', '=@A1:A3+SUM(@B1:B3)', '="@"&A1'])(
    'has nothing for %s, which a file without an @ would not mean',
    (formula) => {
      expect(withoutMarks(formula)).toBeUndefined();
    },
  );
});
