import { itemAt } from '../core/item-at';
import { lastsTable } from '../tables/lasts';
import { layoutsTable } from '../tables/layouts';
import { offcutsTable } from '../tables/offcuts';
import { offersTable } from '../tables/offers';
import { outlinesTable } from '../tables/outlines';
import { pairageTable } from '../tables/pairage';
import { ratesTable } from '../tables/rates';
import { headingOf, type ResultTable } from '../tables/result';
import { batchesTable } from '../tables/results/batches';
import { checksTable } from '../tables/results/checks';
import { costTable } from '../tables/results/cost';
import { cuttingTable } from '../tables/results/cutting';
import { orderTable } from '../tables/results/order';
import { piecesTable } from '../tables/results/pieces';
import { summaryTable } from '../tables/results/summary';
import { ticketTable } from '../tables/results/ticket';
import type { Column, Table } from '../tables/schema';
import { stockTable } from '../tables/stock';
import { stylesTable } from '../tables/styles';
import {
  type Block,
  type Codes,
  headingHeight,
  inputBlock,
  type InputOptions,
  resultBlock,
  type Rows,
  titleWidth,
  widthFor,
} from './blocks';
import { whileExamples } from './example-note';
import type { CellPlan, SheetPlan, WorkbookPlan } from './workbook';

/** What fills the tables of a planning workbook. */
export interface Contents {
  readonly name: string;
  /** One sentence under the title of the run; of examples without its end, the names of the tables that have some left. */
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
  readonly offers?: Rows;
  /** The style whose ticket is shown. */
  readonly ticket: { readonly style?: string; readonly size?: number };
  /** Rows are greyed examples. */
  readonly examples?: boolean;
}

const PLAN = '{Pairage},{Styles},{Lasts},{Bottom stock},{Costs and times},{Outlines},{Layouts}';
const KEY = '□ yours to fill in   ■ worked out';
/** Blank where the functions are at work. A workbook goes to people and programs that do not have them. */
const NOT_AT_WORK =
  '=IF(ISERROR(SOLEBENCH.UNIT(1,"mm","mm")),"Nothing can be worked out here: the Solebench add-in is not at work in this program. Add it, or open this file on Solebench’s page.","")';
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
  const sheets = [
    runSheet(contents, styles),
    one(stylesTable, contents.styles, { lists: { ...stockLists, last: lasts } }),
    one(lastsTable, contents.lasts, { sizes: contents.lastSizes }),
    one(stockTable, contents.stock),
    one(ratesTable, contents.rates),
    one(outlinesTable, contents.outlines, { spare: 20 }),
    one(offcutsTable, contents.offcuts, { lists: { stock } }),
    one(offersTable, contents.offers ?? [], { lists: { stock } }),
    one(layoutsTable, [], { spare: 20 }),
    resultSheet(checksTable, `=SOLEBENCH.CHECKS(${PLAN},{Offcuts},{Offers})`, 500),
    resultSheet(costTable, `=SOLEBENCH.COST(${PLAN},{Offcuts},{Offers})`, 300),
    resultSheet(piecesTable(), `=SOLEBENCH.PIECES(${PLAN},{Offcuts},{Offers})`, 3000),
    resultSheet(cuttingTable, `=SOLEBENCH.CUTTING(${PLAN},{Offcuts},{Offers})`, 200),
    resultSheet(batchesTable, `=SOLEBENCH.BATCHES(${PLAN},{Offcuts},{Offers})`, 500),
    ticketSheet(contents, styles),
  ];
  return { name: contents.name, sheets: contents.examples ? withNote(sheets, contents.note) : sheets };
}

/** The sentence of the run goes with its last example. */
function withNote(sheets: readonly SheetPlan[], note: string): readonly SheetPlan[] {
  const formula = whileExamples(sheets, { some: note, always: KEY });
  const isNote = ({ row, role }: CellPlan) => row === 1 && role === 'note';
  return sheets.map((sheet, at) =>
    at > 0
      ? sheet
      : {
          ...sheet,
          cells: sheet.cells.map((cell) => (isNote(cell) ? { row: 1, column: 0, role: 'note', formula } : cell)),
        },
  );
}

/** Widths of the stacked tables' shared columns, px. */
const RUN_WIDTHS: readonly number[] = [112, 118, 84, 62, 84, 76, 58, 66, 58, 74, 78, 84, 84, 84];
/** Columns beside it into which the next step runs on: it is the summary's last. */
const NEXT_STEP_OVER = 5;
/** And those beside the order into which run on what a stock is for. */
const FOR_OVER = 2;
/** Sizes that the maker may add beside the sum: they are planned, and told of. */
const ASIDE = 6;

function runSheet(contents: Contents, styles: Codes): SheetPlan {
  const { name, note, sizes, money, examples = false } = contents;
  const heights: Record<number, number> = { 0: 36 };
  // The summary is always as large as it is now: the only table that others stand below.
  const line = resultBlock(summaryTable(), `=SOLEBENCH.SUMMARY(${PLAN},{Offcuts},{Offers})`, 2, 2, NEXT_STEP_OVER);
  heights[2] = headingHeight(headingsOf(summaryTable()), RUN_WIDTHS);
  heights[4] = 18;
  const pairageAt = 6;
  const pairage = inputBlock(pairageTable, contents.pairage, pairageAt, {
    columns: ['style', 'customer', 'due', 'total', 'cut', 'stockCut'],
    sizes,
    // Rows for a first run; the demo's are the maker's to add to.
    spare: examples ? 11 : 2,
    // What is typed right below the sums is read too, and told of.
    beyond: 1,
    aside: ASIDE,
    summed: true,
    money,
    lists: { style: styles },
    examples,
  });
  heights[pairageAt] = headingHeight(['Style'], RUN_WIDTHS);
  const gap = pairageAt + pairage.rows;
  heights[gap] = 18;
  const orderAt = gap + 2;
  heights[orderAt] = headingHeight(headingsOf(orderTable), RUN_WIDTHS);
  // Last, since nobody knows how many sheets there will be.
  const order = resultBlock(orderTable, `=SOLEBENCH.ORDER(${PLAN},{Offcuts},{Offers})`, orderAt, 300, FOR_OVER);
  return {
    name: 'Run',
    kind: 'run',
    ...merged(
      [line, pairage, order],
      [
        ...head(name, `${note} ${KEY}`),
        { row: 4, column: 0, role: 'note', formula: NOT_AT_WORK },
        { row: pairageAt - 1, column: 0, role: 'caption', value: pairageTable.name },
        { row: orderAt - 1, column: 0, role: 'caption', value: orderTable.name },
      ],
    ),
    widths: RUN_WIDTHS,
    heights,
    // The name of the style stays beside its sizes and sums.
    frozen: { rows: 2, columns: 1 },
  };
}

function inputSheet(table: Table, rows: Rows, options: InputOptions): SheetPlan {
  const block = inputBlock(table, rows, 2, options);
  const columns = options.columns.map((name) => table.columns[name] as Column);
  const headings = [...columns.map((column) => headingOf(column)), ...(options.sizes ?? []).map(String)];
  // The first column stays in sight, and what of the title ran over it would go out of it with the others.
  const least = (i: number) => (i === 0 ? titleWidth(table.name) : 0);
  const widths = headings.map((heading, i) => Math.max(least(i), widthFor(heading, columns[i]?.width ?? 44)));
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

const STYLES_OF_RUN = 'INDEX({Pairage},0,1)';
const FIRST_STYLE = '=IF(INDEX({Pairage},2,1)="","",INDEX({Pairage},2,1))';
const NOT_IN_RUN = `=IF(COUNTIF(${STYLES_OF_RUN},A4)>0,"","This style is not in the run: choose one that has pairs in Pairage.")`;

function ticketSheet({ ticket, sizes }: Contents, styles: Codes): SheetPlan {
  const table = ticketTable();
  const inputs: Block = {
    cells: [
      { row: 2, column: 0, role: 'heading', value: 'Style' },
      { row: 2, column: 1, role: 'heading', value: 'Size' },
      // The first style of the run, until another is chosen.
      {
        row: 3,
        column: 0,
        role: 'input',
        ...(ticket.style === undefined ? { formula: FIRST_STYLE } : { value: ticket.style }),
      },
      { row: 3, column: 1, role: 'input', align: 'left', ...(ticket.size !== undefined && { value: ticket.size }) },
      { row: 3, column: 2, role: 'note', formula: NOT_IN_RUN },
    ],
    lists: [
      { area: { row: 3, column: 0, rows: 1, columns: 1 }, choices: styles.codes, codesOf: styles.of },
      { area: { row: 3, column: 1, rows: 1, columns: 1 }, choices: sizes.map(String) },
    ],
    rows: 2,
  };
  return {
    name: table.name,
    kind: 'results',
    ...merged(
      [inputs, resultBlock(table, `=SOLEBENCH.TICKET(A4,${PLAN},B4,{Offcuts},{Offers})`, 5, 500)],
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
  const widths = table.columns.map(({ width }, i) => widthFor(itemAt(headings, i), width));
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
