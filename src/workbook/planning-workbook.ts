import {
  checksTable,
  costTable,
  cuttingTable,
  orderTable,
  piecesTable,
  batchesTable,
  ticketTable,
} from '../tables/results';
import { lastsTable } from '../tables/lasts';
import { layoutsTable } from '../tables/layouts';
import { offcutsTable } from '../tables/offcuts';
import { outlinesTable } from '../tables/outlines';
import { pairageTable } from '../tables/pairage';
import { ratesTable } from '../tables/rates';
import { headingOf, type ResultTable } from '../tables/result';
import type { Column, Table } from '../tables/schema';
import { stockTable } from '../tables/stock';
import { stylesTable } from '../tables/styles';
import {
  type Block,
  type Codes,
  headingHeight,
  inputBlock,
  type InputOptions,
  letter,
  resultBlock,
  type Rows,
  widthFor,
} from './blocks';
import type { CellPlan, SheetPlan, WorkbookPlan } from './workbook';

/** What fills the tables of a planning workbook. */
export interface Contents {
  readonly name: string;
  /** One sentence under the title of the run. */
  readonly note: string;
  /** Sign of the money. */
  readonly money: string;
  readonly sizes: readonly number[];
  readonly pairage: Rows;
  readonly styles: Rows;
  readonly lasts: Rows;
  /** Sizes with a column of their own in Lasts. */
  readonly lastSizes: readonly number[];
  readonly stock: Rows;
  readonly rates: Rows;
  readonly outlines: Rows;
  readonly offcuts: Rows;
  /** The style whose ticket is shown. */
  readonly ticket: { readonly style: string; readonly size?: number };
  /** Rows are greyed examples. */
  readonly examples?: boolean;
}

const PLAN = '{Pairage},{Styles},{Lasts},{Bottom stock},{Costs and times},{Outlines},{Layouts}';
const KEY = '□ yours to fill in   ■ worked out';
/** Unboxed rows that still belong to a table of its own sheet. */
const BEYOND = 200;

/** The workbook that plans a run: the same sheets for the demo and for blank tables. */
export function planningWorkbook(contents: Contents): WorkbookPlan {
  const codes = ({ name }: Table, rows: Rows): Codes => ({ of: name, codes: rows.map(({ code }) => String(code)) });
  const styles = codes(stylesTable, contents.styles);
  const lasts = codes(lastsTable, contents.lasts);
  const stock = codes(stockTable, contents.stock);
  const one = (table: Table, rows: Rows, more: Partial<InputOptions> = {}) =>
    inputSheet(table, rows, {
      columns: Object.keys(table.columns),
      spare: 6,
      beyond: BEYOND,
      money: contents.money,
      examples: contents.examples ?? false,
      ...more,
    });
  const stockLists = Object.fromEntries(
    ['insole', 'welt', 'midsole', 'sole', 'outsole', 'topPiece', 'cover'].map((column) => [column, stock]),
  );
  return {
    name: contents.name,
    sheets: [
      runSheet(contents, styles),
      one(stylesTable, contents.styles, { lists: { ...stockLists, last: lasts } }),
      one(lastsTable, contents.lasts, { sizes: contents.lastSizes }),
      one(stockTable, contents.stock),
      one(ratesTable, contents.rates),
      one(outlinesTable, contents.outlines, { spare: 20 }),
      one(offcutsTable, contents.offcuts, { lists: { stock } }),
      one(layoutsTable, [], { spare: 20 }),
      resultSheet(piecesTable(), `=SOLEBENCH.PIECES(${PLAN},{Offcuts})`, 3000),
      resultSheet(cuttingTable, `=SOLEBENCH.CUTTING(${PLAN},{Offcuts})`, 200),
      resultSheet(batchesTable, `=SOLEBENCH.BATCHES(${PLAN},{Offcuts})`, 500),
      ticketSheet(contents, styles),
    ],
  };
}

/** Widths of the stacked tables' shared columns, px. */
const RUN_WIDTHS: readonly number[] = [118, 150, 66, 70, 70, 76, 70, 70, 70, 70, 76, 84, 84, 84];

function runSheet(contents: Contents, styles: Codes): SheetPlan {
  const { name, note, sizes, money, examples = false } = contents;
  const blocks: Block[] = [];
  const heights: Record<number, number> = { 0: 36 };
  const captions: CellPlan[] = [];
  let row = 2;
  const stack = (caption: string, headings: readonly string[], make: (row: number) => Block) => {
    captions.push({ row, column: 0, role: 'caption', value: caption });
    heights[row + 1] = headingHeight(headings, RUN_WIDTHS);
    const block = make(row + 1);
    blocks.push(block);
    row += 1 + block.rows;
    heights[row] = 18;
    row += 1;
  };
  stack(pairageTable.name, ['Style'], (at) => {
    const block = inputBlock(pairageTable, contents.pairage, at, {
      columns: ['style', 'customer', 'due', 'total'],
      sizes,
      spare: 2,
      money,
      lists: { style: styles },
      examples,
    });
    // The sum over all styles stands under the table, not in it.
    const sum = at + block.rows;
    const all: CellPlan[] = ['All', '', '', ...sizes.map(() => 'sum'), 'sum'].map((what, column) => ({
      row: sum,
      column,
      role: 'total',
      ...(what === 'sum'
        ? { align: 'right', format: '0', formula: `=SUM(${letter(column)}${at + 2}:${letter(column)}${sum})` }
        : { value: what }),
    }));
    return { ...block, cells: [...block.cells, ...all], rows: block.rows + 1 };
  });
  stack(orderTable.name, headingsOf(orderTable), (at) =>
    resultBlock(orderTable, `=SOLEBENCH.ORDER(${PLAN},{Offcuts})`, at, Math.max(8, contents.stock.length + 4)),
  );
  stack(costTable.name, headingsOf(costTable), (at) =>
    resultBlock(costTable, `=SOLEBENCH.COST(${PLAN},{Offcuts})`, at, Math.max(6, contents.styles.length + 4)),
  );
  // Last, since nobody knows how many checks there will be.
  stack(checksTable.name, headingsOf(checksTable), (at) =>
    resultBlock(checksTable, `=SOLEBENCH.CHECKS(${PLAN},{Offcuts})`, at, 300),
  );
  return {
    name: 'Run',
    kind: 'run',
    ...merged(blocks, [
      { row: 0, column: 0, role: 'title', value: name },
      { row: 1, column: 0, role: 'note', value: `${note} ${KEY}` },
      ...captions,
    ]),
    widths: RUN_WIDTHS,
    heights,
    frozen: { rows: 2, columns: 0 },
  };
}

function inputSheet(table: Table, rows: Rows, options: InputOptions): SheetPlan {
  const block = inputBlock(table, rows, 2, options);
  const columns = options.columns.map((name) => table.columns[name] as Column);
  const headings = [...columns.map((column) => headingOf(column)), ...(options.sizes ?? []).map(String)];
  const widths = headings.map((heading, i) => widthFor(heading, columns[i]?.width ?? 44));
  return {
    name: table.name,
    kind: 'inputs',
    ...merged([block], head(table.name, `${table.meaning}. Columns are found by their headings, in any order.`)),
    widths,
    heights: { 0: 36, 2: headingHeight(headings, widths) },
    frozen: { rows: 3, columns: 1 },
  };
}

function resultSheet<T>(table: ResultTable<T>, formula: string, room: number): SheetPlan {
  return {
    name: table.name,
    kind: 'results',
    ...merged([resultBlock(table, formula, 2, room)], head(table.name, `${table.meaning}.`)),
    ...headed(table, 2),
    frozen: { rows: 3, columns: 1 },
  };
}

function ticketSheet({ ticket, sizes }: Contents, styles: Codes): SheetPlan {
  const table = ticketTable();
  const inputs: Block = {
    cells: [
      { row: 2, column: 0, role: 'heading', value: 'Style' },
      { row: 2, column: 2, role: 'heading', value: 'Size' },
      { row: 3, column: 0, role: 'input', value: ticket.style },
      { row: 3, column: 2, role: 'input', align: 'left', ...(ticket.size !== undefined && { value: ticket.size }) },
    ],
    lists: [
      { area: { row: 3, column: 0, rows: 1, columns: 1 }, choices: styles.codes, codesOf: styles.of },
      { area: { row: 3, column: 2, rows: 1, columns: 1 }, choices: sizes.map(String) },
    ],
    rows: 2,
  };
  return {
    name: table.name,
    kind: 'results',
    ...merged(
      [inputs, resultBlock(table, `=SOLEBENCH.TICKET(A4,${PLAN},C4,{Offcuts})`, 5, 500)],
      head(table.name, `${table.meaning}. Choose the style; leave the size blank for all sizes.`),
    ),
    ...headed(table, 5),
    frozen: { rows: 6, columns: 0 },
  };
}

/** Headings as they will stand in the cells; a sign stands in for the money. */
function headingsOf<T>(table: ResultTable<T>): readonly string[] {
  return table.columns.map((column) => headingOf(column, '€'));
}

/** Widths of a result table's columns, and the height of its headings in their row. */
function headed<T>(table: ResultTable<T>, row: number): Pick<SheetPlan, 'widths' | 'heights'> {
  const headings = headingsOf(table);
  const widths = table.columns.map(({ width }, i) => widthFor(headings[i] as string, width));
  return { widths, heights: { 0: 36, [row]: headingHeight(headings, widths) } };
}

function head(title: string, note: string): readonly CellPlan[] {
  return [
    { row: 0, column: 0, role: 'title', value: title },
    { row: 1, column: 0, role: 'note', value: note },
  ];
}

function merged(
  blocks: readonly Block[],
  more: readonly CellPlan[],
): Pick<SheetPlan, 'cells' | 'tables' | 'results' | 'lists'> {
  return {
    cells: [...more, ...blocks.flatMap(({ cells }) => cells)],
    tables: blocks.flatMap(({ tables = [] }) => tables),
    results: blocks.flatMap(({ results = [] }) => results),
    lists: blocks.flatMap(({ lists = [] }) => lists),
  };
}
