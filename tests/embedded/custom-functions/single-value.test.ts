import { beforeAll, expect, it } from 'vitest';
import { type FunctionsBundle, loadFunctions } from '../../../src/cli/functions-bundle';
import { workOut } from '../../../src/cli/headless-grid';
import type { Book, BookValue } from '../../../src/exchange/xlsx/book';
import { bookOfGrid } from '../../../src/host/grid/book-of-grid';
import { gridOfBook } from '../../../src/host/grid/grid-of-book';

/** In rows 1 and on, beside 10, 20, 30 … in column A: "Implicit intersection operator: @", the office suite's maker. */
const EXPECTED: readonly (readonly [formula: string, value: BookValue])[] = [
  ['=@A1:A9', 10],
  ['=SINGLE(A1:A9)', 20],
  ['=@SEQUENCE(3,2,7)', 7],
  ['=SINGLE(SEQUENCE(3,2,7))', 7],
  ['=@SUM(A1:A2)', 30],
  ['=@A7+SINGLE(A7)', 140],
  ['=@SOLEBENCH.LAYERS(45,6)=INDEX(SOLEBENCH.LAYERS(45,6),1,1)', true],
  ['=SINGLE(SOLEBENCH.LAYERS(45,6))=INDEX(SOLEBENCH.LAYERS(45,6),1,1)', true],
  ['=SINGLE(A1:B2)', { fault: '#VALUE!' }],
  ['=SINGLE(1/0)', { fault: '#DIV/0!' }],
];

let functions: FunctionsBundle;
beforeAll(() => {
  functions = loadFunctions('dist');
});

it('@ and SINGLE take one value of many', async () => {
  const cells = EXPECTED.flatMap(([formula], row) => [
    { row, column: 0, value: 10 * (row + 1) },
    { row, column: 3, formula },
  ]);
  const sheet = { name: 'One', columns: [], rows: new Map(), frozen: { rows: 0, columns: 0 }, gridLines: true };
  const book: Book = {
    sheets: [{ ...sheet, cells, merged: [], rules: [], comments: [], kept: {} }],
    names: [],
    properties: {},
  };
  const { workbook } = await workOut(gridOfBook(book, 'Own', 'workbook'), functions);
  const worked = bookOfGrid(workbook).sheets[0]?.cells.filter(({ column }) => column === 3);
  expect(worked?.map(({ formula, value }) => [formula, value])).toEqual(EXPECTED);
}, 120_000);
