import { itemAt } from '../core/item-at';
import type { Cell, Cells } from '../tables/cell';
import { type Headings, readHeadings } from '../tables/headings';
import { foreignUnit } from '../tables/heading-unit';
import { INPUT_TABLES } from '../tables/input-tables';
import type { Column, Columns, Table } from '../tables/schema';

/** Text of a file in whatever letters it was saved: by its mark, else UTF-8, else the older Western letters. */
export function textOf(bytes: Uint8Array): string {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return new TextDecoder('utf-16le').decode(bytes);
  if (first === 0xfe && second === 0xff) return new TextDecoder('utf-16be').decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}

/**
 * Rows of a text whose fields are parted by tabs, semicolons or commas (CSV, TSV; RFC 4180 but for the mark between
 * fields): the mark that the first line names (sep=;), else the one that the first lines have most alike. Blank rows at the end are left out.
 */
export function readDelimited(text: string): string[][] {
  const content = text.replace(/^\uFEFF/, '');
  const said = SAID_MARK.exec(content);
  const rows = said ? fieldsOf(content.slice(said[0].length), itemAt(said, 1)) : fieldsOf(content, markOf(content));
  while (rows.at(-1)?.every((field) => field.trim() === '')) rows.pop();
  return rows;
}

/** A first line that says which mark parts the fields, as spreadsheet programs write and read it. */
const SAID_MARK = /^"?sep=([^\r\n"\w])"?[^\S\r\n]*(?:\r\n|\r|\n)/i;
const MARKS = ['\t', ';', ','] as const;

function markOf(text: string): string {
  const start = text.slice(0, 20_000);
  // A comma may part decimals, so a semicolon or a tab that parts the headings goes before it.
  return MARKS.find((mark) => (fieldsOf(start, mark)[0]?.length ?? 0) > 1) ?? ',';
}

function fieldsOf(text: string, mark: string): string[][] {
  const rows: string[][] = [];
  let [row, field, quoted] = [[] as string[], '', false];
  for (let at = 0; at < text.length; at++) {
    const letter = itemAt(text, at);
    if (quoted) {
      if (letter !== '"') field += letter;
      else if (text[at + 1] === '"') field += itemAt(text, ++at);
      else quoted = false;
    } else if (letter === '"' && field.trim() === '') [field, quoted] = ['', true];
    else if (letter === mark || letter === '\n' || letter === '\r') {
      row.push(field);
      field = '';
      if (letter === mark) continue;
      if (letter === '\r' && text[at + 1] === '\n') at++;
      rows.push(row);
      row = [];
    } else field += letter;
  }
  if (field !== '' || row.length > 0) rows.push([...row, field]);
  return rows;
}

/** Rows for an input table, in the order of the columns that it has in the workbook. */
export interface RowsForTable {
  readonly table: string;
  readonly rows: Cells;
  /** What was not understood, each a sentence. */
  readonly remarks: readonly string[];
}

/** Rows before the headings that are passed over, such as a title. */
const MOST_BEFORE = 10;

/**
 * Which input table the rows of another program are for, and how they stand in it.
 * @param tables the workbook's, headings first
 * @throws Error where no table has such headings
 */
export function rowsForTable(given: readonly (readonly string[])[], tables: ReadonlyMap<string, Cells>): RowsForTable {
  const all: readonly Table<Columns>[] = Object.values(INPUT_TABLES as Record<string, Table<Columns>>);
  const found = given.slice(0, MOST_BEFORE).flatMap((line, at) =>
    all
      .filter(({ name }) => tables.has(name))
      .map((table) => ({ at, table, headings: readHeadings(table, line.map(trimmed)) }))
      .filter(({ headings }) => headings.problems.length === 0),
  );
  const score = ({ headings }: { headings: Headings }) =>
    headings.at.size + headings.sizes.length - headings.unknown.length / 2;
  const best = found.sort((one, other) => score(other) - score(one))[0];
  if (!best) {
    throw new Error(
      'its first row heads no table: give it the headings that Styles, Lasts, Bottom stock or another has',
    );
  }
  const own = tables.get(best.table.name)?.[0] ?? [];
  const { places, left } = placesOf(best.table, best.headings, itemAt(given, best.at), own);
  const foreign = foreignUnits(best.table, best.headings);
  const lines = given.slice(best.at + 1).filter((line) => line.some((field) => field.trim() !== ''));
  const mark = decimalMark(lines);
  const rows = lines.map((line) =>
    own.map((_, column): Cell => {
      const from = places.get(column) ?? -1;
      return content(line[from], mark, foreign.get(from)?.factor);
    }),
  );
  return {
    table: best.table.name,
    rows,
    remarks: [
      ...left.map((heading) => `The column “${heading}” was left out: ${best.table.name} has none of that name.`),
      ...[...foreign.values()].map(({ heading, unit, wanted }) => `${heading} was turned from ${unit} into ${wanted}.`),
    ],
  };
}

interface TurnedColumn {
  readonly heading: string;
  readonly unit: string;
  readonly wanted: string;
  readonly factor: number;
}

/**
 * The file's columns, from 0, whose headings name another unit than the table has.
 * @throws Error where a unit measures something else
 */
function foreignUnits(table: Table<Columns>, { at, units }: Headings): ReadonlyMap<number, TurnedColumn> {
  return new Map(
    [...at].flatMap(([name, column]) => {
      const { heading, unit: wanted = '', ...rest } = table.columns[name] as Column;
      const foreign = foreignUnit({ ...rest, unit: wanted }, units[name]);
      if (!foreign) return [];
      const { unit, factor } = foreign;
      if (factor === undefined) throw new Error(`its column ${heading} is headed ${unit}; give it in ${wanted}`);
      return [[column, { heading, unit, wanted, factor }] as const];
    }),
  );
}

/** The file's decimal mark, as those of its numbers tell that can be read in one way only; undefined where none does. */
function decimalMark(lines: readonly (readonly string[])[]): '.' | ',' | undefined {
  const told = new Set(
    lines.flat().flatMap((field) => {
      const text = trimmed(field);
      const decimals = /^-?\d*([.,])(?:\d{1,2}|\d{4,})$/.exec(text) ?? /^-?0([.,])\d{3}$/.exec(text);
      return (decimals ?? /^-?\d{1,3}(?:[.,\s’']\d{3})+([.,])\d+$/.exec(text))?.[1] ?? [];
    }),
  );
  return told.size === 1 ? ([...told][0] as '.' | ',') : undefined;
}

/** For each column of the workbook's table, the file's; and the file's headings that lead to none. */
function placesOf(table: Table<Columns>, headings: Headings, line: readonly string[], own: readonly Cell[]) {
  const ours = readHeadings(table, own);
  const places = new Map<number, number>();
  for (const [name, column] of headings.at) {
    const to = ours.at.get(name);
    if (to !== undefined) places.set(to, column);
  }
  for (const { size, column } of headings.sizes) {
    const to = ours.sizes.find((one) => one.size === size)?.column;
    if (to !== undefined) places.set(to, column);
  }
  const used = new Set(places.values());
  const left = line.filter((heading, column) => heading.trim() !== '' && !used.has(column)).map(trimmed);
  return { places, left };
}

/**
 * Plain numbers as numbers; whatever else it is, the table's reader understands it or asks.
 * @param mark the file's decimal mark, where it is known
 * @param factor from the file's unit to the table's
 */
function content(field: string | undefined, mark: '.' | ',' | undefined, factor: number | undefined): Cell {
  const text = trimmed(field ?? '');
  if (text === '') return null;
  const number = plainNumber(text, mark);
  if (number === undefined) return text;
  // So that 2.54 of a factor of binary digits does not show.
  return factor === undefined ? number : Number((number * factor).toPrecision(12));
}

function plainNumber(text: string, mark: '.' | ',' | undefined): number | undefined {
  if (!/^-?\d+(?:[.,]\d+)?$/.test(text) || /^-?0\d/.test(text)) return undefined;
  const either = /^-?[1-9]\d{0,2}([.,])\d{3}$/.exec(text)?.[1];
  if (either === undefined || either === mark) return Number(text.replace(',', '.'));
  // One mark and three digits are thousands where the other mark sets off decimals; else it is left as it is.
  return mark === undefined ? undefined : Number(text.replace(either, ''));
}

function trimmed(text: string): string {
  return text.replace(/^[\s\u00A0]+|[\s\u00A0]+$/g, '');
}
