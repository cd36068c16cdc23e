import type { Style } from '../core/bottom/style';
import { bytesOfRecords } from '../core/bytes';
import { derived } from '../core/derived';
import type { Last } from '../core/last/last';
import { Memo } from '../core/memo';
import type { NotSummed } from '../core/plan/checks/check';
import type { Outline, PairageRow, PlanInput, Rate } from '../core/plan/inputs';
import { Plan, type UnreadHeading } from '../core/plan/plan';
import { planMemory } from '../core/plan/plan-memory';
import { Problem } from '../core/problem';
import type { Stock } from '../core/stock/stock';
import { type Cells, isBlank } from './cell';
import { cellsContent } from './cells-content';
import { keptReading } from './kept-reading';
import { lastsTable, toLast } from './lasts';
import { layoutsTable } from './layouts';
import { offcutsTable } from './offcuts';
import { collectOutlines, outlinesTable } from './outlines';
import { pairageTable, toPairage } from './pairage';
import { ratesTable, toRate } from './rates';
import { empty, type Reading } from './read';
import type { Columns, Table } from './schema';
import { stockTable, toStock } from './stock';
import { stylesTable, toStyle } from './styles';

/** The tables that a plan is made from, as a host hands them over. */
export interface PlanCells {
  readonly pairage: Cells;
  readonly styles: Cells;
  readonly lasts: Cells;
  readonly stock: Cells;
  readonly rates: Cells;
  readonly outlines?: Cells | undefined;
  readonly layouts?: Cells | undefined;
  readonly offcuts?: Cells | undefined;
}

/** All input tables by their argument. */
export const INPUT_TABLES = {
  pairage: pairageTable,
  styles: stylesTable,
  lasts: lastsTable,
  stock: stockTable,
  rates: ratesTable,
  outlines: outlinesTable,
  layouts: layoutsTable,
  offcuts: offcutsTable,
} as const;

/** How a table is laid out, where its headings alone do not say. */
const LAID_OUT: Partial<Record<string, string>> = { pairage: 'styles down, sizes across' };

/** What a function's argument of that name takes, for help; undefined for a name that is no input table's. */
export function tableInWords(argument: string): string | undefined {
  const table = Object.values<Table<Columns>>(INPUT_TABLES).find((one) => one.argument === argument);
  const laidOut = LAID_OUT[argument];
  return table && `${table.name} with its headings${laidOut ? `: ${laidOut}` : ''}.`;
}

/** A plan, or everything in the tables that keeps it from being made. */
export interface PlanReading {
  readonly plan: Plan;
  /** Slips in the tables; where there are any, the plan lacks what they stand for. */
  readonly problems: readonly Problem[];
  /** The sheet's own money, as the heading of the stock's price names it. */
  readonly money: string;
}

const readings = new Memo<PlanReading>(planMemory, 'plan', ({ plan }) => bytesOf(plan.input));

/** A plan beside its bottoms and layouts: each size of each order leads to some lines in every stage. */
function bytesOf({ pairage, styles, stock, rates }: PlanInput): number {
  const sizes = pairage.reduce((sum, { pairs }) => sum + pairs.size, 0);
  return bytesOfRecords(100 + 20 * (sizes + styles.length + stock.length) + rates.length);
}

/** Reads the tables and sets up their plan, once for the same cells. */
export function readPlan(cells: PlanCells): PlanReading {
  const contents = TABLES.map((name) => cellsContent(cells[name] ?? []));
  return readings.get(contents.join(' '), () => {
    planMemory.next();
    return read(cells, Object.fromEntries(TABLES.map((name, i) => [name, contents[i]])) as Contents);
  });
}

const TABLES = Object.keys(INPUT_TABLES) as (keyof PlanCells)[];

/** What stands for the cells of each table. */
type Contents = Readonly<Record<keyof PlanCells, string>>;

/** Made of a row once, and of a table's rows once, as long as they stay the same. */
const styleOf = derived<object, Style>('style of a row');
const lastOf = derived<object, Last>('last of a row');
const rateOf = derived<object, Rate>('rate of a row');
const stockOf = derived<object, Stock>('stock of a row');
const pairageOf = derived<object, PairageRow>('pairage of a row');
const outlinesOf = derived<object, readonly Outline[]>('outlines of a table');
const listOf = derived<object, readonly unknown[]>('list of a table');

/** A list of what was made of a table's rows: the very same list where all of it is the same. */
function sameList<T>(of: object, list: readonly T[]): readonly T[] {
  return listOf(of, list, () => list) as readonly T[];
}

function read(cells: PlanCells, contents: Contents): PlanReading {
  const problems: Problem[] = [];
  const unread: UnreadHeading[] = [];
  const notSummed: (NotSummed & { readonly table: string })[] = [];
  const rowsOf = <C extends Columns>(table: Table<C>, given: Cells | undefined, needed = true): Reading<C> => {
    const reading = keptReading(table, given ?? [], contents[table.argument as keyof PlanCells]);
    // An optional table that is left out or blank is no table.
    const written = (given ?? []).slice(1).some((line) => line.some((cell) => !isBlank(cell)));
    const blank = !needed && !written;
    if (!blank) problems.push(...reading.problems);
    if (needed && reading.rows.length === 0 && reading.problems.length === 0) problems.push(empty(table));
    unread.push(...reading.unknown.map((heading) => ({ table: table.name, heading })));
    notSummed.push(...reading.notSummed.map((where) => ({ table: table.name, ...where })));
    return reading;
  };
  const pairage = rowsOf(pairageTable, cells.pairage);
  const styles = rowsOf(stylesTable, cells.styles);
  const lasts = rowsOf(lastsTable, cells.lasts);
  const stock = rowsOf(stockTable, cells.stock);
  const rates = rowsOf(ratesTable, cells.rates, false);
  const outlines = rowsOf(outlinesTable, cells.outlines, false);
  const layouts = rowsOf(layoutsTable, cells.layouts, false);
  const offcuts = rowsOf(offcutsTable, cells.offcuts, false);
  // What could not be read would only lead to further complaints about the same cells.
  const readable = problems.every(({ place }) => place.argument !== 'stock' && place.argument !== 'outlines');
  const traced = readable ? outlinesOf(outlines.rows, [], () => collectOutlines(outlines.rows)) : [];
  const sheets = (readable ? stock.rows : []).flatMap((row) => {
    try {
      // Only a traced sheet depends on outlines.
      return [stockOf(row, row.outline === undefined ? [] : [traced], () => toStock(row, traced))];
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      problems.push(error);
      return [];
    }
  });
  const collect = <T, U>(rows: readonly T[], make: (row: T) => U): readonly U[] =>
    problems.length > 0
      ? []
      : rows.flatMap((row) => {
          try {
            return [make(row)];
          } catch (error) {
            if (!(error instanceof Problem)) throw error;
            problems.push(error);
            return [];
          }
        });
  const builtLasts = collect(lasts.rows, (row) => lastOf(row, [], () => toLast(row)));
  const soundRates = collect(rates.rows, (row) => rateOf(row, [], () => toRate(row)));
  const input: PlanInput =
    problems.length > 0
      ? { pairage: [], styles: [], lasts: [], stock: [], rates: [], outlines: [], layouts: [], offcuts: [] }
      : {
          pairage: sameList(
            pairage.rows,
            pairage.rows.map((row) => pairageOf(row, [], () => toPairage(row))),
          ),
          styles: styles.rows.map((row) => styleOf(row, [], () => toStyle(row))),
          lasts: builtLasts,
          stock: sheets,
          rates: sameList(rates.rows, soundRates),
          outlines: traced,
          layouts: layouts.rows,
          offcuts: offcuts.rows,
        };
  return { plan: new Plan(input, unread, notSummed), problems, money: stock.units.price ?? '' };
}
