import { fold } from '../core/plan/codes';
import type { PlanInput } from '../core/plan/inputs';
import type { SizeRun, StyleRun } from '../core/plan/runs';
import { Problem } from '../core/problem';
import type { TableCell } from './block-cell';
import { bare, type Cells, isBlank } from './cell';
import { readHeadings } from './headings';
import { pairageTable } from './pairage';
import { isSumRow, TOTAL } from './sums';

/**
 * The cells of Pairage that have one pair more, of a style and size, that no customer has ordered: in the first row of the
 * style that is for none and is not cut, else in a row of its own.
 * @throws Problem where no column has the size, or no row is blank above the sums
 */
export function addedPair(
  tables: ReadonlyMap<string, Cells>,
  { pairage }: Pick<PlanInput, 'pairage'>,
  { style: { code }, last }: StyleRun,
  { size, system }: SizeRun,
): readonly TableCell[] {
  const { name, argument, columns } = pairageTable;
  const [headings = [], ...lines] = tables.get(name) ?? [];
  const found = readHeadings(pairageTable, headings, lines);
  const { at, sizes } = found;
  const place = { argument, table: name };
  const column = sizes.find((one) => one.size === size)?.column;
  if (column === undefined) throw new Problem('invalid', place, `it has no column of size ${size} to add a pair to`);
  const own = pairage.find(
    (row) =>
      !row.cut &&
      row.customer === undefined &&
      fold(row.style) === fold(code) &&
      (row.system ?? last.system) === system,
  );
  if (own) {
    const before = bare(lines[own.row - 1]?.[column]);
    const pairs = isBlank(before) ? 0 : Number(before);
    return [{ table: name, row: own.row, column, value: pairs + 1 }];
  }
  const sums = lines.findIndex((line) => isSumRow(pairageTable, found, line));
  const above = sums < 0 ? lines : lines.slice(0, sums);
  const blank = above.findIndex((line) => line.every(isBlank));
  if (blank < 0 && sums >= 0) {
    throw new Problem('invalid', place, `it has no blank row above ${TOTAL} to add a pair in; insert one`);
  }
  const row = blank < 0 ? lines.length + 1 : blank + 1;
  const cell = (under: 'style' | 'system', value: string): TableCell => {
    const own = at.get(under);
    if (own === undefined) throw new Problem('invalid', place, `it has no column ${columns[under].heading}`);
    return { table: name, row, column: own, value };
  };
  return [
    cell('style', code),
    ...(system === last.system ? [] : [cell('system', system)]),
    { table: name, row, column, value: 1 },
  ];
}
