import type { Booking, LeftOfSheet } from '../core/plan/booking';
import { fold } from '../core/plan/codes';
import type { OffcutRow } from '../core/plan/inputs';
import { Problem } from '../core/problem';
import type { TableCell } from './block-cell';
import { type Cell, type Cells, isBlank } from './cell';
import { columnsIn } from './headings';
import { INPUT_TABLES } from './input-tables';
import { layoutsTable } from './layouts';
import { offcutsTable } from './offcuts';
import { pairageTable } from './pairage';
import type { Columns, Table } from './schema';

/** An offcut under the code by which it will be found. */
export interface NamedOffcut {
  readonly code: string;
  readonly left: LeftOfSheet;
}

type Tables = ReadonlyMap<string, Cells>;

/** Gives what is left of sheets a code each: its stock and a number that no offcut has yet. */
export function namedOffcuts(left: readonly LeftOfSheet[], before: readonly OffcutRow[]): readonly NamedOffcut[] {
  const taken = new Set(before.map(({ code }) => fold(code)));
  return left.map((one) => {
    let number = 1;
    const code = () => `${one.cutting.stock.code} offcut ${number}`;
    while (taken.has(fold(code()))) number++;
    taken.add(fold(code()));
    return { code: code(), left: one };
  });
}

/**
 * The cells that change when a cutting is booked: sheets on hand, offcuts that go and that come, pairs that are cut, and
 * layouts that have served.
 * @param kept what of the sheets goes to the offcuts
 * @param place where it is put, if the table asks for it
 * @throws Problem where a table lacks the column for it
 */
export function bookedCells(
  tables: Tables,
  booking: Booking,
  kept: readonly NamedOffcut[],
  place = '',
): readonly TableCell[] {
  return [
    ...onHandCells(tables, booking),
    ...offcutCells(tables, booking, kept, place),
    ...cutCells(tables, booking),
    ...servedLayouts(tables, booking),
  ];
}

function onHandCells(tables: Tables, { sheets }: Booking): readonly TableCell[] {
  return sheets
    .filter(({ offer, onHand }) => onHand !== offer.onHand)
    .map(({ offer, onHand }): TableCell => {
      const table = offer.offer === undefined ? INPUT_TABLES.stock : INPUT_TABLES.offers;
      const column = columnOf(tables, table, 'onHand');
      return { table: table.name, row: offer.offer ?? offer.row, column, value: onHand };
    });
}

function offcutCells(
  tables: Tables,
  { used }: Booking,
  kept: readonly NamedOffcut[],
  place: string,
): readonly TableCell[] {
  const { name } = offcutsTable;
  const [headings = [], ...lines] = tables.get(name) ?? [];
  const gone = new Set(used.map(({ row }) => row));
  const cleared = [...gone].flatMap((row) => headings.map((_, column) => cell(name, row, column, '')));
  if (kept.length === 0) return cleared;
  const free = lines.flatMap((line, i) => (gone.has(i + 1) || line.every(isBlank) ? [i + 1] : []));
  const at = {
    code: columnOf(tables, offcutsTable, 'code'),
    stock: columnOf(tables, offcutsTable, 'stock'),
    length: columnOf(tables, offcutsTable, 'length'),
    width: columnOf(tables, offcutsTable, 'width'),
  };
  const placeAt = columnsIn(offcutsTable, headings).get('place');
  const written = kept.flatMap(({ code, left: { cutting, length, width } }, i) => {
    const row = free[i] ?? lines.length + 1 + i - free.length;
    return [
      cell(name, row, at.code, code),
      cell(name, row, at.stock, cutting.stock.code),
      cell(name, row, at.length, length),
      cell(name, row, at.width, width),
      ...(place !== '' && placeAt !== undefined ? [cell(name, row, placeAt, place)] : []),
    ];
  });
  const overwritten = new Set(written.map(({ row, column }) => `${row} ${column}`));
  return [...cleared.filter(({ row, column }) => !overwritten.has(`${row} ${column}`)), ...written];
}

/**
 * Pairs that are cut by row, and what their stock cost; a table of before is given the columns where it has blank ones.
 */
function cutCells(tables: Tables, { rows }: Booking): readonly TableCell[] {
  const { name, columns } = pairageTable;
  const cells = tables.get(name) ?? [];
  const [headings = []] = cells;
  const known = columnsIn(pairageTable, headings);
  const blank = headings.flatMap((_, at) => (cells.every((line) => isBlank(line[at])) ? [at] : []));
  return (['cut', 'stockCut'] as const).flatMap((one) => {
    const { heading } = columns[one];
    const column = known.get(one) ?? blank.shift();
    if (column === undefined) throw lacking(pairageTable, heading);
    return [
      ...(known.has(one) ? [] : [cell(name, 0, column, heading)]),
      ...rows.map(({ row, pairs, stock }) =>
        cell(name, row.row, column, one === 'cut' ? pairs : stock === undefined ? '' : money(stock)),
      ),
    ];
  });
}

/** As exact as sums of money need it. */
function money(exact: number): number {
  return Number(exact.toFixed(4));
}

function servedLayouts(tables: Tables, { accounts }: Booking): readonly TableCell[] {
  const { name } = layoutsTable;
  const [headings = [], ...lines] = tables.get(name) ?? [];
  const at = columnsIn(layoutsTable, headings).get('stock');
  if (at === undefined) return [];
  const cut = new Set(accounts.map(({ cutting }) => fold(cutting.stock.code)));
  return lines.flatMap((line, i) =>
    cut.has(fold(String(line[at] ?? ''))) ? headings.map((_, column) => cell(name, i + 1, column, '')) : [],
  );
}

function columnOf(tables: Tables, table: Table<Columns>, column: string): number {
  const headings: readonly Cell[] = tables.get(table.name)?.[0] ?? [];
  const at = columnsIn(table, headings).get(column);
  if (at === undefined) throw lacking(table, table.columns[column]?.heading ?? column);
  return at;
}

function lacking({ argument, name }: Pick<Table, 'argument' | 'name'>, heading: string): Problem {
  const sentence = `it has no column ${heading} to book into; head a blank column beside it so, then book again`;
  return new Problem('invalid', { argument, table: name }, sentence);
}

function cell(table: string, row: number, column: number, value: string | number): TableCell {
  return { table, row, column, value };
}
