import { describe, expect, it } from 'vitest';
import { readBook } from '../../../src/exchange/xlsx/read';
import { writeBook } from '../../../src/exchange/xlsx/write';
import { bookOfGrid } from '../../../src/host/grid/book-of-grid';
import { mergedInWords } from '../../../src/host/grid/merged-in-tables';
import { snapshotOf } from '../../../src/host/grid/snapshot';
import { blank } from '../../../src/workbook/blank';
import type { Area } from '../../../src/workbook/workbook';

describe('cells that a file has merged in a table', () => {
  const book = bookOfGrid(snapshotOf(blank, 'workbook'));
  const [row, column] = [5, 0];
  const merged = (sheet: string, ...areas: readonly Area[]) =>
    readBook(
      writeBook({
        ...book,
        sheets: book.sheets.map((one) => (one.name === sheet ? { ...one, merged: areas } : one)),
      }),
    ).book;

  it('are told with the row in which their content counts', () => {
    expect(mergedInWords(merged('Bottom stock', { row, column, rows: 3, columns: 1 }))).toEqual([
      'Bottom stock, A6:A8: one merged cell over several rows, which are read as blank here but for row 6; unmerge it and fill each row.',
    ]);
  });

  it('are not told beside a table, in its title, and within a row', () => {
    expect(mergedInWords(merged('Lasts'))).toEqual([]);
    const harmless = [
      { row: 0, column, rows: 2, columns: 3 },
      { row, column, rows: 1, columns: 2 },
      { row, column: 60, rows: 3, columns: 1 },
    ];
    expect(mergedInWords(merged('Lasts', ...harmless))).toEqual([]);
  });

  it('are counted where they are many', () => {
    const areas = Array.from({ length: 7 }, (_, at) => ({ row, column: at, rows: 2, columns: 1 }));
    const said = mergedInWords(merged('Styles', ...areas));
    expect(said).toHaveLength(6);
    expect(said.at(-1)).toBe('And 2 more merged cells in tables.');
  });
});
