import type { NotSummed } from '../core/plan/checks/check';
import { Problem, THERE } from '../core/problem';
import { bare, type Cell, type Cells, isBlank, isLeftOut, isNought, type NumberRule, readNumber } from './cell';
import { isSumRow, notSummed } from './sums';
import { yearOfMost } from './day';
import { type Headings, readHeadings } from './headings';
import { doubtful, doubtfulHeadings, noughtsForBlanks } from './noughts-for-blanks';
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
  readonly notSummed: readonly NotSummed[];
  /** Headings under which 0 was taken for a blank cell although it may have been entered. */
  readonly doubtful: readonly string[];
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
  const found = readHeadings(table, cells[0] ?? [], cells.slice(1));
  for (const problem of found.problems) problems.push(problem);
  const asNoughts = noughtsForBlanks(table, found, cells.slice(1));
  const days = Object.entries(table.columns).flatMap(([name, { kind }]) =>
    kind === 'date' ? (found.at.get(name) ?? []) : [],
  );
  const around = { year: yearOfMost(days.flatMap((at) => cells.slice(1).map((line) => bare(line[at])))) };
  const rows: Reading<C>['rows'][number][] = [];
  const seen = new Map<string, number>();
  let sums: number | undefined;
  const read = [
    ...[...found.at].filter(([name]) => !table.columns[name]?.unread).map(([, at]) => at),
    ...found.sizes.map(({ column }) => column),
  ];
  for (let r = 1; r < cells.length; r++) {
    const line = cells[r] as readonly Cell[];
    if (read.every((at) => isLeftOut(line[at]))) continue;
    if (isSumRow(table, found, line)) {
      sums ??= r;
      continue;
    }
    const record: Record<string, unknown> = { row: r };
    for (const [name, column] of Object.entries(table.columns)) {
      const at = found.at.get(name);
      const cell = at === undefined ? null : line[at];
      if (saysNothing(cell, column, asNoughts)) {
        record[name] = column.fallback;
        if (column.required && at !== undefined) {
          problems.push(new Problem('invalid', place(column.heading, r), missing(column, cell)));
        }
      } else record[name] = collect(() => column.read(cell, place(column.heading, r), around));
    }
    const noughtIsBlank = asNoughts || table.bySize?.noughtIsBlank === true;
    record.bySize = sizeCells(
      { ...table.bySize, noughtIsBlank },
      found.sizes,
      line,
      (size) => place(String(size), r),
      collect,
    );
    const key = table.key === undefined ? undefined : record[table.key];
    if (table.key !== undefined && typeof key === 'string') {
      const same = key.toLowerCase();
      const before = seen.get(same);
      if (before !== undefined) {
        const { heading } = table.columns[table.key] as Column;
        problems.push(
          new Problem(
            'invalid',
            place(heading, r),
            `"${key}" is in ${THERE} already; give each its own`,
            place(undefined, before),
          ),
        );
      } else seen.set(same, r);
    }
    rows.push(record as Reading<C>['rows'][number]);
  }
  const outside = problems.length > 0 ? [] : notSummed(table, found, rows, cells, sums);
  const said = rows.map(({ row }) => cells[row] as readonly Cell[]);
  return {
    rows,
    problems,
    unknown: found.unknown,
    units: found.units,
    notSummed: outside,
    doubtful: asNoughts ? doubtfulHeadings(table, found, said) : [],
  };
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

function sizeCells(
  bySize: { readonly rule?: NumberRule; readonly noughtIsBlank: boolean },
  sizes: Headings['sizes'],
  line: readonly Cell[],
  place: (size: number) => Problem['place'],
  collect: <T>(work: () => T) => T | undefined,
): ReadonlyMap<number, number> {
  const map = new Map<number, number>();
  for (const { column, size } of sizes) {
    if (isBlank(line[column]) || (bySize.noughtIsBlank && isNought(line[column]))) continue;
    const value = collect(() => readNumber(line[column], bySize.rule ?? {}, place(size)));
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
