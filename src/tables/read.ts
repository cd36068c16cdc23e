import { Problem } from '../core/problem';
import { bare, type Cell, type Cells, errorIn, isBlank, isError, readNumber } from './cell';
import type { Column, Columns, Row, Table } from './schema';

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
}

interface Found {
  readonly at: ReadonlyMap<string, number>;
  readonly sizes: readonly { readonly column: number; readonly size: number }[];
  readonly unknown: readonly string[];
  readonly units: Readonly<Record<string, string>>;
}

/** Reads a table: columns by heading, in any order; blank rows are passed over; every problem is collected. */
export function readTable<C extends Columns>(table: Table<C>, cells: Cells): Reading<C> {
  const problems: Problem[] = [];
  const collect = <T>(work: () => T): T | undefined => {
    try {
      return work();
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      problems.push(error);
      return undefined;
    }
  };
  const place = (column?: string, row?: number) => ({
    argument: table.argument,
    table: table.name,
    ...(row !== undefined && { row }),
    ...(column !== undefined && { column }),
  });

  if (cells.length - 1 > MOST_ROWS) {
    throw new Problem('invalid', place(), `it has ${cells.length - 1} rows; ${MOST_ROWS} is the most`);
  }
  const found = readHeadings(table, cells[0] ?? []);
  problems.push(...found.problems);
  const rows: Reading<C>['rows'][number][] = [];
  const seen = new Map<string, number>();
  const read = [
    ...[...found.at].filter(([name]) => !table.columns[name]?.unread).map(([, at]) => at),
    ...found.sizes.map(({ column }) => column),
  ];
  for (let r = 1; r < cells.length; r++) {
    const line = cells[r] as readonly Cell[];
    if (read.every((at) => isBlank(line[at]))) continue;
    const record: Record<string, unknown> = { row: r };
    for (const [name, column] of Object.entries(table.columns)) {
      const at = found.at.get(name);
      const cell = at === undefined ? null : line[at];
      if (isBlank(cell)) {
        record[name] = column.fallback;
        if (column.required && at !== undefined) {
          problems.push(new Problem('invalid', place(column.heading, r), missing(column)));
        }
      } else record[name] = collect(() => column.read(cell, place(column.heading, r)));
    }
    record.bySize = sizeCells(table, found.sizes, line, (size) => place(String(size), r), collect);
    const key = table.key === undefined ? undefined : record[table.key];
    if (table.key !== undefined && typeof key === 'string') {
      const same = key.toLowerCase();
      const before = seen.get(same);
      if (before !== undefined) {
        const { heading } = table.columns[table.key] as Column;
        problems.push(
          new Problem('invalid', place(heading, r), `"${key}" is in row ${before} already; give each its own`),
        );
      } else seen.set(same, r);
    }
    rows.push(record as Reading<C>['rows'][number]);
  }
  return { rows, problems, unknown: found.unknown, units: found.units };
}

/** Where each column of a table stands, by its name, as reading finds it. @param headings the table's first row */
export function columnsIn(table: Table<Columns>, headings: readonly Cell[]): ReadonlyMap<string, number> {
  return readHeadings(table, headings).at;
}

function missing({ kind, unit, choices }: Column): string {
  if (choices) return `it is blank; choose ${choices.join(', ')}`;
  return kind === 'number' ? `it is blank; enter a number${unit ? ` in ${unit}` : ''}` : 'it is blank; enter it';
}

/** A heading without capitals and the stops that set its unit off, its white space made one blank. */
function plain(heading: string): string {
  return heading
    .toLowerCase()
    .replace(/[\s,:;()[\]]+/g, ' ')
    .trim();
}

/** Whether what follows a heading can be its unit: a word or two, or a price such as "€ a sheet". */
function isUnit(rest: string): boolean {
  return rest.split(' ').length <= 2 || /^\S+ (a|an|per|\/) \S+$/.test(rest);
}

function readHeadings<C extends Columns>(
  table: Table<C>,
  line: readonly Cell[],
): Found & { readonly problems: readonly Problem[] } {
  const problems: Problem[] = [];
  const at = new Map<
    string,
    { readonly column: number; readonly given: string; readonly written: string; readonly rank: number }
  >();
  const sizes: { column: number; size: number }[] = [];
  const sizesSeen = new Set<number>();
  const unknown: string[] = [];
  const columns = Object.entries(table.columns);
  const bad = (reason: string) =>
    problems.push(new Problem('invalid', { argument: table.argument, table: table.name }, reason));
  line.forEach((rich, i) => {
    const cell = bare(rich);
    if (isBlank(cell)) return;
    if (errorIn(rich) ?? (typeof cell === 'string' && isError(cell))) {
      bad(`the heading of column ${i + 1} shows an error; write the heading anew`);
      return;
    }
    const size = table.bySize ? asSize(cell) : undefined;
    if (size !== undefined) {
      if (sizesSeen.has(size)) bad(`the heading ${size} stands twice; keep one`);
      sizesSeen.add(size);
      sizes.push({ column: i, size });
      return;
    }
    const given = plain(String(cell));
    const match = headed(columns, given);
    if (!match || !isUnit(match.rest)) {
      unknown.push(String(cell));
      return;
    }
    const {
      name,
      column: { heading, unit = '' },
      rest,
    } = match;
    // Beside the bare heading, or the heading with its own unit, one with other words after it is a note of the maker's
    // own; and so is a former heading beside today's.
    const sure = rest === '' || rest === plain(unit);
    const rank = 2 * Number(sure) + Number(match.heading === heading);
    const found = { column: i, given: String(cell), written: match.heading, rank };
    const before = at.get(name);
    if (before && before.rank > rank) unknown.push(String(cell));
    else {
      if (before?.rank === rank) bad(twice(heading, before.given, found.given, sure));
      else if (before) unknown.push(before.given);
      at.set(name, found);
    }
  });
  for (const heading of table.bySize ? unknown : []) {
    if (LIKE_A_SIZE.test(heading)) {
      bad(`"${heading.trim()}" heads no size; write the number alone, such as 38 or 38.5`);
    }
  }
  const lacking = columns.filter(([name, { required }]) => required && !at.has(name)).map(([, { heading }]) => heading);
  if (lacking.length > 0) {
    problems.unshift(
      new Problem(
        'invalid',
        { argument: table.argument, table: table.name },
        `no column is headed ${lacking.join(', nor ')}; the first row must hold the headings${others(unknown)}`,
      ),
    );
  }
  const units: Record<string, string> = {};
  for (const [name, { given, written }] of at) {
    const own = given
      .trim()
      .replace(/\s+/g, ' ')
      .slice(written.length)
      .replace(/^[\s,:;([]+|[\s)\]]+$/g, '');
    if (own) units[name] = own;
  }
  return { at: new Map([...at].map(([name, { column }]) => [name, column])), sizes, unknown, units, problems };
}

/**
 * The column that a cell heads: that with the longest of all headings, today's and former ones, that the cell begins
 * with; what follows it is a unit.
 */
function headed(
  columns: readonly (readonly [string, Column])[],
  given: string,
): { readonly name: string; readonly column: Column; readonly heading: string; readonly rest: string } | undefined {
  const all = columns.flatMap(([name, column]) =>
    [column.heading, ...(column.former ?? [])].map((heading) => ({ name, column, heading })),
  );
  const [longest] = all
    .filter(({ heading }) => given === plain(heading) || given.startsWith(`${plain(heading)} `))
    .sort((a, b) => b.heading.length - a.heading.length);
  return longest && { ...longest, rest: given.slice(plain(longest.heading).length + 1) };
}

function twice(heading: string, one: string, other: string, sure: boolean): string {
  const [a, b] = [one, other].map((given) => given.trim().replace(/\s+/g, ' '));
  return sure || a === b
    ? `the heading ${heading} stands twice; keep one`
    : `"${a}" and "${b}" both read as ${heading}; keep one, and word a note of yours otherwise`;
}

/** Headings that a maker means for a size: a number with a system, a word or a sign about it. */
const LIKE_A_SIZE =
  /^\s*(?:(?:eu|uk|us|jp|cn|kr|size|sizes|gr|nr|no)\.?\s*\d+\S*|\d+\S*\s*(?:eu|uk|us|jp|cn|kr|mm|cm)?)\s*$/i;

/** What a missing heading may have been taken for. */
function others(unknown: readonly string[]): string {
  if (unknown.length === 0) return '';
  const shown = unknown.slice(0, 3).map((heading) => `"${heading.replace(/\s+/g, ' ').trim()}"`);
  return `; it has ${shown.join(', ')}${unknown.length > 3 ? ' …' : ''}, which no column is called`;
}

function asSize(cell: Cell): number | undefined {
  if (typeof cell === 'number') return Number.isFinite(cell) ? cell : undefined;
  if (typeof cell !== 'string') return undefined;
  const half = /^\s*(\d+)\s*(?:½|1\/2)\s*$/.exec(cell);
  if (half) return Number(half[1]) + 0.5;
  return /^\d+([.,]\d+)?$/.test(cell.trim()) ? Number(cell.replace(',', '.')) : undefined;
}

function sizeCells(
  table: Pick<Table, 'bySize'>,
  sizes: Found['sizes'],
  line: readonly Cell[],
  place: (size: number) => Problem['place'],
  collect: <T>(work: () => T) => T | undefined,
): ReadonlyMap<number, number> {
  const map = new Map<number, number>();
  for (const { column, size } of sizes) {
    if (isBlank(line[column])) continue;
    const value = collect(() => readNumber(line[column], table.bySize?.rule ?? {}, place(size)));
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
