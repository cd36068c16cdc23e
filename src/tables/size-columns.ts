import { Problem } from '../core/problem';
import { bare, type Cell, isBlank } from './cell';
import { columnsIn } from './headings';
import { pairageTable } from './pairage';

/** A column that is to come into a table: before which of its columns, from 0, and what heads it. */
export interface NewColumn {
  readonly before: number;
  readonly heading: number;
}

/** A column that is there, from 0, and what is to head it. */
export interface HeadedColumn {
  readonly column: number;
  readonly heading: number;
}

/** More columns than any run has. */
const MOST = 60;

/** Sizes that head columns of a row of headings, with their columns. */
export function sizesIn(headings: readonly Cell[]): readonly { readonly size: number; readonly at: number }[] {
  return headings.flatMap((cell, at) => {
    const size = Number(bare(cell));
    return !isBlank(cell) && Number.isFinite(size) ? [{ size, at }] : [];
  });
}

/**
 * Columns that the pairage lacks to have all sizes from one to another, each before the next larger size that is there, or
 * before the sum. Sizes that are there stay, within and beyond.
 * @param step 1 or 0.5
 * @throws Problem where these are no sizes, or the table has no sum of pairs for them to stand before
 */
export function missingSizes(headings: readonly Cell[], from: number, to: number, step: number): readonly NewColumn[] {
  const bad = (sentence: string) => new Problem('invalid', { argument: 'pairage', table: pairageTable.name }, sentence);
  const sound = [from, to].every((size) => size > 0 && Number.isInteger(2 * size)) && from <= to;
  if (!sound) throw bad('give the smallest and the largest size, such as 36 and 42.5');
  const count = Math.floor((to - from) / step) + 1;
  if (count > MOST) throw bad(`${count} columns are more than a run has; give sizes that are nearer to each other`);
  const there = sizesIn(headings);
  const total = columnsIn(pairageTable, headings).get('total');
  const end = total ?? (there.length > 0 ? Math.max(...there.map(({ at }) => at)) + 1 : undefined);
  if (end === undefined) throw bad(`it has no column ${pairageTable.columns.total.heading} for sizes to stand before`);
  return Array.from({ length: count }, (_, i) => from + i * step)
    .filter((size) => there.every((one) => one.size !== size))
    .map((size) => {
      const larger = there.filter((one) => one.size > size).sort((a, b) => a.size - b.size)[0];
      return { before: larger?.at ?? end, heading: size };
    });
}
