/** Under which name the workbook keeps, in its own settings, what Solebench has made in it. */
const KEY = 'Solebench';

/** What Solebench has made in a workbook. */
export interface Made {
  /** Ids of sheets; they stay when a sheet is renamed or moved. */
  readonly sheets: readonly string[];
  /** Ids of tables by their names in the plan. */
  readonly tables: Readonly<Record<string, string>>;
  /** What the sheets held when they were made, to tell whether the maker has entered anything since. */
  readonly content: string;
}

const nothing: Made = { sheets: [], tables: {}, content: '' };

/** Reads what was made; nothing where there is no such note or it is not of this form. */
export async function readMade(context: Excel.RequestContext): Promise<Made> {
  const setting = context.workbook.settings.getItemOrNullObject(KEY);
  setting.load('value');
  await context.sync();
  if (setting.isNullObject) return nothing;
  const made = setting.value as Partial<Made> | null;
  return Array.isArray(made?.sheets) && typeof made.tables === 'object' && typeof made.content === 'string'
    ? (made as Made)
    : nothing;
}

/** Notes what was made. Takes effect with the next exchange. */
export function keepMade(context: Excel.RequestContext, made: Made): void {
  context.workbook.settings.add(KEY, made);
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
