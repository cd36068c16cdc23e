import type { Style } from '../core/bottom/style';
import { bytesOfRecords } from '../core/bytes';
import { derived } from '../core/derived';
import type { Last } from '../core/last/last';
import { Memo } from '../core/memo';
import { fold } from '../core/plan/codes';
import { stocksOf } from '../core/plan/finder';
import { distinctLeftOut } from '../core/plan/left-out';
import type { NotSummed } from '../core/plan/checks/check';
import { askedOf, type Outline, type PairageRow, type PlanInput, type Rate } from '../core/plan/inputs';
import { type DoubtfulNoughts, Plan, type UnreadHeading } from '../core/plan/plan';
import { planMemory } from '../core/plan/plan-memory';
import { Problem } from '../core/problem';
import type { Stock } from '../core/stock/stock';
import { type Cells, isLeftOut } from './cell';
import { cellsContent } from './cells-content';
import { keptReading } from './kept-reading';
import { lastsTable, toLast } from './lasts';
import { layoutsTable } from './layouts';
import { offcutsTable } from './offcuts';
import { offersTable } from './offers';
import { collectOutlines, outlinesTable } from './outlines';
import { pairageTable, toPairage } from './pairage';
import { ratesTable, toRate } from './rates';
import { empty, type Reading } from './read';
import { sift, twice } from './sound-rows';
import { headsSums } from './sums';
import { INPUT_TABLES } from './input-tables';
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
  readonly offers?: Cells | undefined;
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
    return readTables(cells, Object.fromEntries(TABLES.map((name, i) => [name, contents[i]])) as Contents);
  });
}

const DUE = pairageTable.columns.due.heading;

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

function readTables(cells: PlanCells, contents: Contents): PlanReading {
  const { read, problems, unread, notSummed, doubtful } = readAll(cells, contents);
  for (const row of read.styles.rows) for (const problem of namedLikeSums(row)) problems.push(problem);
  const input = inputOf(read, problems);
  return { plan: new Plan(input, unread, notSummed, doubtful), problems, money: read.stock.units.price ?? '' };
}

type TablesRead = ReturnType<typeof readAll>['read'];

/** Every table by itself, and what is told of all of them. */
function readAll(cells: PlanCells, contents: Contents) {
  const problems: Problem[] = [];
  const unread: UnreadHeading[] = [];
  const notSummed: (NotSummed & { readonly table: string })[] = [];
  const doubtful: DoubtfulNoughts[] = [];
  const rowsOf = <C extends Columns>(table: Table<C>, given: Cells | undefined, needed = true): Reading<C> => {
    const reading = keptReading(table, given ?? [], contents[table.argument as keyof PlanCells]);
    // An optional table that is left out or blank is no table.
    const written = (given ?? []).slice(1).some((line) => line.some((cell) => !isLeftOut(cell)));
    const blank = !needed && !written;
    if (!blank) for (const problem of reading.problems) problems.push(problem);
    if (needed && reading.rows.length === 0 && reading.problems.length === 0) problems.push(empty(table));
    for (const heading of reading.unknown) unread.push({ table: table.name, heading });
    for (const where of reading.notSummed) notSummed.push({ table: table.name, ...where });
    if (reading.doubtful.length > 0) doubtful.push({ table: table.name, headings: reading.doubtful });
    return reading;
  };
  const read = {
    pairage: rowsOf(pairageTable, cells.pairage),
    styles: rowsOf(stylesTable, cells.styles),
    lasts: rowsOf(lastsTable, cells.lasts),
    stock: rowsOf(stockTable, cells.stock),
    rates: rowsOf(ratesTable, cells.rates, false),
    outlines: rowsOf(outlinesTable, cells.outlines, false),
    layouts: rowsOf(layoutsTable, cells.layouts, false),
    offcuts: rowsOf(offcutsTable, cells.offcuts, false),
    offers: rowsOf(offersTable, cells.offers, false),
  };
  return { read, problems, unread, notSummed, doubtful };
}

/** What can be planned on: the sound rows that wait for no row with a slip. Problems that rows make together are added. */
function inputOf(read: TablesRead, problems: Problem[]): PlanInput {
  const slips = (table: Table<Columns>) => problems.filter(({ place }) => place.argument === table.argument);
  const { traced, broken } = tracedIn(read.outlines.rows, slips(outlinesTable));
  const stock = sift(stockTable, read.stock.rows, {
    slips: slips(stockTable),
    waitsFor: ({ outline }) => broken(outline),
    // Only a traced sheet depends on outlines.
    make: (row) => stockOf(row, row.outline === undefined ? [] : [traced], () => toStock(row, traced)),
  });
  const lasts = sift(lastsTable, read.lasts.rows, {
    slips: slips(lastsTable),
    waitsFor: ({ measured }) => broken(measured),
    make: (row) => lastOf(row, [], () => toLast(row)),
  });
  const styles = sift(stylesTable, read.styles.rows, {
    slips: slips(stylesTable),
    waitsFor: (row) => lasts.lost.get(fold(row.last)) ?? firstOf(stocksOf(styleFrom(row)), stock.lost),
    make: styleFrom,
  });
  const pairage = sift(pairageTable, read.pairage.rows, {
    // A day that cannot be read changes nothing of what is made.
    slips: slips(pairageTable).filter(({ place: { row, column } }) => row === undefined || column !== DUE),
    waitsFor: ({ style }) => styles.lost.get(fold(style)),
    make: (row) => pairageOf(row, [], () => toPairage(row)),
  });
  const rates = sift(ratesTable, read.rates.rows, {
    slips: slips(ratesTable),
    make: (row) => rateOf(row, [], () => toRate(row)),
  });
  const layouts = sift(layoutsTable, read.layouts.rows, { slips: slips(layoutsTable), make: (row) => row });
  const offcuts = sift(offcutsTable, read.offcuts.rows, { slips: slips(offcutsTable), make: (row) => row });
  const offers = sift(offersTable, read.offers.rows, { slips: slips(offersTable), make: (row) => row });
  for (const sifted of [stock, lasts, styles, pairage, rates])
    for (const problem of sifted.problems) problems.push(problem);
  const leftOut = distinctLeftOut([
    ...pairage.leftOut,
    ...[styles, lasts, stock].flatMap(twice),
    ...[rates, layouts, offcuts, offers].flatMap((sifted) => sifted.leftOut),
  ]);
  return {
    pairage: sameList(read.pairage.rows, pairage.sound),
    styles: styles.sound,
    lasts: lasts.sound,
    stock: stock.sound,
    rates: sameList(read.rates.rows, rates.sound),
    outlines: traced,
    layouts: layouts.sound,
    offcuts: offcuts.sound,
    offers: offers.sound,
    ...(leftOut.length > 0 && { leftOut }),
    asked: read.pairage.rows.map(({ bySize, due }) => askedOf({ pairs: bySize, due })),
  };
}

/** The outlines as traced, and why one is broken: of those of which some point is wrong none of the points serves. */
function tracedIn(rows: TablesRead['outlines']['rows'], slips: readonly Problem[]) {
  const points = sift(outlinesTable, rows, { slips, make: (row) => row });
  const whyOf = new Map(points.leftOut.map(({ name, why }) => [fold(name), why]));
  const broken = (code: string | undefined) => (code === undefined ? undefined : whyOf.get(fold(code)));
  const traced = outlinesOf(rows, [], () => collectOutlines(points.sound.filter(({ code }) => !broken(code))));
  return { traced, broken };
}

type StyleRow = Reading<(typeof stylesTable)['columns']>['rows'][number];

function styleFrom(row: StyleRow): Style {
  return styleOf(row, [], () => toStyle(row));
}

/** The first of the codes that cannot be used: why. */
function firstOf(codes: readonly string[], lost: ReadonlyMap<string, Problem>): Problem | undefined {
  return codes.map((code) => lost.get(fold(code))).find((why) => why !== undefined);
}

/** A style whose row in Pairage would be taken for the sums. */
function namedLikeSums({ code, row }: StyleRow): readonly Problem[] {
  if (typeof code !== 'string' || !headsSums(code)) return [];
  const place = { argument: 'styles', table: 'Styles', row, column: 'Style' };
  return [new Problem('invalid', place, `"${code}" heads the sums of Pairage; give the style another code`)];
}
