import type { NotSummed } from '../core/plan/checks/check';
import { bare, type Cell, type Cells, isLeftOut } from './cell';
import type { Headings } from './headings';
import type { Columns, Table } from './schema';

/** Heads a row of sums. */
export const TOTAL = 'All';
const TOTALS: readonly string[] = [TOTAL, 'Total'].map((word) => word.toLowerCase());

/** Whether a code is taken for the heading of a row of sums. */
export function headsSums(code: string): boolean {
  return TOTALS.includes(code.trim().toLowerCase());
}

/** Where the table's own sums stand in a row; undefined where it has none. */
function sumsAt(table: Pick<Table<Columns>, 'columns'>, { at }: Headings): number | undefined {
  const [name] = Object.entries(table.columns).find(([, { unread }]) => unread) ?? [];
  return name === undefined ? undefined : at.get(name);
}

/**
 * Whether a row holds sums: its first column says so, and nothing else is said of it. Where that column has lost its
 * heading, any unheaded cell may say so: sums that are taken for a row would count everything twice.
 */
export function isSumRow(table: Table<Columns>, found: Headings, line: readonly Cell[]): boolean {
  const [first, ...others] = Object.entries(table.columns)
    .filter(([, { unread }]) => !unread)
    .map(([name]) => found.at.get(name));
  if (!Object.values(table.columns).some(({ unread }) => unread)) return false;
  if (others.some((at) => at !== undefined && !isLeftOut(line[at]))) return false;
  const headed = new Set([...found.at.values(), ...found.sizes.map(({ column }) => column)]);
  const words = first === undefined ? line.filter((_, at) => !headed.has(at)) : [line[first]];
  return words.some((cell) => {
    const word = bare(cell);
    return typeof word === 'string' && headsSums(word);
  });
}

interface Counted {
  readonly row: number;
  readonly bySize: ReadonlyMap<number, number>;
}

/**
 * What is read and stands where the table's own sums do not count it: rows below the row of sums, sizes beside their
 * column; sums that come to something else; and sums that are missing beside others, all that one column or row lacks at once.
 * @param sumRow the first row of sums
 */
export function notSummed(
  table: Table<Columns>,
  found: Headings,
  rows: readonly Counted[],
  cells: Cells,
  sumRow: number | undefined,
): readonly NotSummed[] {
  const at = sumsAt(table, found);
  const below = sumRow === undefined ? [] : rows.filter(({ row }) => row > sumRow).map(({ row }) => ({ row }));
  if (at === undefined) return below;
  const beside = found.sizes
    .filter(({ column, size }) => column > at && rows.some(({ bySize }) => (bySize.get(size) ?? 0) > 0))
    .map(({ size }) => ({ heading: String(size) }));
  const outside = [...below, ...beside];
  if (outside.length > 0) return outside;
  const heading = Object.values(table.columns).find(({ unread }) => unread)?.heading;
  const across = rows.map((line): Sum => ({ row: line.row, column: at, heading, wanted: total([line]) }));
  const down = (sumRow === undefined ? [] : found.sizes).map(({ column, size }): Sum => {
    const wanted = rows.reduce((sum, { bySize }) => sum + (bySize.get(size) ?? 0), 0);
    return { row: sumRow ?? 0, column, heading: String(size), wanted };
  });
  if (sumRow !== undefined) across.push({ row: sumRow, column: at, heading, wanted: total(rows) });
  return [across, down].flatMap((sums) => otherThan(sums, cells));
}

interface Sum {
  readonly row: number;
  readonly column: number;
  readonly heading: string | undefined;
  readonly wanted: number;
}

/** Those of a column or a row of sums that come to something else, or are blank where others stand. */
function otherThan(sums: readonly Sum[], cells: Cells): readonly NotSummed[] {
  const stands = ({ row, column }: Sum) => bare(cells[row]?.[column]);
  const some = sums.some((sum) => Number(stands(sum)) > 0);
  // 0 may be a blank cell.
  const missing = sums.filter((sum) => some && sum.wanted > 0 && isLeftOut(stands(sum)));
  const [first] = missing;
  const others = sums.flatMap((sum): readonly NotSummed[] => {
    const [now, { row, heading, wanted }] = [stands(sum), sum];
    return typeof now === 'number' && now !== 0 && now !== wanted ? [{ row, heading, found: now, wanted }] : [];
  });
  return first ? [...others, { row: first.row, heading: first.heading, missing }] : others;
}

/**
 * The size that heads sums of the rows, where no column has the heading of the table's own: in every row it holds what all
 * other sizes come to. A few sizes of a single row may come to another by chance.
 */
export function sizeOverSums(table: Table<Columns>, found: Headings, rows: readonly Counted[]): number | undefined {
  if (!Object.values(table.columns).some(({ unread }) => unread) || sumsAt(table, found) !== undefined)
    return undefined;
  const filled = rows.filter(({ bySize }) => bySize.size > 0);
  const others = filled.map(({ bySize }) => bySize.size - 1);
  if (!others.some((count) => count > 1) || (filled.length < 2 && !others.some((count) => count > 3))) return undefined;
  return found.sizes.find(({ size }) =>
    filled.every((row) => row.bySize.has(size) && 2 * (row.bySize.get(size) ?? 0) === total([row])),
  )?.size;
}

function total(lines: readonly Counted[]): number {
  return lines.reduce((sum, { bySize }) => [...bySize.values()].reduce((all, pairs) => all + pairs, sum), 0);
}
