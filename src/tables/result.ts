import type { LeftOut } from '../core/plan/left-out';
import { type PlaceWords, placeInWords } from '../core/problem';
import type { Cell } from './cell';

/** A column of a result table: its heading, its look, and what stands in it. */
export interface ResultColumn<T> {
  readonly heading: string;
  /** Second line of the heading; MONEY becomes the money's own sign. */
  readonly unit?: string;
  readonly format?: string;
  readonly width: number;
  readonly align: 'left' | 'right';
  /** Whether what is too long for its width goes on in further lines. */
  readonly wraps?: Wraps;
  /** What stands in the cell; undefined is blank. @param where words for places that it names */
  cell(line: T, where: PlaceWords): string | number | undefined;
  /** What stands in the sum row. */
  total?(lines: readonly T[], whole: boolean): string | number | undefined;
  /** What stands in the row of what is left out. */
  leftOut?(one: LeftOut, where: PlaceWords): string;
}

export interface ResultTable<T> {
  readonly name: string;
  readonly meaning: string;
  readonly columns: readonly ResultColumn<T>[];
}

/**
 * Everywhere, or only where rows become as high as their words by themselves; elsewhere those of a last column go on over
 * the blank cells beside it.
 */
export type Wraps = boolean | 'where rows follow';

/** Stands in units for the sheet's own money. */
export const MONEY = '¤';

interface ColumnLook {
  readonly unit?: string;
  readonly width?: number;
  readonly format?: string;
  readonly wraps?: Wraps;
}

export function words<T>(
  heading: string,
  cell: ResultColumn<T>['cell'],
  look: ColumnLook & Totals<T> = {},
): ResultColumn<T> {
  return { heading, align: 'left', width: 118, cell, ...look };
}

export function figure<T>(
  heading: string,
  cell: ResultColumn<T>['cell'],
  look: ColumnLook & Totals<T> = {},
): ResultColumn<T> {
  return { heading, align: 'right', width: 70, format: '0.0', cell, ...look };
}

interface Totals<T> {
  readonly total?: (lines: readonly T[], whole: boolean) => string | number | undefined;
  readonly leftOut?: NonNullable<ResultColumn<T>['leftOut']>;
}

/** A sum over lines of what may be missing; missing counts nothing. */
export function sumOf<T>(of: (line: T) => number | undefined): (lines: readonly T[]) => number {
  return (lines) => lines.reduce((sum, line) => sum + (of(line) ?? 0), 0);
}

/**
 * Writes a result table: headings first, then what is left out, then a row a line, then the sum row where the table has
 * one. Numbers keep all their digits: formats round, the table does not.
 * @param money the sheet's own money, for the headings
 * @param where words for the places that cells name
 */
export function writeTable<T>(
  table: ResultTable<T>,
  lines: readonly T[],
  money = '',
  leftOut: readonly LeftOut[] = [],
  where: PlaceWords = placeInWords,
): Cell[][] {
  const rows: Cell[][] = [table.columns.map((column) => headingOf(column, money))];
  for (const one of leftOut) rows.push(table.columns.map((column) => column.leftOut?.(one, where) ?? ''));
  for (const line of lines) rows.push(table.columns.map((column) => column.cell(line, where) ?? ''));
  if (table.columns.some(({ total }) => total)) {
    rows.push(table.columns.map((column) => column.total?.(lines, leftOut.length === 0) ?? ''));
  }
  return rows;
}

/** The heading as it stands in the cell, its unit in the second line. */
export function headingOf({ heading, unit }: { readonly heading: string; readonly unit?: string }, money = ''): string {
  const second = unit?.replace(MONEY, money || 'money').trim();
  return second ? `${heading}\n${second}` : heading;
}
