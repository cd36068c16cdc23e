import type { NotSummed } from '../core/plan/checks/check';
import { Problem, THERE } from '../core/problem';
import { bare, type Cell, type Cells, isBlank, isLeftOut, isNought, readNumber } from './cell';
import { isSumRow, notSummed, sizeOverSums } from './sums';
import { yearOfMost } from './day';
import { type Headings, readHeadings } from './headings';
import { foreignUnit } from './heading-unit';
import { doubtful, doubtfulHeadings, noughtsForBlanks } from './noughts-for-blanks';
import type { Around, Column, Columns, Row, Table } from './schema';

/** More rows than this are no bench's table. */
const MOST_ROWS = 20_000;

/** What a table read to. */
export interface Reading<C extends Columns> {
  readonly rows: readonly (Row<C> & { readonly bySize: ReadonlyMap<number, number> })[];
  /** Everything that cannot be right, each with its place. */
  readonly problems: readonly Problem[];
  /** Headings that the table does not know: notes of the maker's own, or slips of the pen. */
  readonly unknown: readonly string[];
  /** The second line of headings, by column: units that the maker has written there. */
  readonly units: Readonly<Record<string, string>>;
  readonly notSummed: readonly NotSummed[];
  /** Headings under which 0 was taken for a blank cell although it may have been entered. */
  readonly doubtful: readonly string[];
}

/** What the rows of a table are read by. */
interface Rules<C extends Columns> {
  readonly table: Table<C>;
  readonly found: Headings;
  /** Whether the host hands blank cells over as 0. */
  readonly asNoughts: boolean;
  /** What days without a year are near to. */
  readonly around: Around;
  readonly place: (column?: string, row?: number) => Problem['place'];
  /** Told of, and gone on from. */
  readonly problems: Problem[];
}

type RowRead<C extends Columns> = Reading<C>['rows'][number];

/** Reads a table: columns by heading, in any order; blank rows are passed over; every problem is collected. */
export function readTable<C extends Columns>(table: Table<C>, cells: Cells): Reading<C> {
  const place = placesIn(table);
  if (cells.length - 1 > MOST_ROWS) {
    throw new Problem('invalid', place(), `it has ${cells.length - 1} rows; ${MOST_ROWS} is the most`);
  }
  const found = readHeadings(table, cells[0] ?? [], cells.slice(1));
  const asNoughts = noughtsForBlanks(table, found, cells.slice(1));
  const problems = [...found.problems, ...inOtherUnits(table, found)];
  const rules = { table, found, asNoughts, around: { year: yearIn(table, found, cells) }, place, problems };
  const rows: RowRead<C>[] = [];
  const said: (readonly Cell[])[] = [];
  const rowOfKey = new Map<string, number>();
  let sums: number | undefined;
  const read = [
    ...[...found.at].filter(([name]) => !table.columns[name]?.unread).map(([, at]) => at),
    ...found.sizes.map(({ column }) => column),
  ];
  for (const [r, line] of cells.entries()) {
    if (r === 0 || read.every((at) => isLeftOut(line[at]))) continue;
    if (isSumRow(table, found, line)) {
      sums ??= r;
      continue;
    }
    const record = readRow(line, r, rules);
    tellTwice(record, rowOfKey, rules);
    rows.push(record);
    said.push(line);
  }
  const overSums = sizeOverSums(table, found, rows);
  if (overSums !== undefined) problems.push(countedTwice(table, overSums, place));
  return {
    rows,
    problems,
    unknown: found.unknown,
    units: found.units,
    notSummed: problems.length > 0 ? [] : notSummed(table, found, rows, cells, sums),
    doubtful: asNoughts ? doubtfulHeadings(table, found, said) : [],
  };
}

/** Headings whose unit is another than their column's: what stands below them would be taken for what it is not. */
function inOtherUnits({ columns, argument, name }: Table<Columns>, found: Headings): readonly Problem[] {
  return Object.entries(found.units).flatMap(([key, own]) => {
    const column = columns[key] as Column;
    const foreign = foreignUnit(column, own);
    if (!foreign) return [];
    const { heading, unit } = column;
    const each = foreign.factor === undefined || own.includes('/') ? '' : `, or each with its unit, such as 5 ${own}`;
    const say = `the heading says ${own}, but ${heading} is in ${unit}; enter the numbers in ${unit}${each}, and write the heading as ${heading} ${unit}`;
    return [
      new Problem('invalid', { argument, table: name, column: heading, headings: { at: found.at.get(key) } }, say),
    ];
  });
}

/** That the pairs under a size are the sums of the rows. */
function countedTwice(table: Table<Columns>, size: number, place: Rules<Columns>['place']): Problem {
  const own = Object.values(table.columns).find(({ unread }) => unread)?.heading ?? '';
  const say = `in every row it holds the sum of all other sizes; head it ${own}, or head a column beside it so if these are pairs of size ${size}`;
  return new Problem('invalid', place(String(size)), say);
}

function placesIn({ argument, name }: Pick<Table, 'argument' | 'name'>): Rules<Columns>['place'] {
  return (column, row) => ({
    argument,
    table: name,
    ...(row !== undefined && { row }),
    ...(column !== undefined && { column }),
  });
}

/** The year of most of the days in a table. */
function yearIn(table: Table<Columns>, found: Headings, cells: Cells): number | undefined {
  const days = Object.entries(table.columns).flatMap(([name, { kind }]) =>
    kind === 'date' ? (found.at.get(name) ?? []) : [],
  );
  return yearOfMost(days.flatMap((at) => cells.slice(1).map((line) => bare(line[at]))));
}

function collected<T>(problems: Problem[], work: () => T): T | undefined {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    problems.push(error);
    return undefined;
  }
}

function readRow<C extends Columns>(line: readonly Cell[], row: number, rules: Rules<C>): RowRead<C> {
  const { table, found, asNoughts, around, place, problems } = rules;
  const record: { [name: string]: unknown } = { row };
  for (const [name, column] of Object.entries(table.columns)) {
    const at = found.at.get(name);
    const cell = at === undefined ? null : line[at];
    if (!saysNothing(cell, column, asNoughts)) {
      record[name] = collected(problems, () => column.read(cell, place(column.heading, row), around));
      continue;
    }
    record[name] = column.fallback;
    if (column.required && at !== undefined) {
      problems.push(new Problem('invalid', place(column.heading, row), missing(column, cell)));
    }
  }
  record['bySize'] = sizeCells(line, row, rules);
  return record as RowRead<C>;
}

/** Tells of a row that has the key of another. */
function tellTwice<C extends Columns>(record: RowRead<C>, rowOfKey: Map<string, number>, rules: Rules<C>): void {
  const { table, place, problems } = rules;
  const column = table.key === undefined ? undefined : table.columns[table.key];
  const key: unknown = table.key === undefined ? undefined : record[table.key];
  if (column === undefined || typeof key !== 'string') return;
  const same = key.toLowerCase();
  const before = rowOfKey.get(same);
  if (before === undefined) {
    rowOfKey.set(same, record.row);
    return;
  }
  const say = `"${key}" is in ${THERE} already; give each its own`;
  problems.push(new Problem('invalid', place(column.heading, record.row), say, place(undefined, before)));
}

/**
 * Whether a cell stands for nothing. A number that is wanted and may not be 0 is told of by its bounds.
 * @param asNoughts whether the host hands blank cells over as 0
 */
function saysNothing(cell: Cell, column: Column, asNoughts: boolean): boolean {
  if (isBlank(cell)) return true;
  if (!isNought(cell)) return false;
  const { noughtIsBlank, required, kind } = column;
  return (noughtIsBlank && !(required && kind === 'number')) || (asNoughts && doubtful(column));
}

function missing({ kind, unit, choices }: Column, cell: Cell): string {
  const blank = isNought(cell) ? 'it is blank or 0' : 'it is blank';
  if (choices) return `${blank}; choose ${choices.join(', ')}`;
  return kind === 'number' ? `${blank}; enter a number${unit ? ` in ${unit}` : ''}` : `${blank}; enter it`;
}

function sizeCells<C extends Columns>(
  line: readonly Cell[],
  row: number,
  { table: { bySize }, found, asNoughts, place, problems }: Rules<C>,
): ReadonlyMap<number, number> {
  const noughtIsBlank = asNoughts || bySize?.noughtIsBlank === true;
  const map = new Map<number, number>();
  for (const { column, size } of found.sizes) {
    if (isBlank(line[column]) || (noughtIsBlank && isNought(line[column]))) continue;
    const value = collected(problems, () => readNumber(line[column], bySize?.rule ?? {}, place(String(size), row)));
    if (value !== undefined) map.set(size, value);
  }
  return map;
}

/** The problem of a table without any row. */
export function empty(table: Pick<Table, 'argument' | 'name' | 'meaning'>): Problem {
  return new Problem(
    'invalid',
    { argument: table.argument, table: table.name },
    `it has no rows; enter ${table.meaning.charAt(0).toLowerCase()}${table.meaning.slice(1)}`,
  );
}
