import { isLeftOut, type Cells } from '../cell';
import { codeColumn } from '../block-cell';
import { columnsIn } from '../headings';
import { INPUT_TABLES } from '../input-tables';
import type { PlanCells } from '../plan-input';
import type { Columns, Table } from '../schema';
import { headsSums } from '../sums';

/** A cell of an input table for which other numbers are tried; rows and columns of its table, headings in row 0. */
export interface TriedCell {
  readonly argument: keyof PlanCells;
  readonly table: string;
  readonly row: number;
  readonly column: number;
  /** "Cork 6, Price". */
  readonly name: string;
  /** Such as mm; undefined where it has none. */
  readonly unit: string | undefined;
  /** What is in it now; undefined where it is blank. */
  readonly now: number | undefined;
  /** Whether it holds pairs, or another count. */
  readonly whole: boolean;
}

/**
 * The cell of a table that stands so far from its upper left corner.
 * @returns why no numbers can be tried in it, as a sentence, where none can
 */
export function triedCell(name: string, cells: Cells, row: number, column: number): TriedCell | string {
  const found = Object.entries(INPUT_TABLES as Record<keyof PlanCells, Table<Columns>>).find(
    ([, one]) => one.name === name,
  );
  const [headings = []] = cells;
  const line = cells[row];
  const heading = headings[column];
  if (!found || row < 1 || !line || isLeftOut(heading)) return 'Select a number below a heading of an input table.';
  const [argument, table] = found as [keyof PlanCells, Table<Columns>];
  const code = String(line[codeColumn(name, headings)] ?? '').trim();
  if (code === '' || headsSums(code)) return `Select a cell in a row of ${name} that is filled in.`;
  const words = String(heading).split('\n');
  const [key] = [...columnsIn(table, headings)].find(([, at]) => at === column) ?? [];
  const known = key === undefined ? undefined : table.columns[key];
  const size = !known && table.bySize !== undefined && Number.isFinite(Number(heading));
  if (known?.unread) return `${known.heading} is a sum; select one of its numbers.`;
  if (!size && known?.kind !== 'number') return `${words[0]} of ${code} takes no number; select a cell that does.`;
  const cell = line[column];
  const now = isLeftOut(cell) ? undefined : Number(cell);
  if (now !== undefined && !Number.isFinite(now))
    return `${words[0]} of ${code} holds no plain number; enter one first.`;
  return {
    argument,
    table: name,
    row,
    column,
    name: size ? `${code}, pairs in ${words[0]}` : `${code}, ${words[0]}`,
    unit: unitOf(table, line, headings, words[1], known?.unit),
    now,
    whole: size || known?.format === '0',
  };
}

/** Of a row that says itself what its value is in, that; else the heading's. */
function unitOf(
  table: Table<Columns>,
  line: readonly unknown[],
  headings: Cells[number],
  shown: string | undefined,
  known: string | undefined,
): string | undefined {
  const at = columnsIn(table, headings).get('unit');
  const own = at === undefined ? '' : String(line[at] ?? '');
  return own || shown || known;
}

/** The tables of a plan with another number in one cell; all others are the very same. */
export function withTried(cells: PlanCells, { argument, row, column }: TriedCell, value: number): PlanCells {
  const table = cells[argument] ?? [];
  return {
    ...cells,
    [argument]: table.map((line, i) => (i === row ? line.map((one, k) => (k === column ? value : one)) : line)),
  };
}
