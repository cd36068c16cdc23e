import type { WorkbookPlan } from '../../../src/workbook/workbook';

/** A workbook for tests: an input table, a table that spills from it, lists, and cells of the maker's own. */
export const plan: WorkbookPlan = {
  name: 'Test run',
  sheets: [
    {
      name: 'Run',
      kind: 'run',
      cells: [
        { row: 0, column: 0, role: 'title', value: 'Test run' },
        { row: 1, column: 0, role: 'note', value: 'An invented workshop.' },
        { row: 3, column: 0, role: 'heading', value: 'Height\nmm', align: 'right' },
        { row: 3, column: 1, role: 'heading', value: 'Thick\nmm', align: 'right' },
        { row: 3, column: 2, role: 'heading', value: 'Layers\nnumber', align: 'right' },
        { row: 4, column: 0, role: 'input', value: 40, format: '0.0' },
        { row: 4, column: 1, role: 'input', value: 7, format: '0.0' },
        { row: 4, column: 2, role: 'result', formula: '=SOLEBENCH.LAYERS(A5,B5)', format: '0' },
        { row: 6, column: 0, role: 'caption', value: 'Squares' },
        { row: 7, column: 0, role: 'result', formula: '=SOLEBENCH.TESTTABLE(A3)' },
        { row: 2, column: 0, role: 'input', value: 4, format: '0' },
        { row: 2, column: 1, role: 'total', formula: '=SUM({Lots of stock})', format: '0.0' },
        { row: 2, column: 3, role: 'result', formula: '=SUM(B9:B30)', format: '0' },
      ],
      tables: [],
      results: [
        {
          area: { row: 7, column: 0, rows: 20, columns: 2 },
          columns: [
            { format: '0', align: 'right' },
            { format: '0.0', align: 'right' },
          ],
          total: true,
        },
      ],
      lists: [],
      widths: [118, 118, 118],
      heights: { 0: 36, 3: 38 },
      frozen: { rows: 2, columns: 0 },
    },
    {
      name: 'Lots of stock',
      kind: 'inputs',
      cells: [
        { row: 0, column: 0, role: 'title', value: 'Lots of stock' },
        { row: 1, column: 0, role: 'note', value: 'What lies on the shelf.' },
        { row: 2, column: 0, role: 'heading', value: 'On hand', align: 'right' },
        { row: 2, column: 1, role: 'heading', value: 'Least\nsheets', align: 'right' },
        ...Array.from({ length: 5 }, (_, row) => [
          { row: 3 + row, column: 0, role: 'input' as const, format: '0', ...(row < 2 && { value: 10 * (row + 1) }) },
          { row: 3 + row, column: 1, role: 'input' as const, format: '0.0' },
        ]).flat(),
      ],
      tables: [{ name: 'Lots of stock', area: { row: 2, column: 0, rows: 6, columns: 2 } }],
      results: [],
      lists: [{ area: { row: 3, column: 1, rows: 5, columns: 1 }, choices: ['1', '2', '3'] }],
      widths: [130, 70],
      heights: { 0: 36, 2: 38 },
      frozen: { rows: 3, columns: 1 },
    },
  ],
};
