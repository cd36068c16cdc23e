import { fold } from '../core/plan/codes';
import type { PlanInput } from '../core/plan/inputs';
import type { SizeRun, StyleRun } from '../core/plan/runs';
import { Problem } from '../core/problem';
import type { TableCell } from './block-cell';
import { bare, type Cells } from './cell';
import { readHeadings } from './headings';
import { pairageTable } from './pairage';

/**
 * The cell of Pairage that has one pair more, of a style and size: in a row that has pairs of it and is not cut, the first.
 * @throws Problem where there is no such row
 */
export function addedPair(
  tables: ReadonlyMap<string, Cells>,
  { pairage }: Pick<PlanInput, 'pairage'>,
  { style: { code }, last }: StyleRun,
  { size, system }: SizeRun,
): TableCell {
  const { name, argument } = pairageTable;
  const [headings = [], ...lines] = tables.get(name) ?? [];
  const column = readHeadings(pairageTable, headings, lines).sizes.find((one) => one.size === size)?.column;
  const own = pairage.find(
    (row) =>
      !row.cut &&
      fold(row.style) === fold(code) &&
      (row.system ?? last.system) === system &&
      (row.pairs.get(size) ?? 0) > 0,
  );
  if (!own || column === undefined) {
    throw new Problem('invalid', { argument, table: name }, `it has no row of ${code} in ${size} to add a pair to`);
  }
  const before = bare(lines[own.row - 1]?.[column]);
  return { table: name, row: own.row, column, value: (typeof before === 'number' ? before : Number(before)) + 1 };
}
