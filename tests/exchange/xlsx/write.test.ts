import { readXlsx } from 'hucre';
import { describe, expect, it } from 'vitest';
import * as SheetJS from 'xlsx';
import { readBook } from '../../../src/exchange/xlsx/read';
import { storedFormula } from '../../../src/exchange/xlsx/stored-formula';
import { valuesOnly } from '../../../src/exchange/xlsx/values-only';
import { writeBook } from '../../../src/exchange/xlsx/write';
import { bookOfGrid } from '../../../src/host/grid/book-of-grid';
import { snapshotOf } from '../../../src/host/grid/snapshot';
import { demo } from '../../../src/workbook/demo';
import { sampleBook } from './sample-book';

const bytes = writeBook(sampleBook);

describe('writeBook and readBook', () => {
  it('are each other’s reverse', () => {
    const { book, left } = readBook(bytes);
    expect(left).toEqual([]);
    expect(book.properties).toEqual(sampleBook.properties);
    expect(book.names).toEqual(sampleBook.names);
    expect(book.conditionalLooks).toBe(sampleBook.conditionalLooks);
    book.sheets.forEach((sheet, at) => {
      const { cells, ...rest } = sampleBook.sheets[at]!;
      expect(sheet.cells.map(({ look: _look, ...cell }) => cell)).toEqual(
        cells.map(({ look: _look, ...cell }) => cell),
      );
      expect(sheet).toMatchObject({ ...rest, cells: cells.map(({ look }) => (look ? { look } : {})) });
    });
  });

  it('give the same bytes for the same workbook', () => {
    expect(writeBook(sampleBook)).toEqual(bytes);
    expect(writeBook(readBook(bytes).book)).toEqual(writeBook(readBook(writeBook(readBook(bytes).book)).book));
  });

  it('keep no formula in a copy with values only', () => {
    const { book } = readBook(writeBook(valuesOnly(sampleBook)));
    expect(book.sheets.flatMap(({ cells }) => cells).filter(({ formula, spill }) => formula ?? spill)).toEqual([]);
    expect(book.names.map(({ name }) => name)).toEqual(['LiftsTable', 'Own']);
    expect(book.sheets[0]?.cells.find(({ row, column }) => row === 2 && column === 2)?.value).toBe(7);
  });
});

describe('another reader finds in the file', () => {
  it('formulas, spilled tables as true dynamic arrays, names and panes (hucre)', async () => {
    const { sheets, namedRanges } = await readXlsx(bytes);
    const cells = sheets[0]?.cells;
    expect(cells?.get('4,0')).toMatchObject({
      formula: '_xldudf_SOLEBENCH_LAYERMIX(45,A2:B2)',
      formulaType: 'array',
      formulaRef: 'A5:B6',
      formulaDynamic: true,
      value: 'Thickness',
    });
    expect(cells?.get('2,2')).toMatchObject({ formulaRef: 'C3', formulaDynamic: true, formulaResult: 7 });
    expect(cells?.get('2,0')).toMatchObject({ formula: 'SUM(A2:B2)' });
    expect(cells?.get('2,0')?.formulaDynamic).toBeFalsy();
    expect(sheets[0]?.freezePane).toEqual({ rows: 1, columns: 1 });
    expect(sheets[0]?.merges).toHaveLength(1);
    expect(namedRanges?.map(({ name }) => name)).toEqual(['LiftsTable', 'Twice', 'Own']);
  });

  it('values, comments, widths and hidden sheets (SheetJS)', () => {
    const book = SheetJS.read(bytes, { cellStyles: true, cellFormula: true });
    const sheet = book.Sheets['Lifts & "more"']!;
    expect(sheet['A1'].v).toBe('Thickness\nmm');
    expect(sheet['A2'].v).toBe(6.5);
    expect(sheet['B2'].v).toBe(-1e-9);
    expect([sheet['C1'].v, sheet['D1'].v]).toEqual([true, false]);
    expect(sheet['C2'].w).toBe('#N/A');
    expect(sheet['AB10'].v).toBe('far');
    expect(sheet['A5'].F).toBe('A5:B6');
    expect(sheet['A5'].D).toBe(true);
    expect(sheet['A2'].c[0].t).toContain('Measured\ntwice <here>');
    // 7 px a digit and 5 px at the sides (ECMA-376 part 1, 18.3.1.13).
    expect(sheet['!cols']?.[0]?.width).toBeCloseTo((118 - 5) / 7, 0);
    expect(sheet['!merges']).toEqual([{ s: { r: 7, c: 0 }, e: { r: 8, c: 2 } }]);
    expect(book.Workbook?.Sheets?.map(({ Hidden }) => Hidden)).toEqual([0, 1]);
  });

  it('every value and formula of the demo (hucre)', async () => {
    const written = bookOfGrid(snapshotOf(demo, 'workbook'));
    const { sheets } = await readXlsx(writeBook(written));
    let count = 0;
    written.sheets.forEach(({ name, cells }, at) => {
      for (const { row, column, value, formula } of cells) {
        const where = `${name} ${row} ${column}`;
        const cell = sheets[at]?.cells?.get(`${row},${column}`);
        if (formula !== undefined) expect(cell?.formula, where).toBe(storedFormula(formula));
        else if (value !== undefined && value !== '') expect(plain(sheets[at]?.rows[row]?.[column]), where).toBe(value);
        else continue;
        count++;
      }
    });
    expect(count).toBeGreaterThan(1_000);
  });
});

/** The other reader gives days as dates. */
function plain(value: unknown): unknown {
  return value instanceof Date ? value.getTime() / 86_400_000 + 25_569 : value;
}
