import { itemAt } from '../../core/item-at';
import { INPUT_TABLES } from '../../tables/input-tables';
import { tableNames } from '../table-names';
import { supports } from './requirements';

/**
 * Under which name the workbook keeps, in its own settings, what Solebench has made in it; each sheet has, as a property of
 * its own under the same name, which of a plan's sheets it is.
 */
const KEY = 'Solebench';

/** Something made in a workbook. Ids may be others the next time the workbook opens, so the name is noted too. */
interface Noted {
  readonly id: string;
  readonly name: string;
}

/** What Solebench has made in a workbook: sheets and tables by their names in the plan. */
export interface Made {
  readonly sheets: Readonly<Record<string, Noted>>;
  readonly tables: Readonly<Record<string, Noted>>;
  /** What the sheets held when they were made, to tell whether the maker has entered anything since. */
  readonly content: string;
}

/** A note as it is read: former ones have ids of sheets alone. */
export interface MadeBefore extends Made {
  readonly formerSheets: readonly string[];
}

const nothing: MadeBefore = { sheets: {}, tables: {}, content: '', formerSheets: [] };

/** The mark of a sheet that no plan has any longer. */
const LET_GO = '';

/** Input tables with the names that they are given where those are free. */
const usualNames = Object.values(INPUT_TABLES).map(({ name }) => [name, itemAt(tableNames([name]), 0)] as const);

/** Reads what was made; nothing where there is no such note or it is not of this form. */
export async function readMade(context: Excel.RequestContext): Promise<MadeBefore> {
  const setting = context.workbook.settings.getItemOrNullObject(KEY);
  setting.load('value');
  await context.sync();
  if (setting.isNullObject) return nothing;
  const made = setting.value as Partial<Record<keyof Made, unknown>> | null;
  if (typeof made?.content !== 'string') return nothing;
  const formerSheets = Array.isArray(made.sheets) ? made.sheets.map(String) : [];
  const sheets = Array.isArray(made.sheets) ? {} : noted(made.sheets);
  return { sheets, tables: noted(made.tables), content: made.content, formerSheets };
}

/** Notes what was made, in the workbook and on each sheet. Takes effect with the next exchange. */
export function keepMade(
  context: Excel.RequestContext,
  made: Made,
  sheets: ReadonlyMap<string, Excel.Worksheet>,
): void {
  context.workbook.settings.add(KEY, made);
  if (marksSheets()) for (const [name, sheet] of sheets) sheet.customProperties.add(KEY, name);
}

/** Takes the mark off a sheet that no plan has any longer: it is the maker's own from now on. */
export function letGo(sheet: Excel.Worksheet): void {
  if (marksSheets()) sheet.customProperties.add(KEY, LET_GO);
}

/**
 * The sheets that Solebench has made and that are still there, by their names in the plan, whatever the maker has called
 * them since. A version of the suite that keeps no marks on sheets knows them by the names that they were given alone.
 */
export async function ownSheets(
  context: Excel.RequestContext,
  { sheets: made, formerSheets }: MadeBefore,
): Promise<ReadonlyMap<string, Excel.Worksheet>> {
  const worksheets = context.workbook.worksheets.load('items/id, items/name');
  await context.sync();
  const all = worksheets.items;
  const marks = marksSheets() ? all.map((sheet) => sheet.customProperties.getItemOrNullObject(KEY).load('value')) : [];
  if (marks.length > 0) await context.sync();
  const marked = new Map(
    marks.flatMap((mark, at) => (mark.isNullObject ? [] : [[all[at], String(mark.value)] as const])),
  );
  const unmarked = all.filter((sheet) => !marked.has(sheet));
  const found = new Map<string, Excel.Worksheet>();
  for (const sheet of unmarked.filter(({ id }) => formerSheets.includes(id))) found.set(planName(sheet), sheet);
  for (const name of new Set([...Object.keys(made), ...marked.values()])) {
    // A copy that the maker made of a sheet has its mark too; the sheet itself is where it was noted.
    const those = all.filter((sheet) => marked.get(sheet) === name);
    const sheet = nearest(those, made[name]) ?? unmarked.find((one) => isCalled(one, made[name]));
    if (name !== LET_GO && sheet) found.set(name, sheet);
  }
  return found;
}

/**
 * Tables by their names in the plan: those that were made, and, in a workbook that came as a file and so has no note,
 * those that go by the names that tables are given.
 */
export async function planTables(
  context: Excel.RequestContext,
  { tables: made }: Pick<Made, 'tables'>,
): Promise<ReadonlyMap<string, Excel.Table>> {
  const item = (key: string) => context.workbook.tables.getItemOrNullObject(key).load('id, name');
  const names = new Map(usualNames);
  for (const [name, { name: called }] of Object.entries(made)) names.set(name, called);
  const found = [...names].map(([name, called]) => {
    const id = made[name]?.id;
    return { name, byName: item(called), byId: id === undefined ? undefined : item(id) };
  });
  await context.sync();
  return new Map(
    found.flatMap(({ name, byName, byId }): [string, Excel.Table][] => {
      // Another name is the maker's; the id is then all that is left of it.
      const table = !byName.isNullObject ? byName : byId && !byId.isNullObject ? byId : undefined;
      return table ? [[name, table]] : [];
    }),
  );
}

/** Whether this version of the suite keeps properties on sheets. */
function marksSheets(): boolean {
  return supports('ExcelApi', '1.12');
}

function nearest(those: readonly Excel.Worksheet[], note: Noted | undefined): Excel.Worksheet | undefined {
  return those.find(({ id }) => id === note?.id) ?? those.find((one) => isCalled(one, note)) ?? those[0];
}

function isCalled({ name }: Excel.Worksheet, note: Noted | undefined): boolean {
  return note !== undefined && name.toLowerCase() === note.name.toLowerCase();
}

/** What a sheet is called in the plan, where its name has a number because another was taken. */
function planName({ name }: Excel.Worksheet): string {
  return name.replace(/ \d+$/, '');
}

function noted(given: unknown): Record<string, Noted> {
  if (typeof given !== 'object' || given === null) return {};
  return Object.fromEntries(
    Object.entries(given).flatMap(([name, one]: [string, unknown]): [string, Noted][] => {
      // Former notes have ids alone.
      if (typeof one === 'string') return [[name, { id: one, name: itemAt(tableNames([name]), 0) }]];
      const { id, name: called } = (one ?? {}) as Partial<Noted>;
      return typeof id === 'string' && typeof called === 'string' ? [[name, { id, name: called }]] : [];
    }),
  );
}

/**
 * What sheets hold, as text that differs as soon as the maker enters, changes or takes away anything: the tables' values,
 * and how many other cells are filled. Results that are worked out anew make no difference.
 */
export async function contentOf(
  context: Excel.RequestContext,
  sheets: readonly Excel.Worksheet[],
  tables: readonly Excel.Table[],
): Promise<string> {
  const ranges = tables.map((table) => table.getRange().load('values'));
  const filled = sheets.flatMap((sheet) =>
    (['Constants', 'Formulas'] as const).map((kind) =>
      sheet.getRange().getSpecialCellsOrNullObject(kind).load('cellCount'),
    ),
  );
  await context.sync();
  const text = JSON.stringify([
    ranges.map(({ values }) => values),
    filled.map((areas) => (areas.isNullObject ? 0 : areas.cellCount)),
  ]);
  return digest(text);
}

/** A short number for a long text: FNV-1a, 32 bits. */
function digest(text: string): string {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return (hash >>> 0).toString(16);
}
