import { describe, expect, it } from 'vitest';
import { openWorkbook } from '../../src/exchange/open-workbook';
import { valuesOnly } from '../../src/exchange/xlsx/values-only';
import { writeBook } from '../../src/exchange/xlsx/write';
import { schemaProperty, schemaVersion } from '../../src/workbook/schema-version';
import { sampleBook } from './xlsx/sample-book';

describe('openWorkbook', () => {
  it('gives functions their names of today, and says so', () => {
    const [first, ...others] = sampleBook.sheets;
    const cells = [{ row: 0, column: 0, formula: '=SOLEBENCH.ROUNDS(A2:B3,"SOLEBENCH.ROUNDS(")' }];
    const former = { ...sampleBook, sheets: [{ ...first!, cells }, ...others] };
    const { book, changed } = openWorkbook(writeBook(former));
    expect(book.sheets[0]?.cells[0]?.formula).toBe('=SOLEBENCH.BATCHES(A2:B3,"SOLEBENCH.ROUNDS(")');
    expect(changed).toEqual(['1 formula calls a function by its former name; it is today’s now.']);
    expect(openWorkbook(writeBook(sampleBook)).changed).toEqual([]);
  });

  it('refuses a file of a newer version, and says what to do', () => {
    const properties = { [schemaProperty]: String(schemaVersion + 1) };
    expect(() => openWorkbook(writeBook({ ...sampleBook, properties }))).toThrow(/newer Solebench.*update/);
  });

  it('says of a copy of values that nothing in it is worked out', () => {
    const properties = { [schemaProperty]: String(schemaVersion) };
    const planned = {
      ...sampleBook,
      properties,
      sheets: sampleBook.sheets.map((sheet) => ({
        ...sheet,
        cells: [...sheet.cells, { row: 90, column: 0, formula: '=SOLEBENCH.UNIT(1,"in","mm")', value: 25.4 }],
      })),
    };
    expect(openWorkbook(writeBook(planned)).changed).toEqual([]);
    expect(openWorkbook(writeBook(valuesOnly(planned))).changed).toEqual([
      expect.stringContaining('a copy of values only'),
    ]);
  });

  it('opens files that say nothing of a version', () => {
    expect(openWorkbook(writeBook({ ...sampleBook, properties: {} })).book.sheets).toHaveLength(2);
  });
});
