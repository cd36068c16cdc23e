import { itemAt } from '../../core/item-at';
import { greatestOf } from '../../core/numerics/extremes';
import type { Area, CellPlan, ListPlan, ResultPlan, SheetPlan } from '../../workbook/workbook';
import { columnLetters } from '../../tables/cell-address';
import { fixedReference } from '../../workbook/address';
import { colours } from '../colours';
import { withReferences } from '../formulas';
import { asTyped, formatCode } from './as-typed';
import { dress, greyWhile, looks, tintWhereFilled } from './look';
import { rectangles } from './rectangles';

/** A point is 4/3 px. */
const POINTS = 0.75;
/** The longest list of words that a cell's rule may hold; longer ones must stand in cells. */
const LONGEST_LIST = 255;

/** Where the codes of tables stand, by the table's name in the plan. */
export type CodePlaces = ReadonlyMap<string, { readonly sheet: string; readonly area: Area }>;

const rangeOf = (sheet: Excel.Worksheet, { row, column, rows, columns }: Area) =>
  sheet.getRangeByIndexes(row, column, rows, columns);

/** Everything of a sheet but its formulas, which may name tables of sheets that are yet to come. */
export function writeSheet(sheet: Excel.Worksheet, plan: SheetPlan, codes: CodePlaces): void {
  writeValues(sheet, plan.cells);
  for (const { key, areas } of rectangles(plan.cells, ({ role }) => role)) {
    for (const area of areas) dress(rangeOf(sheet, area), looks[key], area);
  }
  for (const { key, areas } of rectangles(plan.cells, ({ align }) => align)) {
    for (const area of areas) alignTo(rangeOf(sheet, area), key);
  }
  for (const { key, areas } of rectangles(plan.cells, ({ format }) => format)) {
    for (const area of areas) rangeOf(sheet, area).numberFormat = [[formatCode(key)]];
  }
  greyExamples(sheet, plan.cells);
  for (const result of plan.results) prepareResult(sheet, result);
  for (const list of plan.lists) offer(rangeOf(sheet, list.area), list, codes);
  plan.widths.forEach((width, column) => {
    sheet.getRangeByIndexes(0, column, 1, 1).format.columnWidth = width * POINTS;
  });
  for (const [row, height] of Object.entries(plan.heights)) {
    sheet.getRangeByIndexes(Number(row), 0, 1, 1).format.rowHeight = height * POINTS;
  }
  freeze(sheet, plan.frozen);
  sheet.showGridlines = false;
  // The same key as in the second row: worked out is filled, yours to fill in is blank.
  if (plan.kind === 'results') sheet.tabColor = colours.edge;
}

/** A table on a sheet: headings and boxed rows; the suite lets a table grow when more is typed below it. */
export function writeTable(sheet: Excel.Worksheet, area: Area, name: string): Excel.Table {
  const table = sheet.tables.add(rangeOf(sheet, area), true);
  table.name = name;
  table.style = 'TableStyleLight1';
  table.showBandedRows = false;
  table.showFilterButton = false;
  return table;
}

/** An area as far as it has headings and down to the last row that has cells of the plan. */
export function filledPart(area: Area, cells: readonly CellPlan[]): Area {
  const own = cells.filter(
    ({ row, column }) => row >= area.row && row < area.row + area.rows && inColumns(area, column),
  );
  const last = Math.max(area.row + 1, ...own.map(({ row }) => row));
  const right = Math.max(area.column, ...own.filter(({ row }) => row === area.row).map(({ column }) => column));
  return { ...area, rows: last - area.row + 1, columns: right - area.column + 1 };
}

export function writeFormulas(sheet: Excel.Worksheet, plan: SheetPlan, references: ReadonlyMap<string, string>): void {
  for (const { row, column, formula } of plan.cells) {
    if (formula !== undefined) {
      sheet.getRangeByIndexes(row, column, 1, 1).formulas = [[withReferences(formula, references)]];
    }
  }
}

/** How a sheet prints: A4 across, one page wide, its headings on each page. Fails where no printer is set up. */
export function setUpPrint(sheet: Excel.Worksheet, plan: SheetPlan): void {
  const page = sheet.pageLayout;
  page.orientation = 'Landscape';
  page.paperSize = 'A4';
  page.zoom = { horizontalFitToPages: 1 };
  page.centerHorizontally = true;
  page.blackAndWhite = true;
  page.setPrintMargins('Centimeters', { top: 1.2, bottom: 1.6, left: 1.2, right: 1.2, footer: 0.8 });
  if (plan.frozen.rows > 0) page.setPrintTitleRows(`$1:$${plan.frozen.rows}`);
  const foot = page.headersFooters.defaultForAllPages;
  foot.leftFooter = '&F, &A';
  foot.centerFooter = '&P / &N';
  foot.rightFooter = '&D';
}

/** Row by row in one block; cells of which the plan says nothing stay as they are. */
function writeValues(sheet: Excel.Worksheet, cells: readonly CellPlan[]): void {
  const written = cells.filter(({ value }) => value !== undefined);
  if (written.length === 0) return;
  const rows = greatestOf(written.map(({ row }) => row)) + 1;
  const columns = greatestOf(written.map(({ column }) => column)) + 1;
  const block = Array.from({ length: rows }, () => new Array<string | number | boolean | null>(columns).fill(null));
  for (const { row, column, value, role } of written) {
    // Headings of tables are text to the suite, sizes too.
    const given = role === 'heading' && typeof value === 'number' ? String(value) : value;
    itemAt(block, row)[column] = asTyped(given as string | number | boolean);
  }
  sheet.getRangeByIndexes(0, 0, rows, columns).values = block;
}

/** Examples row by row: a row of which one was typed over is the maker's own. */
function greyExamples(sheet: Excel.Worksheet, cells: readonly CellPlan[]): void {
  const rows = new Map<number, CellPlan[]>();
  for (const cell of cells) if (cell.role === 'example') rows.set(cell.row, [...(rows.get(cell.row) ?? []), cell]);
  for (const [row, line] of rows) {
    const come = line.flatMap(({ column, value }) =>
      typeof value === 'string' || typeof value === 'number'
        ? [[`$${columnLetters(column)}${row + 1}`, value] as const]
        : [],
    );
    const columns = line.map(({ column }) => column);
    const [first, last] = [Math.min(...columns), Math.max(...columns)];
    greyWhile(sheet.getRangeByIndexes(row, first, 1, last - first + 1), come);
  }
}

function prepareResult(sheet: Excel.Worksheet, { area, columns, total = false }: ResultPlan): void {
  const headings = { ...area, rows: 1 };
  dress(rangeOf(sheet, headings), looks.heading, headings);
  const body = { ...area, row: area.row + 1, rows: area.rows - 1 };
  columns.forEach(({ format, align, wraps }, at) => {
    const column = { column: area.column + at, columns: 1 };
    alignTo(rangeOf(sheet, { ...area, ...column }), align);
    // Rows of the suite do not grow with what a formula spills.
    if (wraps === true) rangeOf(sheet, { ...body, ...column }).format.wrapText = true;
    if (format !== undefined) rangeOf(sheet, { ...body, ...column }).numberFormat = [[formatCode(format)]];
  });
  const across = (row: number) => {
    const [from, to] = [area.column, area.column + area.columns - 1].map(columnLetters);
    return `$${from}${row + 1}:$${to}${row + 1}`;
  };
  tintWhereFilled(rangeOf(sheet, body), across(body.row), across(body.row + 1), total);
}

/** Offers words in the cells and takes others too: the functions say what is wrong with them. */
function offer({ dataValidation }: Excel.Range, { choices, codesOf }: ListPlan, codes: CodePlaces): void {
  const place = codesOf === undefined ? undefined : codes.get(codesOf);
  const words = choices.join(',');
  const listed = words.length > 0 && words.length <= LONGEST_LIST && !choices.some((choice) => choice.includes(','));
  const source = place ? `=${fixedReference(place.sheet, place.area)}` : listed ? words : undefined;
  if (source === undefined) return;
  dataValidation.rule = { list: { inCellDropDown: true, source } };
  dataValidation.ignoreBlanks = true;
  dataValidation.errorAlert = { showAlert: false, style: 'Information', title: '', message: '' };
}

function alignTo({ format }: Excel.Range, align: 'left' | 'right'): void {
  format.horizontalAlignment = align === 'right' ? 'Right' : 'Left';
}

function freeze(sheet: Excel.Worksheet, { rows, columns }: SheetPlan['frozen']): void {
  if (rows > 0 && columns > 0) sheet.freezePanes.freezeAt(sheet.getRangeByIndexes(0, 0, rows, columns));
  else if (rows > 0) sheet.freezePanes.freezeRows(rows);
  else if (columns > 0) sheet.freezePanes.freezeColumns(columns);
}

function inColumns({ column, columns }: Area, at: number): boolean {
  return at >= column && at < column + columns;
}
