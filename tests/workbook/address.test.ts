import { describe, expect, it } from 'vitest';
import { cellAddress, columnLetters, fixedReference, sheetInFormula } from '../../src/workbook/address';

describe('addresses', () => {
  it('letter columns as spreadsheets do', () => {
    // 16,384 columns, of which XFD is the last: ECMA-376, part 1, 18.3.1.73, from memory.
    expect([0, 25, 26, 51, 701, 702, 16383].map(columnLetters)).toEqual(['A', 'Z', 'AA', 'AZ', 'ZZ', 'AAA', 'XFD']);
  });

  it('count rows from 1', () => {
    expect(cellAddress(4, 5)).toBe('F5');
  });

  it('put a sheet’s name in quotes where it is not plain', () => {
    expect(['Lasts', 'Bottom stock', "Maker's", '2027', 'AB12', 'R1C1', 'C', 'Größen'].map(sheetInFormula)).toEqual([
      'Lasts',
      "'Bottom stock'",
      "'Maker''s'",
      "'2027'",
      "'AB12'",
      "'R1C1'",
      "'C'",
      "'Größen'",
    ]);
  });

  it('fix a reference to an area', () => {
    expect(fixedReference('Lasts', { row: 2, column: 0, rows: 38, columns: 14 })).toBe('Lasts!$A$3:$N$40');
  });
});
