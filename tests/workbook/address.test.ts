import { describe, expect, it } from 'vitest';
import { fixedReference, sheetInFormula } from '../../src/workbook/address';

describe('addresses', () => {
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
