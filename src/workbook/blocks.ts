import { itemAt } from '../core/item-at';
import type { Column, Table } from '../tables/schema';
import { TOTAL } from '../tables/sums';
import { headingOf, type ResultTable } from '../tables/result';
import { sumAcross, sumDown, sumOfAll } from './sum-formulas';
import type { Area, CellPlan, ListPlan, ResultPlan, TablePlan } from './workbook';

/** A piece of a sheet: its cells, and what a host must know of them. */
export interface Block {
  readonly cells: readonly CellPlan[];
  readonly tables?: readonly TablePlan[];
  readonly results?: readonly ResultPlan[];
  readonly lists?: readonly ListPlan[];
  /** Rows that it takes up. */
  readonly rows: number;
}

/** A cell's content in demo rows; undefined is blank. */
export type Value = string | number | undefined;

/** Rows of an input table by the names of its columns; sizes by their number. */
export type Rows = readonly Readonly<Record<string, Value | readonly string[]>>[];

/** The codes that stand in a table. */
export interface Codes {
  readonly of: string;
  readonly codes: readonly string[];
}

export interface InputOptions {
  /** Columns to show, in order; the rest is left out, as it may be. */
  readonly columns: readonly string[];
  /** Sizes across, for a table that has them. */
  readonly sizes?: readonly number[];
  /** Blank boxed rows after the rows given. */
  readonly spare: number;
  /** Further rows that belong to the table but are not boxed: what is typed there counts. */
  readonly beyond?: number;
  /** The same of columns. */
  readonly aside?: number;
  /** Whether a row of sums by size closes the table; it is part of it, so that no row between is left out. */
  readonly summed?: boolean;
  readonly money: string;
  /** Codes for columns that take those of another table, by column. */
  readonly lists?: Readonly<Record<string, Codes>>;
  /** Rows are greyed examples. */
  readonly examples?: boolean;
}

/** Boxed input cells under their headings. */
export function inputBlock(table: Table, rows: Rows, row: number, options: InputOptions): Block {
  const { columns, sizes = [], spare, beyond = 0, aside = 0, summed = false } = options;
  const { money, lists = {}, examples = false } = options;
  // Sizes stand where the table's sum column begins, else at its end.
  const sumAt = columns.indexOf('total');
  const sizesAt = sumAt < 0 ? columns.length : sumAt;
  const placed = placedColumns(table, columns, sizes, sizesAt);
  const boxed = rows.length + spare;
  const cells: CellPlan[] = [];
  const listPlans: ListPlan[] = [];
  placed.forEach(({ name, column, size }, at) => {
    const figures = size !== undefined || column?.kind === 'number';
    const align = figures ? 'right' : 'left';
    const unit = name === 'price' || name === 'stockCut' ? money : column?.unit;
    const heading = column ? headingOf({ heading: column.heading, ...(unit && { unit }) }) : size;
    cells.push({ row, column: at, role: 'heading', align, value: heading as string | number });
    const sum = name === 'total' && sizes.length > 0;
    // A part of a pair is a slip: it is shown as it stands.
    const format = size !== undefined ? GENERAL : column?.format;
    for (let r = 0; r < boxed; r++) {
      const line = row + 1 + r;
      if (sum) {
        const formula = sumAcross(line, sizesAt - 1, at);
        cells.push({ row: line, column: at, role: 'result', align: 'right', format: GENERAL, formula });
        continue;
      }
      const value = rows[r]?.[name];
      const plain = Array.isArray(value) ? value.join(', ') : (value as Value);
      cells.push({
        row: line,
        column: at,
        role: examples && plain !== undefined ? 'example' : 'input',
        align,
        ...(format !== undefined && { format }),
        ...(plain !== undefined && { value: plain }),
      });
    }
    const area = { row: row + 1, column: at, rows: boxed, columns: 1 };
    const codes = lists[name];
    if (column?.choices) listPlans.push({ area, choices: column.choices });
    else if (codes) listPlans.push({ area, choices: codes.codes, codesOf: codes.of });
  });
  if (summed) cells.push(...sumRow(row, row + 1 + boxed, sizesAt - 1, sumAt + sizes.length, placed.length));
  const own = 1 + boxed + Number(summed);
  return {
    cells,
    tables: [{ name: table.name, area: { row, column: 0, rows: own + beyond, columns: placed.length + aside } }],
    lists: listPlans,
    rows: own,
  };
}

interface PlacedColumn {
  readonly name: string;
  /** One of the two. */
  readonly column: Column | undefined;
  readonly size: number | undefined;
}

/** A table's columns from left to right, those of its sizes put in at a place. */
function placedColumns(
  table: Table,
  columns: readonly string[],
  sizes: readonly number[],
  sizesAt: number,
): readonly PlacedColumn[] {
  const own = columns.map((name) => ({ name, column: table.columns[name] as Column, size: undefined }));
  const ofSizes = sizes.map((size) => ({ name: String(size), column: undefined, size }));
  return [...own.slice(0, sizesAt), ...ofSizes, ...own.slice(sizesAt)];
}

/** Numbers with as many decimals as they have. */
const GENERAL = 'General';

/** Sums of each size and of all, between the headings and this row. */
function sumRow(top: number, row: number, before: number, last: number, columns: number): readonly CellPlan[] {
  return Array.from({ length: columns }, (_, column): CellPlan => {
    const cell = { row, column, role: 'total' as const };
    if (column === 0) return { ...cell, value: TOTAL };
    if (column <= before || column > last) return cell;
    const sum = { ...cell, align: 'right' as const, format: GENERAL };
    const formula = column < last ? sumDown(column, top, row) : sumOfAll(top, row, before, last);
    return { ...sum, formula };
  });
}

/**
 * A formula whose table spills under it; `room` rows are kept free for it.
 * @param over columns beside it into which its last column's words run on
 */
export function resultBlock<T>(table: ResultTable<T>, formula: string, row: number, room: number, over = 0): Block {
  const area: Area = { row, column: 0, rows: room, columns: table.columns.length };
  return {
    cells: [{ row, column: 0, role: 'heading', align: table.columns[0]?.align ?? 'left', formula }],
    results: [
      {
        area,
        columns: table.columns.map(({ align, format, wraps }) => ({
          align,
          ...(format !== undefined && { format }),
          ...(wraps && { wraps }),
        })),
        ...(table.columns.some(({ total }) => total) && { total: true }),
        ...(over > 0 && { over }),
      },
    ],
    rows: room,
  };
}

/** Roughly what a letter of a heading takes, and the room at both sides, px. */
const LETTER = 9;
const TITLE_LETTER = 11;
const MARGIN = 14;
/** A line of a heading, and the room above and below, px. */
const LINE = 17;
const LEAD = 4;

/** Width of a column that holds every word of its heading, px. */
export function widthFor(heading: string, width: number): number {
  const longest = Math.max(...heading.split(/\s+/).map((word) => word.length));
  return Math.max(width, Math.ceil(longest * LETTER + MARGIN));
}

/** Width of a column that holds a sheet's title, px. */
export function titleWidth(title: string): number {
  return Math.ceil(title.length * TITLE_LETTER + MARGIN);
}

/** Height of a row of headings, each wrapped in its column, px. */
export function headingHeight(headings: readonly string[], widths: readonly number[]): number {
  const lines = headings.map((heading, i) => {
    const room = (itemAt(widths, i) - MARGIN) / LETTER;
    return heading.split('\n').reduce((sum, line) => sum + linesOf(line, room), 0);
  });
  return LEAD + LINE * Math.max(2, ...lines);
}

function linesOf(text: string, room: number): number {
  let [lines, used] = [1, 0];
  for (const word of text.split(' ')) {
    if (used > 0 && used + 1 + word.length > room) [lines, used] = [lines + 1, word.length];
    else used += (used > 0 ? 1 : 0) + word.length;
  }
  return lines;
}
