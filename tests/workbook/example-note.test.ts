import { parse, tokenize } from '@borgar/fx';
import { describe, expect, it } from 'vitest';
import { blank } from '../../src/workbook/blank';
import { whileExamples } from '../../src/workbook/example-note';
import type { CellPlan, SheetPlan } from '../../src/workbook/workbook';

const cell = (row: number, column: number, value: string | number, role: CellPlan['role'] = 'example'): CellPlan => ({
  row,
  column,
  value,
  role,
});
const sheet = (cells: readonly CellPlan[], name = 'Lasts'): SheetPlan => ({
  name,
  kind: 'inputs',
  cells,
  tables: [{ name, area: { row: 2, column: 1, rows: 4, columns: 5 } }],
  results: [],
  lists: [],
  widths: [],
  heights: {},
  frozen: { rows: 0, columns: 0 },
});
const said = { some: 'Grey rows in', always: 'Key' };
const saying = (names: string) =>
  `=SUBSTITUTE(SUBSTITUTE("Grey rows in"&${names}&". Key","Grey rows in. ",""),",. ",". ")`;

describe('a sentence about example rows', () => {
  it('asks for each of them in its table, wherever it stands there by now', () => {
    const headings = ['Last', 'Length'].map((value, at) => cell(2, 1 + at, value, 'heading'));
    const rows = [cell(3, 1, 'Last "45"'), cell(3, 2, 255), cell(4, 1, 'Last *?~'), cell(4, 2, 0)];
    expect(whileExamples([sheet([...headings, ...rows, cell(3, 0, 'a note', 'note')])], said)).toBe(
      saying(
        'IF(COUNTIFS(INDEX({Lasts},0,1),"Last ""45""",INDEX({Lasts},0,2),255)' +
          '+COUNTIFS(INDEX({Lasts},0,1),"Last ~*~?~~",INDEX({Lasts},0,2),0)>0," Lasts,","")',
      ),
    );
  });

  it('leaves sizes and what stands behind them out, whose columns come and go', () => {
    const headings = [cell(2, 1, 'Style', 'heading'), cell(2, 2, 38, 'heading'), cell(2, 3, 'Note', 'heading')];
    const rows = [cell(3, 1, 'Example'), cell(3, 2, 2), cell(3, 3, 'x')];
    expect(whileExamples([sheet([...headings, ...rows])], said)).toBe(
      saying('IF(COUNTIFS(INDEX({Lasts},0,1),"Example")>0," Lasts,","")'),
    );
  });

  it('asks for two rows of what things cost, of which one may be the maker’s by chance', () => {
    const headings = ['Item', 'Value'].map((value, at) => cell(2, 1 + at, value, 'heading'));
    const rows = [cell(3, 1, 'Work'), cell(3, 2, 30), cell(4, 1, 'Adhesive'), cell(4, 2, 3.5)];
    const own = sheet([...headings, ...rows]);
    const costs = { ...own, tables: own.tables.map((one) => ({ ...one, name: 'Costs and times' })) };
    const count = (item: string, value: number) =>
      `COUNTIFS(INDEX({Costs and times},0,1),"${item}",INDEX({Costs and times},0,2),${value})`;
    expect(whileExamples([costs], said)).toBe(
      saying(`IF(${count('Work', 30)}+${count('Adhesive', 3.5)}>1," Costs and times,","")`),
    );
  });

  it('is the other one where there are none', () => {
    expect(whileExamples([sheet([cell(3, 1, 'Own', 'input')])], said)).toBe('="Key"');
  });

  it('is a formula that the suite takes, and asks for every row of the blank tables', () => {
    const formula = blank.sheets[0]!.cells.find(({ row, role }) => row === 1 && role === 'note')!.formula!;
    expect(parse(tokenize(formula.replace(/\{([^}]+)\}/g, 'A1:B2')))).toBeTruthy();
    // A row of Pairage, of Styles and of Lasts, four of stock and four of costs.
    expect(formula.match(/COUNTIFS\(/g)).toHaveLength(11);
    expect(formula).toContain('"Grey rows are examples');
    // The most letters that a cell of the suite takes, with room for references.
    expect(formula.length + 40 * formula.split('{').length).toBeLessThan(8192);
  });
});
