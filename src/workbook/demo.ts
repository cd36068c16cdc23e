import type { WorkbookPlan } from './workbook';

/** The invented workshop's run. */
export const demo: WorkbookPlan = {
  name: 'Midsummer run',
  sheets: [
    {
      name: 'Run',
      kind: 'run',
      cells: [
        { row: 0, column: 0, role: 'title', value: 'Midsummer run' },
        { row: 1, column: 0, role: 'note', value: 'An invented workshop' },
        { row: 2, column: 0, role: 'heading', value: 'Height\nmm', align: 'right' },
        { row: 2, column: 1, role: 'heading', value: 'Thick\nmm', align: 'right' },
        { row: 3, column: 0, role: 'input', value: 40, format: '0.0' },
        { row: 3, column: 1, role: 'input', value: 7, format: '0.0' },
        { row: 3, column: 2, role: 'result', formula: '=SOLEBENCH.LAYERS(A4,B4)', format: '0' },
      ],
      tables: [],
      results: [],
      lists: [],
      widths: [118, 118, 118],
      heights: { 0: 36, 2: 38 },
      frozen: { rows: 2, columns: 0 },
    },
  ],
};
