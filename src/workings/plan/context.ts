import { itemAt } from '../../core/item-at';
import type { PairageRow, Rate } from '../../core/plan/inputs';
import type { Plan } from '../../core/plan/plan';
import type { LeftOut } from '../../core/plan/left-out';
import { placeInWords } from '../../core/problem';
import { type PlanArguments, soundPlan } from '../../functions/plan-arguments';
import { type Cell, type Cells, isBlank, isNought } from '../../tables/cell';
import { INPUT_TABLES } from '../../tables/input-tables';
import type { PlanReading } from '../../tables/plan-input';
import { columnsIn } from '../../tables/headings';
import { headingOf, MONEY, type ResultTable } from '../../tables/result';
import type { Columns } from '../../tables/schema';
import { cells, optional } from '../arguments';
import { DAY, type At, given, type Given, type WorkedStep, step, told, type Working } from '../working';

/** The plan that a plan function answers from, with its tables as they were given. */
export interface Context {
  readonly plan: Plan;
  readonly money: string;
  readonly tables: Readonly<Record<keyof typeof INPUT_TABLES, Cells>>;
}

/** What a column's figure is worked out from; its value is the cell's own. */
export interface ColumnWorking {
  readonly given?: readonly Given[];
  readonly steps?: readonly WorkedStep[];
  readonly symbol?: string;
  readonly what: string;
  readonly formula?: string | undefined;
  readonly source?: string;
}

/** How each column of a table of results is worked out, by its heading and unit in one line. */
export type ColumnWorkings<T> = Readonly<Record<string, (line: T, context: Context) => ColumnWorking>>;

export const DERIVED = 'derived: it follows from the tables';

/**
 * @param args of the plan functions, in their order
 * @param planOf reads the plan as the function does
 */
export function contextOf(
  args: readonly Cell[],
  planOf: (args: PlanArguments) => Pick<PlanReading, 'plan' | 'money'> = soundPlan,
): Context {
  const [pairage, styles, lasts, stock, rates, outlines, layouts, offcuts, offers] = args;
  const { plan, money } = planOf([
    cells(pairage),
    cells(styles),
    cells(lasts),
    cells(stock),
    cells(rates),
    optional(outlines),
    optional(layouts),
    optional(offcuts),
    optional(offers),
  ]);
  const tables = { pairage, styles, lasts, stock, rates, outlines, layouts, offcuts, offers };
  return {
    plan,
    money,
    tables: Object.fromEntries(Object.entries(tables).map(([name, cell]) => [name, cells(cell)])) as Context['tables'],
  };
}

/** The working of one cell of a table of results, in which what is left out stands first. */
export function cellWorking<T>(
  table: ResultTable<T>,
  lines: readonly T[],
  workings: ColumnWorkings<T>,
  context: Context,
  { row: below, column: at }: At,
  leftOut: readonly LeftOut[] = [],
): Working | undefined {
  const column = table.columns[at];
  const row = below - leftOut.length;
  if (!column || row <= 0) return undefined;
  const unit = isDay(column) ? DAY : column.unit?.replace(MONEY, context.money || 'money').trim();
  const line = lines[row - 1];
  if (line === undefined) {
    const sum = row - 1 === lines.length ? column.total?.(lines, leftOut.length === 0) : undefined;
    if (typeof sum !== 'number') return undefined;
    return { given: [], steps: [told('Sum of the column above', sum, unit)], source: DERIVED };
  }
  const value = column.cell(line, placeInWords);
  const found = workings[keyOf(column)]?.(line, context);
  if (value === undefined || value === '' || !found) return undefined;
  const { given: from = [], steps = [], symbol, what, formula, source = DERIVED } = found;
  return { given: distinct(from), steps: [...steps, step(symbol, what, formula, value, unit)], source };
}

function isDay({ format }: { readonly format?: string }): boolean {
  return format?.includes('yyyy') ?? false;
}

/** Heading and unit of a result's column in one line; the money's sign stands in for its name. */
export function keyOf(column: { readonly heading: string; readonly unit?: string }): string {
  return headingOf(column, MONEY).replace(/\s+/g, ' ');
}

function distinct(list: readonly Given[]): readonly Given[] {
  const seen = new Set<string>();
  return list.filter(({ from, symbol }) => {
    if (!from || symbol) return true;
    const key = JSON.stringify(from);
    return !seen.has(key) && seen.add(key);
  });
}

/** A cell of an input table, with what its heading means. */
export function cell(
  { tables }: Context,
  table: keyof typeof INPUT_TABLES,
  row: number,
  name: string,
  symbol?: string,
  value?: number | string,
): Given {
  const column = (INPUT_TABLES[table].columns as Columns)[name];
  if (!column) throw new Error(`${table} has no column ${name}.`);
  const block = tables[table];
  const at = columnsIn(INPUT_TABLES[table], block[0] ?? []).get(name);
  const raw = at === undefined ? undefined : block[row]?.[at];
  const fallback = column.fallback;
  const blank = isBlank(raw) || (column.noughtIsBlank && isNought(raw));
  const stands = value ?? (blank ? fallback : raw);
  const shown = typeof stands === 'number' || typeof stands === 'string' ? stands : 'blank';
  const words =
    blank && value === undefined && fallback !== undefined ? `${column.heading}, blank: usual` : column.heading;
  // A share is written as in formulas, 0.8; a heading of such columns says per cent of 80 %.
  const own = column.kind === 'date' ? DAY : column.unit;
  const unit = typeof shown === 'number' && own !== '%' ? own : undefined;
  return given(symbol, words, shown, unit, { argument: table, row, column: column.heading });
}

/** A row of Costs and times. */
export function rate(row: Rate | undefined, symbol?: string): readonly Given[] {
  if (!row) return [];
  const scope = row.scope === undefined ? '' : ` for ${row.scope}`;
  const unit = row.unit === 'day of start' ? DAY : row.unit;
  return [given(symbol, `${row.item}${scope}`, row.value, unit, { argument: 'rates', row: row.row, column: 'Value' })];
}

/** The pairs of a size as the rows of Pairage have them. */
export function pairsOf(context: Context, style: string, size?: number, symbol?: string): readonly Given[] {
  const rows = context.plan.input.pairage.filter((row) => row.style.toLowerCase() === style.toLowerCase());
  const all = rows.flatMap((row: PairageRow) =>
    [...row.pairs]
      .filter(([one, pairs]) => pairs > 0 && (size === undefined || one === size))
      .map(([one, pairs]) =>
        given(undefined, `Pairs of ${style} in ${one}`, pairs, undefined, {
          argument: 'pairage',
          row: row.row,
          column: String(one),
        }),
      ),
  );
  return symbol !== undefined && all.length === 1 ? [{ ...itemAt(all, 0), symbol }] : all;
}
