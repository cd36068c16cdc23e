import { NEW_EXCEL_FUNCTIONS } from '@univerjs/engine-formula';
import { describe, expect, it } from 'vitest';
import { NEWER } from '../../../src/exchange/xlsx/newer-functions';
import { answersWithTable, storedFormula, writtenFormula } from '../../../src/exchange/xlsx/stored-formula';

/** Source of the stored forms: workbooks that the office suite saved, and the vendor's page on the _xlfn. prefix. */
const pairs: readonly (readonly [written: string, stored: string])[] = [
  ['=SOLEBENCH.LAYERS(A1,B1)', '_xldudf_SOLEBENCH_LAYERS(A1,B1)'],
  ["=SUM('My sheet'!A1:A3)", "SUM('My sheet'!A1:A3)"],
  ['=FILTER(A1:A9,B1:B9>2)', '_xlfn._xlws.FILTER(A1:A9,B1:B9>2)'],
  ['=SORT(UNIQUE(A1:A9))', '_xlfn._xlws.SORT(_xlfn.UNIQUE(A1:A9))'],
  ['=XLOOKUP(A1,B:B,C:C)', '_xlfn.XLOOKUP(A1,B:B,C:C)'],
  ['=LET(cork,A1,cork*cork+B1)', '_xlfn.LET(_xlpm.cork,A1,_xlpm.cork*_xlpm.cork+B1)'],
  ['=MAP(A1:A3,LAMBDA(x,x*2))', '_xlfn.MAP(A1:A3,_xlfn.LAMBDA(_xlpm.x,_xlpm.x*2))'],
  ['="SORT("&A1', '"SORT("&A1'],
  ['="_xlfn. and _xldudf_SOLEBENCH_A("&A1', '"_xlfn. and _xldudf_SOLEBENCH_A("&A1'],
  ['=IF(SUM({1,2;3,4})=10,"a;b",)', 'IF(SUM({1,2;3,4})=10,"a;b",)'],
];

describe('storedFormula', () => {
  it.each(pairs)('writes %s as files have it', (written, stored) => {
    expect(storedFormula(written)).toBe(stored);
  });

  it.each([
    ['=@SOLEBENCH.LAYERS(A1,(B1+1))*2', '_xlfn.SINGLE(_xldudf_SOLEBENCH_LAYERS(A1,(B1+1)))*2'],
    ['=1+@A1:A3', '1+_xlfn.SINGLE(A1:A3)'],
    ['=@SUM(@A1:A3)', '_xlfn.SINGLE(SUM(_xlfn.SINGLE(A1:A3)))'],
    ['="@"&@(A1:A3)', '"@"&_xlfn.SINGLE((A1:A3))'],
  ])('writes %s without the @, which files do not know', (written, stored) => {
    expect(storedFormula(written)).toBe(stored);
    expect(writtenFormula(stored)).toBe(written);
    expect(answersWithTable(written)).toBe(true);
  });

  it('knows every newer function of the grid', () => {
    expect([...NEW_EXCEL_FUNCTIONS].map(String).filter((name) => !NEWER.has(name))).toEqual([]);
  });
});

describe('writtenFormula', () => {
  it.each(pairs)('reads %s back', (written, stored) => {
    expect(writtenFormula(stored)).toBe(written);
  });

  it('reads a name of another program’s capitals', () => {
    expect(writtenFormula('_xldudf_solebench_order(A1:B2)')).toBe('=SOLEBENCH.ORDER(A1:B2)');
  });

  it.each(['PERCENTOF(A1,A1:A3)', 'GROUPBY(A1:A3,B1:B3,_xleta.SUM)', 'REGEXTEST(A1,"a")', 'STOCKHISTORY("a",1)'])(
    'gives back %s as the file had it',
    (formula) => {
      expect(storedFormula(writtenFormula(`_xlfn.${formula}`))).toBe(`_xlfn.${formula}`);
      expect(writtenFormula(`_xlfn.${formula}`)).toBe(`=${formula}`);
    },
  );

  it('keeps the mark of a function that is newer than this', () => {
    for (const stored of ['_xlfn.TOMORROW(A1)', '_xlfn._xlws.TOMORROW(_xlfn.XLOOKUP(A1,B:B,C:C))']) {
      expect(storedFormula(writtenFormula(stored))).toBe(stored);
    }
  });

  it('leaves functions of other add-ins as they are', () => {
    expect(writtenFormula('_xldudf_OTHER_ADD(A1)')).toBe('=_xldudf_OTHER_ADD(A1)');
  });
});

describe('answersWithTable', () => {
  it.each([
    '=SOLEBENCH.LAYERS(A1,B1)',
    '=A1:A3*2',
    '=SEQUENCE(3)',
    '=SUM(A1:A3*B1:B3)',
    '=ABS(A1:A3)',
    '=A:A',
    '={1,2}*3+A1:A2',
  ])('marks %s, whose table may spill or which works cell by cell', (formula) => {
    expect(answersWithTable(formula)).toBe(true);
  });

  it.each(['=A1+B1', '=IF(SUM(D5:K5)=0,"",SUM(D5:K5))', '=VLOOKUP(A1,Lasts!$A$1:$C$9,2,FALSE)', '="A1:A3"', '=TRUE'])(
    'leaves %s plain',
    (formula) => {
      expect(answersWithTable(formula)).toBe(false);
    },
  );
});
