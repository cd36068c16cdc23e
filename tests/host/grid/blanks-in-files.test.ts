import { describe, expect, it } from 'vitest';
import { readBook } from '../../../src/exchange/xlsx/read';
import { writeBook } from '../../../src/exchange/xlsx/write';
import { bookOfGrid } from '../../../src/host/grid/book-of-grid';
import { tableNamed, withBlanksApart, withoutBlanksApart } from '../../../src/host/grid/blanks-in-files';
import { gridOfBook } from '../../../src/host/grid/grid-of-book';
import { snapshotOf } from '../../../src/host/grid/snapshot';
import type { Book } from '../../../src/exchange/xlsx/book';
import { demo } from '../../../src/workbook/demo';

const formulasOf = ({ sheets }: Book) =>
  sheets.flatMap(({ cells }) => cells.flatMap(({ formula }) => (formula?.startsWith('=SOLEBENCH.') ? [formula] : [])));

describe('blank cells in a workbook file', () => {
  const snapshot = snapshotOf(demo, 'workbook');
  const book = bookOfGrid(snapshot);

  it('are parted from 0 by the formulas of ours, where 0 is an answer of its own', () => {
    const [summary] = formulasOf(book);
    expect(summary).toMatch(/^=SOLEBENCH\.SUMMARY\(Run!\$A\$7:[^,]+,IF\(Styles!(\S+?)="","",Styles!\1\),IF\(Lasts!/);
    expect(summary).toMatch(/,Offcuts![^,]+,IF\(Offers!/);
    expect(formulasOf(book).every((formula) => formula.match(/IF\(/g)?.length === 7)).toBe(true);
  });

  it('are as the grid has them when the file is opened again', () => {
    const after = gridOfBook(readBook(writeBook(book)).book, 'demo', 'workbook');
    expect(JSON.stringify(after.sheets)).not.toContain('IF(Styles');
    expect(formulasOf(bookOfGrid(after))).toEqual(formulasOf(book));
  });

  it('are left alone in formulas of the maker’s own', () => {
    const { meaning } = book.names.find((name) => tableNamed(name) === 'Lasts')!;
    const [sheet] = book.sheets;
    const formulas = [
      `=ROWS(${meaning})`,
      `=SOLEBENCH.GRADE(84,38,INDEX(${meaning},2,3),1)`,
      `=SOLEBENCH.PROFILE("A, B", ${meaning} )`,
    ];
    const own: Book = {
      ...book,
      sheets: [{ ...sheet!, cells: formulas.map((formula, row) => ({ row, column: 0, formula })) }],
    };
    const changed = withBlanksApart(own);
    const found = changed.sheets[0]!.cells.map(({ formula }) => formula);
    expect(found).toEqual([formulas[0], formulas[1], `=SOLEBENCH.PROFILE("A, B", IF(${meaning}="","",${meaning}) )`]);
    expect(withoutBlanksApart(changed)).toEqual(own);
    expect(withoutBlanksApart(own)).toEqual(own);
  });
});
