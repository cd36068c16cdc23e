import { beforeAll, describe, expect, it } from 'vitest';
import { type FunctionsBundle, loadFunctions } from '../../../src/cli/functions-bundle';
import { workOut } from '../../../src/cli/headless-grid';
import type { Book, BookCell, BookSheet } from '../../../src/exchange/xlsx/book';
import { bookOfGrid } from '../../../src/host/grid/book-of-grid';
import { gridOfBook } from '../../../src/host/grid/grid-of-book';
import { keptInWords, withKeptValues } from '../../../src/host/grid/kept-values';

/** Formulas of which the grid knows a part only, with what an office suite worked out for them (made up). */
const FOREIGN: readonly (readonly [formula: string, value: string | number | boolean])[] = [
  ['=_xldudf_OTHER_PRICE(3)', 99.5],
  ['=IFERROR(MyUdf(2),0)', 7],
  ['=GETPIVOTDATA("Sum",$A$1)', 12],
  ['=CUBEVALUE("a","b")', -1.5e-7],
  ['=WEBSERVICE("http://example.org")', 'a "word", (and) more'],
  ['=FORECAST.ETS(4,A1:A3,A1:A3)', 4],
  ['=SUM(Mine:Two!A1)', 11],
  ['=[1]Sheet1!$A$1*2', 27.2],
  ["='[Prices.xlsx]Sheet1'!$A$1", 13.6],
  ["='C:\\shop, (old)\\[Prices.xlsx]Sheet1'!$A$1", true],
  ['=[1]!Price', 5],
  ['=Linked+1', 14.6],
  ['=Gone[Price]', 3],
  ['=_xlfn.TOMORROW(A1)', 'x'],
];
const KNOWN = [
  '=SUM(A1:A3)',
  '=Two!A1+Own',
  '=LET(a,1,a+1)',
  '=MAP(A1:A3,LAMBDA(x,x*2))',
  "=SUM('Two'!A:A)",
  '=SOLEBENCH.LAYERS(45,6)',
  '=IF(TRUE,1,A1)',
  '="[1]Sheet1!A1"&A1',
];

const sheet = (name: string, cells: readonly BookCell[]): BookSheet => ({
  name,
  cells,
  columns: [],
  rows: new Map(),
  frozen: { rows: 0, columns: 0 },
  gridLines: true,
  merged: [],
  rules: [],
  comments: [],
  kept: {},
});
const book: Book = {
  sheets: [
    sheet('Mine', [
      ...FOREIGN.flatMap(([formula, value], row): BookCell[] => [
        { row, column: 1, formula, value },
        { row, column: 2, formula: `=B${row + 1}&"!"`, value: 'old' },
      ]),
      { row: 20, column: 1, formula: '=_xlfn.TOMORROWS(A1)', value: 1, spill: { rows: 2, columns: 2 } },
      { row: 20, column: 2, value: 'b', spilled: true },
      { row: 21, column: 1, value: false, spilled: true },
      { row: 21, column: 2, value: 4, spilled: true },
    ]),
    sheet('Two', [{ row: 0, column: 0, value: 10 }]),
  ],
  names: [
    { name: 'Linked', meaning: '[1]Sheet1!$A$1' },
    { name: 'Own', meaning: 'Two!$A$1' },
  ],
  properties: {},
};

let functions: FunctionsBundle;
beforeAll(() => {
  functions = loadFunctions('dist');
});

describe('a formula that the grid cannot work out', () => {
  it('keeps its value through the grid, what hangs on it goes on with that, and it is saved as it came', async () => {
    const { workbook } = await workOut(gridOfBook(book, 'Foreign', 'workbook'), functions);
    const cells = bookOfGrid(workbook).sheets[0]?.cells ?? [];
    const at = (row: number, column: number) => cells.find((cell) => cell.row === row && cell.column === column);
    FOREIGN.forEach(([formula, value], row) => {
      expect(at(row, 1), formula).toMatchObject({ formula, value });
      const shown = typeof value === 'boolean' ? 'TRUE!' : `${value}!`;
      expect(at(row, 2)?.value, formula).toBe(shown);
    });
    expect(at(20, 1)).toMatchObject({ formula: '=_xlfn.TOMORROWS(A1)', value: 1, spill: { rows: 2, columns: 2 } });
    expect([at(20, 2), at(21, 1), at(21, 2)].map((cell) => cell?.value)).toEqual(['b', false, 4]);
  }, 120_000);

  it('is told of', () => {
    const said = keptInWords(book).join();
    expect(said).toContain('Mine!B1, Mine!B2');
    expect(said).toContain(`and ${FOREIGN.length + 1 - 8} more`);
  });

  it('is told apart from those that it can', () => {
    const known = sheet(
      'Two',
      KNOWN.map((formula, row) => ({ row, column: 0, formula, value: 1 })),
    );
    const all = { ...book, sheets: [known] };
    expect(withKeptValues(all)).toEqual(all);
    expect(keptInWords(all)).toEqual([]);
  });
});
