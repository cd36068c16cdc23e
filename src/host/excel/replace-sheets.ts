import { itemAt } from '../../core/item-at';
import type { Area, SheetPlan, WorkbookPlan } from '../../workbook/workbook';
import { blanksApart } from '../formulas';
import { freeNames } from '../free-names';
import { tableNames } from '../table-names';
import { contentOf, keepMade, letGo, type Made, ownSheets, planTables, readMade } from './own-sheets';
import { supports } from './requirements';
import { type CodePlaces, filledPart, writeFormulas, writeSheet, writeTable } from './write-sheet';

/** Rows and columns of a sheet of the suite. */
const SHEET = { rows: 1_048_576, columns: 16_384 } as const;

/** A sheet of the plan under the name that it has in the workbook, and its tables that are there already. */
interface Target {
  readonly plan: SheetPlan;
  readonly sheet: Excel.Worksheet;
  /** Whether the sheet was there before. */
  readonly kept: boolean;
  /** Where tables of the plan stand on it now, by their names in the plan. */
  readonly tables: Map<string, TableThere>;
  /** Tables on it that no plan has. */
  readonly others: readonly Excel.Table[];
}

interface TableThere {
  readonly table: Excel.Table;
  readonly area: Area;
}

/**
 * Puts a plan's sheets in the place of those that were made before. What was there stays as a thing, with other content, so
 * that references of the maker's own to it go on and undo is not cut off: sheets and tables are neither taken away nor made
 * anew, and keep the names that the maker has given them.
 * @returns how the plan's sheets are called in the workbook
 */
export async function replaceSheets(
  context: Excel.RequestContext,
  plan: WorkbookPlan,
): Promise<ReadonlyMap<string, string>> {
  const { workbook } = context;
  const made = await readMade(context);
  const own = await ownSheets(context, made);
  const there = await tablesThere(context, own, made);
  workbook.worksheets.load('items/name');
  workbook.tables.load('items/name');
  workbook.names.load('items/name');
  await context.sync();
  const added = plan.sheets.filter(({ name }) => !own.has(name)).map(({ name }) => name);
  const free = freeNames(
    added,
    workbook.worksheets.items.map(({ name }) => name),
  );
  const taken = [...workbook.tables.items, ...workbook.names.items].map(({ name }) => name);

  workbook.application.suspendApiCalculationUntilNextSync();
  for (const [name, sheet] of own) if (!plan.sheets.some((one) => one.name === name)) letGo(sheet);
  const targets = plan.sheets.map((one): Target => {
    const sheet = own.get(one.name);
    const { tables = new Map(), others = [] } = there.get(one.name) ?? {};
    if (sheet) return { plan: { ...one, name: sheet.name }, sheet, kept: true, tables, others };
    const name = itemAt(free, added.indexOf(one.name));
    return { plan: { ...one, name }, sheet: workbook.worksheets.add(name), kept: false, tables, others };
  });
  const called = namesOfTables(plan, targets, taken);
  for (const target of targets) if (target.kept) makeRoom(target);
  const codes = codePlaces(targets.map((target) => target.plan));
  for (const { sheet, plan: one } of targets) writeSheet(sheet, one, codes);
  const tables = targets.flatMap((target) => tablesOn(target, called));
  const references = new Map([...called].map(([name, table]) => [name, inFormulas(name, table)]));
  for (const { sheet, plan: one } of targets) writeFormulas(sheet, one, references);
  const [first] = targets;
  first?.sheet.activate();
  first?.sheet.getRangeByIndexes(0, 0, 1, 1).select();
  for (const { sheet } of targets) sheet.load('id, name');
  for (const [, table] of tables) table.load('id, name');
  await context.sync();

  const sheets = new Map(plan.sheets.map(({ name }, at) => [name, targets[at]!.sheet]));
  await noteMade(context, sheets, tables);
  return new Map([...sheets].map(([name, sheet]) => [name, sheet.name]));
}

/** Keeps in the workbook which sheets and tables are the plan's, and what stands in them. */
async function noteMade(
  context: Excel.RequestContext,
  sheets: ReadonlyMap<string, Excel.Worksheet>,
  tables: readonly (readonly [name: string, table: Excel.Table])[],
): Promise<void> {
  const note = ({ id, name }: { readonly id: string; readonly name: string }) => ({ id, name });
  const now = {
    sheets: Object.fromEntries([...sheets].map(([name, sheet]) => [name, note(sheet)])),
    tables: Object.fromEntries(tables.map(([name, table]) => [name, note(table)])),
    content: await contentOf(
      context,
      [...sheets.values()],
      tables.map(([, table]) => table),
    ),
  };
  keepMade(context, now, sheets);
  await context.sync();
}

/** Whether tables must be made anew for a plan, so that references of the maker's own to them lead nowhere afterwards. */
export async function breaksReferences(
  context: Excel.RequestContext,
  plan: WorkbookPlan,
  own: ReadonlyMap<string, Excel.Worksheet>,
  made: Made,
): Promise<boolean> {
  if (supports('ExcelApi', '1.13')) return false;
  const there = await tablesThere(context, own, made);
  return plan.sheets.some(({ name, tables, cells }) =>
    tables.some((one) => {
      const before = there.get(name)?.tables.get(one.name);
      return before !== undefined && !canBecome(before, filledPart(one.area, cells));
    }),
  );
}

/** A table with its headings, as formulas name it. @param called its name in the workbook */
export function inFormulas(name: string, called: string): string {
  return blanksApart(name, `${called}[#All]`);
}

/** Tables on sheets that were made before: those of the plan, and others, by the sheet's name in the plan. */
async function tablesThere(
  context: Excel.RequestContext,
  own: ReadonlyMap<string, Excel.Worksheet>,
  made: Made,
): Promise<ReadonlyMap<string, Pick<Target, 'tables' | 'others'>>> {
  if (own.size === 0) return new Map();
  const known = await planTables(context, made);
  const names = new Map([...known].map(([name, { id }]) => [id, name]));
  const onSheets = [...own].map(([name, sheet]) => [name, sheet.tables.load('items/id')] as const);
  await context.sync();
  const places = onSheets.map(([name, { items }]) => {
    const ranges = items.map((table) => table.getRange().load('rowIndex, columnIndex, rowCount, columnCount'));
    return { name, items, ranges };
  });
  await context.sync();
  return new Map(
    places.map(({ name, items, ranges }) => {
      const tables = new Map<string, TableThere>();
      const others: Excel.Table[] = [];
      items.forEach((table, at) => {
        const inPlan = names.get(table.id);
        const { rowIndex: row, columnIndex: column, rowCount: rows, columnCount: columns } = ranges[at]!;
        if (inPlan === undefined) others.push(table);
        else tables.set(inPlan, { table, area: { row, column, rows, columns } });
      });
      return [name, { tables, others }];
    }),
  );
}

/** Empties a sheet but for the headings of its tables, which stand afterwards where the plan has them. */
function makeRoom({ plan, sheet, tables, others }: Target): void {
  for (const other of others) other.convertToRange();
  const whole = sheet.getRange();
  whole.conditionalFormats.clearAll();
  whole.dataValidation.clear();
  whole.format.useStandardHeight = true;
  whole.format.useStandardWidth = true;
  sheet.freezePanes.unfreeze();
  let from = 0;
  for (const one of plan.tables) {
    const there = tables.get(one.name);
    if (!there) continue;
    const wanted = filledPart(one.area, plan.cells);
    if (!canBecome(there, wanted)) {
      there.table.convertToRange();
      tables.delete(one.name);
      continue;
    }
    bringTo(sheet, there, wanted);
    clear(sheet, { row: from, column: 0, rows: wanted.row - from, columns: SHEET.columns });
    const right = wanted.column + wanted.columns;
    clear(sheet, { ...wanted, rows: 1, column: 0, columns: wanted.column });
    clear(sheet, { ...wanted, rows: 1, column: right, columns: SHEET.columns - right });
    sheet.getRangeByIndexes(wanted.row, wanted.column, 1, wanted.columns).clear('Formats');
    from = wanted.row + 1;
  }
  clear(sheet, { row: from, column: 0, rows: SHEET.rows - from, columns: SHEET.columns });
}

/** Has a table stand where the plan has it, as large as there. */
function bringTo(sheet: Excel.Worksheet, { table, area }: TableThere, wanted: Area): void {
  // What stands above and beside a table is written anew, so rows and columns may go or come there.
  const [down, right] = [wanted.row - area.row, wanted.column - area.column];
  if (down > 0) sheet.getRangeByIndexes(0, 0, down, SHEET.columns).insert('Down');
  if (down < 0) sheet.getRangeByIndexes(wanted.row, 0, -down, SHEET.columns).delete('Up');
  if (right > 0) sheet.getRangeByIndexes(0, 0, SHEET.rows, right).insert('Right');
  if (right < 0) sheet.getRangeByIndexes(0, wanted.column, SHEET.rows, -right).delete('Left');
  if (isAsLarge(area, wanted)) return;
  table.resize(sheet.getRangeByIndexes(wanted.row, wanted.column, wanted.rows, wanted.columns));
}

/** Versions that cannot make a table larger or smaller make it anew. */
function canBecome({ area }: TableThere, wanted: Area): boolean {
  return isAsLarge(area, wanted) || supports('ExcelApi', '1.13');
}

function isAsLarge(area: Area, wanted: Area): boolean {
  return area.rows === wanted.rows && area.columns === wanted.columns;
}

function clear(sheet: Excel.Worksheet, { row, column, rows, columns }: Area): void {
  if (rows > 0 && columns > 0) sheet.getRangeByIndexes(row, column, rows, columns).clear('All');
}

/** How formulas call the plan's tables: those that are there keep their names. */
function namesOfTables(
  plan: WorkbookPlan,
  targets: readonly Target[],
  taken: readonly string[],
): ReadonlyMap<string, string> {
  const kept = new Map(
    targets.flatMap(({ tables }) => [...tables].map(([name, { table }]): [string, string] => [name, table.name])),
  );
  const added = plan.sheets.flatMap(({ tables }) => tables.map(({ name }) => name)).filter((name) => !kept.has(name));
  const names = tableNames(added, taken);
  return new Map([...kept, ...added.map((name, at): [string, string] => [name, itemAt(names, at)])]);
}

/** The plan's tables of a sheet, by their names in the plan; made where they are not there yet. */
function tablesOn(
  { plan, sheet, tables }: Target,
  called: ReadonlyMap<string, string>,
): readonly (readonly [string, Excel.Table])[] {
  return plan.tables.map(({ name, area }) => {
    const there = tables.get(name);
    if (there) return [name, there.table] as const;
    return [name, writeTable(sheet, filledPart(area, plan.cells), called.get(name) as string)] as const;
  });
}

/** Where the first column of each table stands, without its heading. */
function codePlaces(sheets: readonly SheetPlan[]): CodePlaces {
  return new Map(
    sheets.flatMap(({ name: sheet, tables, cells }) =>
      tables.map(({ name, area }): [string, { sheet: string; area: Area }] => {
        const { row, column, rows } = filledPart(area, cells);
        return [name, { sheet, area: { row: row + 1, column, rows: rows - 1, columns: 1 } }];
      }),
    ),
  );
}
