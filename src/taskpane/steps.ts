import { fold } from '../core/plan/codes';
import type { Problem } from '../core/problem';
import { cellIn } from '../tables/block-cell';
import { type Cell, type Cells, isBlank } from '../tables/cell';
import { INPUT_TABLES } from '../tables/input-tables';
import { lostCodes } from '../tables/named-codes';
import { readTable } from '../tables/read';
import type { Columns, Table } from '../tables/schema';
import { headsSums } from '../tables/sums';
import type { WorkbookPlan } from '../workbook/workbook';

/** How far a table is filled in: untouched, of examples alone; begun, with something to put right; done. */
export type StepState = 'untouched' | 'begun' | 'done';

/** One step of the first run through the tables. */
export interface FirstStep {
  readonly table: string;
  readonly say: string;
  /** Whether columns for its sizes can be made. */
  readonly bySize: boolean;
  /** Whether a plan can be made without it. */
  readonly optional: boolean;
  readonly state: StepState;
  /** Whether an example stands in it still. */
  readonly examples: boolean;
}

const { lasts, stock, styles, pairage, rates } = INPUT_TABLES;

/** The tables in the order in which a maker fills them in: each names codes of those before it. */
const ORDER: readonly { readonly table: Table<Columns>; readonly say: string; readonly optional?: boolean }[] = [
  { table: lasts, say: 'Measure your lasts: bottom length, widths, heel height, pairs on hand.' },
  { table: stock, say: 'Enter the sheets on offer: material, thickness, size, price.' },
  { table: styles, say: 'Say what each style is built from, on which last.' },
  { table: pairage, say: 'Enter the pairs of each style under their sizes.' },
  {
    table: rates,
    say: 'Enter your costs and times, for the cost of a pair and the days.',
    optional: true,
  },
];

/**
 * The first run through blank tables, each step with its state as the tables have it.
 * @param tables by name, headings first
 * @param problems what the whole plan cannot read or build
 * @param examples the workbook whose rows are examples and not yet the maker's own
 */
export function steps(
  tables: ReadonlyMap<string, Cells>,
  problems: readonly Problem[],
  examples: WorkbookPlan,
): readonly FirstStep[] {
  // What a row names is found here also where no pair needs it yet.
  const lost = lostCodes(tables).filter(({ code }) => !headsSums(code));
  const naming = new Set(lost.flatMap(({ cells }) => cells.map((place) => place.table)));
  const rows = exampleRows(examples);
  return ORDER.map(({ table, say, optional = false }): FirstStep => {
    const cells = tables.get(table.name) ?? [];
    const own = rowsOf(cells).filter((line) => !isExampleOf(rows, table.name, line));
    const refused = () =>
      naming.has(table.name) ||
      problems.some(({ place }) => place.argument === table.argument) ||
      readTable(table, cells).problems.length > 0;
    // Styles without pairs are no run yet.
    const touched = table === pairage ? own.some(hasPairs(cells[0] ?? [])) : own.length > 0;
    const state = !touched ? 'untouched' : refused() ? 'begun' : 'done';
    const left = rowsOf(cells).length - own.length;
    // One row of costs that stands as the example has it may be the maker's own.
    const examples = left > (table === rates ? 1 : 0);
    return { table: table.name, say, bySize: table === pairage, optional, state, examples };
  });
}

/** What is next for a maker who begins, in a sentence; undefined where all tables that a plan needs are done. */
export function nextInWords(list: readonly FirstStep[]): string | undefined {
  const [next, then] = list.filter(({ state, optional }) => state !== 'done' && !optional);
  if (!next) return undefined;
  const after = then ? ` Then ${then.table}.` : '';
  if (next.state === 'begun') return `Next: finish ${next.table}.${after}`;
  return `Next: ${next.table}. ${next.say}${after}`;
}

/** Slips of the maker's own rows, in the order of the first steps: what examples still name is typed over in its turn. */
export function ownSlips(
  tables: ReadonlyMap<string, Cells>,
  problems: readonly Problem[],
  examples: WorkbookPlan,
): readonly Problem[] {
  const rows = exampleRows(examples);
  const at = (problem: Problem) => ORDER.findIndex(({ table }) => table.argument === problem.place.argument);
  const ofExample = ({ place }: Problem) => {
    const name = ORDER.find(({ table }) => table.argument === place.argument)?.table.name ?? '';
    const line = place.row === undefined ? undefined : tables.get(name)?.[place.row];
    return line !== undefined && isExampleOf(rows, name, line);
  };
  const order = (problem: Problem) => (at(problem) < 0 ? ORDER.length : at(problem));
  return problems.filter((one) => !ofExample(one)).sort((a, b) => order(a) - order(b));
}

/** Whether a slip is of what is still to come: its cell or table is blank, or names what its own table does not hold yet. */
export function isStillToFillIn(tables: ReadonlyMap<string, Cells>, { place }: Problem): boolean {
  const { table, row, column: heading, headings } = place;
  if (table === undefined || headings !== undefined) return false;
  if (row === undefined) return heading === undefined;
  if (heading === undefined) return false;
  const cells = tables.get(table) ?? [];
  const cell = cellIn(cells, { table, row, heading });
  if (isBlank(cells[cell.row]?.[cell.column])) return true;
  return lostCodes(tables).some((lost) =>
    lost.cells.some((named) => named.table === table && named.row === cell.row && named.column === cell.column),
  );
}

/** Rows in which something stands, but for those of sums. */
function rowsOf(cells: Cells): readonly (readonly Cell[])[] {
  return cells.slice(1).filter((line) => !line.every(isBlank) && !headsSums(String(line[0] ?? '')));
}

/** Whether a row has pairs under a size. */
function hasPairs(headings: readonly Cell[]): (line: readonly Cell[]) => boolean {
  const sizes = headings.flatMap((heading, at) => (!isBlank(heading) && Number.isFinite(Number(heading)) ? [at] : []));
  return (line) => sizes.some((at) => Number(line[at]) > 0);
}

/** What stands in the example rows of a workbook, by table. */
type ExampleRows = ReadonlyMap<string, readonly (readonly string[])[]>;

/** Tells whether a row of a table stands as an example of a workbook came. */
export function examplesIn(examples: WorkbookPlan): (table: string, line: readonly Cell[]) => boolean {
  const rows = exampleRows(examples);
  return (table, line) => isExampleOf(rows, table, line);
}

/** Whether all that stands in an example row stands in a row, wherever columns have been put. */
function isExampleOf(rows: ExampleRows, table: string, line: readonly Cell[]): boolean {
  const said = new Set(line.map((cell) => fold(String(cell ?? ''))));
  return (rows.get(table) ?? []).some((row) => row.every((value) => said.has(value)));
}

function exampleRows({ sheets }: WorkbookPlan): ExampleRows {
  const found = new Map<string, Map<number, string[]>>();
  for (const { tables, cells } of sheets) {
    for (const { name, area } of tables) {
      const rows = new Map<number, string[]>();
      found.set(name, rows);
      for (const { row, column, role, value } of cells) {
        const within = row > area.row && row < area.row + area.rows && column < area.column + area.columns;
        if (!within || role !== 'example' || value === undefined) continue;
        rows.set(row, [...(rows.get(row) ?? []), fold(String(value))]);
      }
    }
  }
  return new Map([...found].map(([name, rows]) => [name, [...rows.values()]]));
}
