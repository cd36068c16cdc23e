import { itemAt } from '../../core/item-at';
import { greatestOf } from '../../core/numerics/extremes';
import type { TableCell } from '../../tables/block-cell';
import type { Cells } from '../../tables/cell';
import type { SheetPlan, WorkbookPlan } from '../../workbook/workbook';
import { cellAddress } from '../../tables/cell-address';
import { asTyped } from './as-typed';
import { contentOf, ownSheets, planTables, readMade } from './own-sheets';
import { supports } from './requirements';
import { askedUnprotected, assertWritable } from './protected-sheets';
import { codeOf, run } from './run';
import { askedState, COUNTS_FROM_1904 } from './workbook-state';
import { breaksReferences, inFormulas, replaceSheets } from './replace-sheets';
import { setUpPrint, writeSheet } from './write-sheet';
import type {
  Block,
  CellPlace,
  Failed,
  Host,
  PlacedTable,
  Reference,
  Selection,
  SheetPicture,
  Stop,
  TablePlace,
  WrittenCell,
} from '../host';
import { listen } from './listen';
import { withReferences } from '../formulas';
import { byTable, inGrownTable, noTable } from '../growing-rows';
import { rectangles } from './rectangles';
import { freeNames } from '../free-names';
import { problemOf } from '../problems';

/** Puts a yes-or-no question to the maker. */
export type Ask = (question: string) => Promise<boolean>;

/** How long content must rest before its listeners are told, ms. Answers of functions come back about this far apart. */
const contentRests = 500;
/** The same for the selection, which moves with each press of an arrow key. */
const selectionRests = 100;
/** How many rows below a table are looked at for what it does not take in. */
const FAR_BELOW = 500;

const POINTS_A_MM = 72 / 25.4;

/** The office suite's workbook. Works on sheets that it has made; all others it leaves alone. */
export class ExcelHost implements Host {
  readonly name = 'office';

  /** @param ask is asked before anything is lost that the maker has entered */
  constructor(private readonly ask: Ask) {}

  async load(plan: WorkbookPlan): Promise<boolean> {
    const before = await run(async (context) => {
      const made = await readMade(context);
      const own = await ownSheets(context, made);
      const [state, assertUnprotected] = [askedState(context), askedUnprotected([...own.values()])];
      await context.sync();
      if (state().from1904) throw new Error(COUNTS_FROM_1904);
      assertUnprotected();
      if (own.size === 0) return undefined;
      const all = await planTables(context, made);
      const tables = Object.keys(made.tables).flatMap((name) => all.get(name) ?? []);
      const changed = (await contentOf(context, [...own.values()], tables)) !== made.content;
      const breaks = await breaksReferences(context, plan, own, made);
      return { changed, breaks, names: [...own.values()].map(({ name }) => name) };
    });
    const loses = before !== undefined && (before.changed || before.breaks);
    if (loses && !(await this.ask(question(plan.name, before)))) return false;
    const names = await run((context) => replaceSheets(context, plan));
    // Without a printer the suite refuses; sheets then print in its own way.
    await run(async (context) => {
      const { worksheets } = context.workbook;
      for (const one of plan.sheets) setUpPrint(worksheets.getItem(names.get(one.name) as string), one);
      await context.sync();
    }).catch(() => undefined);
    return true;
  }

  async tables(): Promise<ReadonlyMap<string, Cells>> {
    return run(async (context) => {
      const tables = await tablesOf(context);
      const ranges = [...tables].map(([name, table]) => [name, table.getRange().load('values')] as const);
      await context.sync();
      return new Map(
        ranges.map(([name, { values }]) => [
          name,
          (values as unknown[][]).map((row) => row.map((cell) => (cell === '' ? null : cell))),
        ]),
      );
    });
  }

  async tablePlace(name: string): Promise<TablePlace | undefined> {
    return run(async (context) => placeOf(context, (await tablesOf(context)).get(name)));
  }

  async tablePlaces(): Promise<ReadonlyMap<string, PlacedTable>> {
    return run(async (context) => {
      const tables = await tablesOf(context);
      const ranges = [...tables].map(([name, table]) => {
        const range = table.getRange().load('rowIndex, columnIndex, rowCount, columnCount, worksheet/name');
        // As far down as a maker may have typed on: the suite lets a table grow only where something is typed right below it.
        const below = range.getRowsBelow(FAR_BELOW).getUsedRangeOrNullObject(true).load('rowIndex');
        return [name, range, below] as const;
      });
      await context.sync();
      return new Map(
        ranges.map(([name, range, below]) => [
          name,
          { ...areaOf(range), filledBelow: below.isNullObject ? undefined : below.rowIndex },
        ]),
      );
    });
  }

  async selection(): Promise<Selection | undefined> {
    const extent = await selectedExtent();
    return run(async (context) => {
      const cell = context.workbook.getActiveCell();
      cell.load('rowIndex, columnIndex, values, valueTypes, text, formulas, worksheet/name');
      const spills = supports('ExcelApi', '1.12') ? cell.getSpillParentOrNullObject() : undefined;
      spills?.load('rowIndex, columnIndex, formulas, worksheet/name');
      await context.sync();
      const [value, text, formula, kind] = [cell.values, cell.text, cell.formulas, cell.valueTypes].map(
        (block: unknown[][]) => block[0]?.[0],
      );
      const spilled =
        spills &&
        !spills.isNullObject &&
        (spills.rowIndex !== cell.rowIndex || spills.columnIndex !== cell.columnIndex);
      return {
        sheet: cell.worksheet.name,
        row: cell.rowIndex,
        column: cell.columnIndex,
        ...extent,
        address: cellAddress(cell.rowIndex, cell.columnIndex),
        value: value === '' ? null : (value as Selection['value']),
        text: String(text),
        formula: typeof formula === 'string' && formula.startsWith('=') && !spilled ? formula : undefined,
        ...(spilled && {
          spilledFrom: {
            row: spills.rowIndex,
            column: spills.columnIndex,
            formula: String((spills.formulas as unknown[][])[0]?.[0]),
          },
        }),
        problem: kind === 'Error' ? whyItFailed(String(value)) : undefined,
      };
    }).catch((error: unknown) => {
      // A picture or a chart is selected, or no sheet is.
      if (/InvalidSelection|ItemNotFound|GeneralException/.test(codeOf(error))) return undefined;
      throw error;
    });
  }

  async read(reference: Reference): Promise<Block | undefined> {
    return run(async (context) => {
      const range = (await rangeOf(context, reference))?.load('rowIndex, columnIndex, values, worksheet/name');
      if (!range) return undefined;
      await context.sync();
      const values = range.values as Cells;
      const [rows, columns] = [values.length, values[0]?.length ?? 0];
      return {
        place: { sheet: range.worksheet.name, row: range.rowIndex, column: range.columnIndex, rows, columns },
        cells: values.map((line) => line.map((cell) => (cell === '' ? null : cell))),
      };
    });
  }

  async select({ sheet: name, row, column }: CellPlace): Promise<void> {
    await run(async (context) => {
      const sheet = context.workbook.worksheets.getItemOrNullObject(name);
      sheet.load('visibility');
      await context.sync();
      if (sheet.isNullObject) throw new Error(`The workbook has no sheet "${name}".`);
      if (sheet.visibility !== 'Visible') sheet.visibility = 'Visible';
      sheet.activate();
      sheet.getRangeByIndexes(row, column, 1, 1).select();
      await context.sync();
    });
  }

  async insertFormula(formula: string): Promise<void> {
    if (!formula.startsWith('=')) throw new Error(`A formula begins with "=", and ${formula} does not.`);
    if (!(await this.selection())) {
      throw new Error('No cell is selected; select the one that is to have the formula.');
    }
    await run(async (context) => {
      const tables = await tablesOf(context);
      const references = new Map([...tables].map(([name, table]) => [name, inFormulas(name, table.name)]));
      const cell = context.workbook.getActiveCell();
      await assertWritable(context, [cell]);
      cell.formulas = [[withReferences(formula, references)]];
      await context.sync();
    });
  }

  readonly insertPicture = async ({ png, name, description, width }: SheetPicture): Promise<string> =>
    run(async (context) => {
      const cell = context.workbook.getActiveCell().load('left, top, worksheet/name');
      await context.sync();
      const shape = context.workbook.worksheets.getItem(cell.worksheet.name).shapes.addImage(png);
      shape.name = name;
      shape.altTextTitle = name;
      shape.altTextDescription = description;
      shape.lockAspectRatio = true;
      shape.width = width * POINTS_A_MM;
      [shape.left, shape.top] = [cell.left, cell.top];
      await context.sync();
      return cell.worksheet.name;
    });

  async writeTable(name: string, cells: Cells): Promise<void> {
    await run(async (context) => {
      const place = await placeOf(context, (await tablesOf(context)).get(name));
      if (!place) throw new Error(`The workbook has no table "${name}".`);
      const widest = Math.max(0, greatestOf(cells.map((row) => row.length)));
      if (widest > place.columns) {
        throw new Error(`The table "${name}" has ${place.columns} columns; a row of ${widest} does not fit.`);
      }
      const sheet = context.workbook.worksheets.getItem(place.sheet);
      const below = sheet.getRangeByIndexes(place.row + 1, place.column, Math.max(1, place.rows - 1), place.columns);
      await assertWritable(context, [below]);
      context.workbook.application.suspendApiCalculationUntilNextSync();
      const missing = cells.length - (place.rows - 1);
      if (missing > 0) {
        // Whole rows, above the table's last: what stands below moves along, and what refers to the table takes them in.
        const last = place.row + place.rows;
        sheet.getRange(`${last}:${last + missing - 1}`).insert('Down');
      }
      const rows = Array.from({ length: Math.max(cells.length, place.rows - 1) }, (_, row) =>
        Array.from({ length: place.columns }, (_, column) => given(cells[row]?.[column])),
      );
      sheet.getRangeByIndexes(place.row + 1, place.column, rows.length, place.columns).formulas = rows;
      await context.sync();
    });
  }

  async writeTableCells(all: readonly TableCell[]): Promise<void> {
    await run(async (context) => {
      const tables = await tablesOf(context);
      const ranges = [...byTable(all)].map(([name, cells]) => {
        const table = tables.get(name);
        if (!table) throw noTable(name);
        const range = table.getRange().load('rowIndex, columnIndex, rowCount, columnCount, worksheet/name');
        return { name, cells, range };
      });
      await context.sync();
      // The lowest first, so that rows inserted in it move no other.
      const grown = ranges
        .map(({ name, cells, range }) => ({
          place: areaOf(range),
          ...inGrownTable(name, cells, range.rowCount),
          range,
        }))
        .sort((a, b) => b.place.row - a.place.row);
      await assertWritable(
        context,
        grown.map(({ range }) => range),
      );
      context.workbook.application.suspendApiCalculationUntilNextSync();
      for (const { place, missing, cells } of grown) {
        const sheet = context.workbook.worksheets.getItem(place.sheet);
        const last = place.row + place.rows;
        if (missing > 0) sheet.getRange(`${last}:${last + missing - 1}`).insert('Down');
        const values = new Map(cells.map(({ row, column, value }) => [`${row} ${column}`, value]));
        for (const { areas } of rectangles(cells, () => 'written')) {
          for (const { row, column, rows, columns } of areas) {
            sheet.getRangeByIndexes(place.row + row, place.column + column, rows, columns).formulas = block(
              rows,
              columns,
              (r, c) => given(values.get(`${row + r} ${column + c}`)),
            );
          }
        }
      }
      await context.sync();
    });
  }

  async addSheet(plan: SheetPlan): Promise<string> {
    return run(async (context) => {
      const { worksheets } = context.workbook;
      worksheets.load('items/name');
      await context.sync();
      const taken = worksheets.items.map(({ name }) => name);
      const [name] = freeNames([plan.name], taken) as [string];
      const sheet = worksheets.add(name);
      writeSheet(sheet, { ...plan, name }, new Map());
      sheet.activate();
      await context.sync();
      return name;
    });
  }

  async writeCells(cells: readonly WrittenCell[]): Promise<void> {
    await run(async (context) => {
      const ranges = cells.map(({ sheet, row, column }) =>
        context.workbook.worksheets.getItem(sheet).getRangeByIndexes(row, column, 1, 1),
      );
      await assertWritable(context, ranges);
      cells.forEach(({ value }, at) => (itemAt(ranges, at).formulas = [[given(value)]]));
      await context.sync();
    });
  }

  onSelection(listener: (selection: Selection | undefined) => void, failed: Failed): Stop {
    let last = '';
    const act = async () => {
      const selection = await this.selection();
      const now = JSON.stringify(selection);
      if (now === last) return;
      last = now;
      listener(selection);
    };
    return listen(['onSelectionChanged', 'onActivated', 'onChanged', 'onCalculated'], selectionRests, act, failed);
  }

  onContent(listener: () => void, failed: Failed): Stop {
    const act = async () => listener();
    return listen(['onChanged', 'onCalculated', 'onDeleted', 'onNameChanged'], contentRests, act, failed);
  }
}

/** What is lost, for the maker to say yes or no to. */
function question(
  plan: string,
  {
    changed,
    breaks,
    names,
  }: { readonly changed: boolean; readonly breaks: boolean; readonly names: readonly string[] },
): string {
  const list = names.map((name) => `“${name}”`).join(', ');
  const undone = supports('ExcelUndoApiAll', '1.0')
    ? 'Excel’s Undo goes back step by step.'
    : 'Excel cannot bring them back, nor undo what you did before.';
  return [
    changed ? `The sheets ${list} hold what you have entered. “${plan}” takes their place. ${undone}` : '',
    breaks ? `This version of Excel makes tables on ${list} anew: formulas of your own that name them show #REF!.` : '',
    'Your other sheets stay as they are. Replace them?',
  ]
    .filter(Boolean)
    .join(' ');
}

/** The plan's tables as they are now. */
async function tablesOf(context: Excel.RequestContext): Promise<ReadonlyMap<string, Excel.Table>> {
  return planTables(context, await readMade(context));
}

async function placeOf(context: Excel.RequestContext, table: Excel.Table | undefined): Promise<TablePlace | undefined> {
  if (!table) return undefined;
  const range = table.getRange().load('rowIndex, columnIndex, rowCount, columnCount, worksheet/name');
  await context.sync();
  return areaOf(range);
}

/** Of a range whose place is loaded. */
function areaOf({ worksheet, rowIndex, columnIndex, rowCount, columnCount }: Excel.Range): TablePlace {
  return { sheet: worksheet.name, row: rowIndex, column: columnIndex, rows: rowCount, columns: columnCount };
}

/** Size of the selection's first part; one cell where the suite does not tell. */
async function selectedExtent(): Promise<{ readonly rows: number; readonly columns: number }> {
  const one = { rows: 1, columns: 1 };
  return run(async (context) => {
    const first = context.workbook.getSelectedRanges().areas.getItemAt(0).load('rowCount, columnCount');
    await context.sync();
    return { rows: first.rowCount, columns: first.columnCount };
  }).catch(() => one);
}

function block<T>(rows: number, columns: number, at: (row: number, column: number) => T): T[][] {
  return Array.from({ length: rows }, (_, row) => Array.from({ length: columns }, (_, column) => at(row, column)));
}

/** What a cell is to hold, for the suite: blank is '', since nothing would leave it as it is. */
function given(cell: unknown): string | number | boolean {
  if (cell === null || cell === undefined) return '';
  if (typeof cell === 'string') return cell.startsWith('=') ? cell : asTyped(cell);
  if (typeof cell === 'number' || typeof cell === 'boolean') return cell;
  throw new Error('A cell takes a number, text, or true or false.');
}

/** The suite itself shows what a function says of its failure; this leads there. */
function whyItFailed(code: string): string {
  if (code === '#BUSY!') return 'The answer is being worked out.';
  const general = problemOf(code) ?? 'The formula ends in an error.';
  return code === '#VALUE!' || code === '#N/A'
    ? `${general} Point to the sign beside the cell to read what a function says of it.`
    : general;
}

async function rangeOf(context: Excel.RequestContext, reference: Reference): Promise<Excel.Range | undefined> {
  const { workbook } = context;
  if (reference.kind === 'cells') {
    const sheet = workbook.worksheets.getItemOrNullObject(reference.sheet).load('name');
    await context.sync();
    const { row, column, rows, columns } = reference;
    return sheet.isNullObject ? undefined : sheet.getRangeByIndexes(row, column, rows, columns);
  }
  const table = workbook.tables.getItemOrNullObject(reference.table).load('name');
  await context.sync();
  if (table.isNullObject) return undefined;
  if (reference.column === undefined) return reference.part === 'all' ? table.getRange() : table.getDataBodyRange();
  const column = table.columns.getItemOrNullObject(reference.column).load('name');
  await context.sync();
  if (column.isNullObject) return undefined;
  return reference.part === 'all' ? column.getRange() : column.getDataBodyRange();
}
