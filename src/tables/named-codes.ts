import { fold } from '../core/plan/codes';
import { nearestCode } from '../core/plan/nearest-code';
import type { Cell, Cells } from './cell';
import { columnsIn } from './headings';
import { INPUT_TABLES } from './input-tables';
import type { Columns, Table } from './schema';

type TableArgument = keyof typeof INPUT_TABLES;

/** A cell of a table's block, its headings in row 0. */
export interface BlockPlace {
  readonly table: string;
  readonly row: number;
  readonly column: number;
}

/** What is to be written into a cell. */
export interface CellChange extends BlockPlace {
  readonly value: string;
}

/** A code that cells name and that its table does not define. */
export interface LostCode {
  readonly code: string;
  /** The name of the table that should define it. */
  readonly definedIn: string;
  readonly cells: readonly BlockPlace[];
  /** Codes that it may have been renamed to, the likeliest first. */
  readonly meant: readonly string[];
}

const OF_STYLES = ['insole', 'welt', 'midsole', 'sole', 'lifts', 'platform', 'outsole', 'topPiece', 'cover'];

/** Columns in which a table's codes are named, by table. */
const NAMED_IN: Readonly<Partial<Record<TableArgument, Partial<Record<TableArgument, readonly string[]>>>>> = {
  stock: { styles: OF_STYLES, layouts: ['stock'], offcuts: ['stock'], offers: ['stock'] },
  styles: { pairage: ['style'] },
  lasts: { styles: ['last'] },
};

/** Costs and times name a style, a stock or a material: what is in no table may be none of them. */
const ALSO_FOR: readonly TableArgument[] = ['stock', 'styles'];

/** More than this many and a guess helps nobody. */
const MOST_MEANT = 3;

/**
 * Codes that are named and nowhere defined, such as after a code was renamed in its own table.
 * @param tables the input tables by name, headings first
 */
export function lostCodes(tables: ReadonlyMap<string, Cells>): readonly LostCode[] {
  return (Object.keys(NAMED_IN) as TableArgument[]).flatMap((argument) => {
    const own = INPUT_TABLES[argument];
    const defined = codesOf(argument, tables);
    if (defined.length === 0) return [];
    const known = new Set(defined.map(fold));
    const lost = new Map<string, { code: string; cells: BlockPlace[] }>();
    const named = new Set<string>();
    for (const { place, cell } of namingCells(argument, tables)) {
      for (const code of codesIn(cell)) {
        named.add(fold(code));
        if (known.has(fold(code))) continue;
        const found = lost.get(fold(code));
        if (found) found.cells.push(place);
        else lost.set(fold(code), { code, cells: [place] });
      }
    }
    const idle = defined.filter((code) => !named.has(fold(code)));
    return [...lost.values()].map(({ code, cells }) => ({
      code,
      definedIn: own.name,
      cells,
      meant: meantBy(code, defined, idle),
    }));
  });
}

/** The nearest, else those that nothing names, where they are few. */
function meantBy(code: string, defined: readonly string[], idle: readonly string[]): readonly string[] {
  const near = nearestCode(code, defined);
  if (near !== undefined) return [near];
  return idle.length <= MOST_MEANT ? idle : [];
}

/** The cells in which a code is named, with another in its place; other codes of the same cell stay as they are. */
export function renamedIn(tables: ReadonlyMap<string, Cells>, lost: LostCode, to: string): readonly CellChange[] {
  const argument = (Object.keys(INPUT_TABLES) as TableArgument[]).find(
    (one) => INPUT_TABLES[one].name === lost.definedIn,
  );
  if (!argument) return [];
  const places = [...namingCells(argument, tables)];
  if (ALSO_FOR.includes(argument)) for (const one of cellsUnder('rates', ['scope'], tables)) places.push(one);
  return places.flatMap(({ place, cell }) => {
    const value = replaced(String(cell), lost.code, to);
    return value === String(cell) ? [] : [{ ...place, value }];
  });
}

/** One or more codes of a cell, parted as the reader parts them. */
function codesIn(cell: Cell): readonly string[] {
  return String(cell)
    .split(PARTING)
    .map((code) => code.trim())
    .filter(Boolean);
}

const PARTING = /[,;+]/;

function replaced(text: string, from: string, to: string): string {
  return text
    .split(/([,;+])/)
    .map((part) => (fold(part) === fold(from) ? part.replace(part.trim(), () => to) : part))
    .join('');
}

/** The codes that tables define which others name, by the table's name. */
export function definedCodes(tables: ReadonlyMap<string, Cells>): ReadonlyMap<string, readonly string[]> {
  const defining = Object.keys(NAMED_IN) as TableArgument[];
  return new Map(defining.map((argument) => [INPUT_TABLES[argument].name, codesOf(argument, tables)]));
}

function codesOf(argument: TableArgument, tables: ReadonlyMap<string, Cells>): readonly string[] {
  return [...cellsUnder(argument, ['code'], tables)].map(({ cell }) => String(cell).trim()).filter(Boolean);
}

function* namingCells(argument: TableArgument, tables: ReadonlyMap<string, Cells>): Generator<Named> {
  for (const [by, columns] of Object.entries(NAMED_IN[argument] ?? {})) {
    yield* cellsUnder(by as TableArgument, columns, tables);
  }
}

interface Named {
  readonly place: BlockPlace;
  readonly cell: Cell;
}

/** Cells with words under some of a table's columns. */
function* cellsUnder(
  argument: TableArgument,
  columns: readonly string[],
  tables: ReadonlyMap<string, Cells>,
): Generator<Named> {
  const known: Table<Columns> = INPUT_TABLES[argument];
  const cells = tables.get(known.name);
  if (!cells) return;
  const at = columnsIn(known, cells[0] ?? []);
  for (const name of columns) {
    const column = at.get(name);
    if (column === undefined) continue;
    for (let row = 1; row < cells.length; row++) {
      const cell = cells[row]?.[column];
      if (typeof cell !== 'string' || cell.trim() === '' || cell.startsWith('#')) continue;
      yield { place: { table: known.name, row, column }, cell };
    }
  }
}
