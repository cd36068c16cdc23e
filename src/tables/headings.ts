import { Problem } from '../core/problem';
import { bare, type Cell, type Cells, errorIn, isBlank, isError, isLeftOut, isNought } from './cell';
import type { Column, Columns, Table } from './schema';

/** What the first line of a table heads. */
export interface Headings {
  /** Where each column stands, by its name. */
  readonly at: ReadonlyMap<string, number>;
  readonly sizes: readonly { readonly column: number; readonly size: number }[];
  /** Headings that the table does not know: notes of the maker's own, or slips of the pen. */
  readonly unknown: readonly string[];
  /** Units that the maker has written under headings, by the column's name. */
  readonly units: Readonly<Record<string, string>>;
  readonly problems: readonly Problem[];
}

/** Where each column of a table stands, by its name, as reading finds it. @param headings the table's first row */
export function columnsIn(table: Table<Columns>, headings: readonly Cell[]): ReadonlyMap<string, number> {
  return readHeadings(table, headings).at;
}

/**
 * Reads a table's first line: which column each cell heads, in any order; every problem is collected.
 * @param below what stands below it: over nothing, a heading of 0 is a blank one
 */
export function readHeadings<C extends Columns>(table: Table<C>, line: readonly Cell[], below: Cells = []): Headings {
  const reader = new HeadingsReader(table);
  line.forEach((cell, column) => {
    const blank = isNought(cell) && (!table.bySize || below.every((row) => isLeftOut(row[column])));
    if (!blank) reader.read(cell, column);
  });
  return reader.headings();
}

/** A heading that a column was found by. */
interface Found {
  readonly column: number;
  /** As the maker has written it, and the words of ours that it begins with. */
  readonly given: string;
  readonly written: string;
  /** How surely it heads the column, more the surer. */
  readonly rank: number;
}

class HeadingsReader {
  private readonly columns: readonly (readonly [string, Column])[];
  private readonly found = new Map<string, Found>();
  private readonly sizes: { column: number; size: number }[] = [];
  private readonly unknown: { readonly given: string; readonly column: number }[] = [];
  private readonly problems: Problem[] = [];

  constructor(private readonly table: Table<Columns>) {
    this.columns = Object.entries(table.columns);
  }

  read(rich: Cell, column: number): void {
    const cell = bare(rich);
    if (isBlank(cell)) return;
    if (errorIn(rich) ?? (typeof cell === 'string' && isError(cell))) {
      this.bad(`the heading of column ${column + 1} shows an error; write the heading anew`, column);
      return;
    }
    const size = this.table.bySize ? asSize(cell) : undefined;
    if (size === undefined) this.heading(String(cell), column);
    else this.size(size, column);
  }

  headings(): Headings {
    if (this.table.bySize) this.likeSizes();
    this.lacking();
    const at = new Map([...this.found].map(([name, { column }]) => [name, column]));
    const unknown = this.unknown.map(({ given }) => given);
    return { at, sizes: this.sizes, unknown, units: this.units(), problems: this.problems };
  }

  private size(size: number, column: number): void {
    const before = this.sizes.find((one) => one.size === size);
    if (before) {
      const where = `in columns ${before.column + 1} and ${column + 1} of the table`;
      const say = `the heading ${size} stands twice, ${where}: type the size that one of them is meant for, or put its pairs under the other and clear its heading`;
      this.bad(say, column);
    }
    this.sizes.push({ column, size });
  }

  private heading(given: string, at: number): void {
    const match = headed(this.columns, plain(given));
    if (!match || !isUnit(match.rest)) {
      this.unknown.push({ given, column: at });
      return;
    }
    const { name, column, heading: written, rest } = match;
    // Beside the bare heading, or the heading with its own unit, one with other words after it is a note of the maker's
    // own; and so is a former heading beside today's.
    const sure = rest === '' || rest === plain(column.unit ?? '');
    const rank = 2 * Number(sure) + Number(written === column.heading);
    const before = this.found.get(name);
    if (before && before.rank > rank) {
      this.unknown.push({ given, column: at });
      return;
    }
    if (before?.rank === rank) this.bad(twice(column.heading, before.given, given, sure), at);
    else if (before) this.unknown.push(before);
    this.found.set(name, { column: at, given, written, rank });
  }

  /** Of a table with sizes in its headings: headings that are meant for one and are none. */
  private likeSizes(): void {
    for (const { given, column } of this.unknown.filter((one) => LIKE_A_SIZE.test(one.given))) {
      this.bad(`"${given.trim()}" heads no size; write the number alone, such as 38 or 38.5`, column);
    }
  }

  private lacking(): void {
    const lacking = this.columns.filter(([name, { required }]) => required && !this.found.has(name));
    if (lacking.length === 0) return;
    const names = lacking.map(([, { heading }]) => heading).join(', nor ');
    const sentence = `no column is headed ${names}; the table’s first row must hold the headings${others(this.unknown.map(({ given }) => given))}`;
    this.problems.unshift(this.problem(sentence));
  }

  private units(): Record<string, string> {
    const units: Record<string, string> = {};
    for (const [name, { given, written }] of this.found) {
      const own = given
        .trim()
        .replace(/\s+/g, ' ')
        .slice(written.length)
        .replace(/^[\s,:;([]+|[\s)\]]+$/g, '');
      if (own) units[name] = own;
    }
    return units;
  }

  /** @param at the column that is in the wrong */
  private bad(reason: string, at: number): void {
    this.problems.push(this.problem(reason, at));
  }

  private problem(reason: string, at?: number): Problem {
    const { argument, name } = this.table;
    return new Problem('invalid', { argument, table: name, headings: { at } }, reason);
  }
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
