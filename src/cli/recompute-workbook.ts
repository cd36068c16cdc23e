import { type Book, type BookCell, type BookSheet, type BookValue, isFault } from '../exchange/xlsx/book';
import { cellAt } from '../exchange/xlsx/references';
import { openWorkbook } from '../exchange/open-workbook';
import { runName } from '../host/grid/as-entered';
import { bookOfGrid } from '../host/grid/book-of-grid';
import { gridOfBook } from '../host/grid/grid-of-book';
import { keptInWords } from '../host/grid/kept-values';
import { mergedInWords } from '../host/grid/merged-in-tables';
import { withWorkedOut } from '../host/grid/worked-out';
import type { Cells } from '../tables/cell';
import { VERDICT_WORDS } from '../tables/words';
import { cellAddress } from '../tables/cell-address';
import { sheetInFormula } from '../workbook/address';
import { plannedResult } from '../workbook/planned-results';
import type { FunctionsBundle } from './functions-bundle';
import { type InGrid, workOut } from './headless-grid';

/** A cell that is given another content before the workbook is worked out. */
export interface Change {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  /** null empties the cell; text with a leading "=" is a formula. */
  readonly content: string | number | boolean | null;
}

/** A table that a plan function has spilled. */
export interface SpilledTable {
  /** Such as Order. */
  readonly name: string;
  /** Of its first cell, with the sheet. */
  readonly at: string;
  readonly rows: readonly (readonly (string | number | boolean)[])[];
  readonly formats: readonly (string | undefined)[];
}

/** Something that must be put right, and the cell that shows it. */
export interface Wrong {
  readonly at: string;
  readonly what: string;
}

export interface Recomputed {
  readonly book: Book;
  /** What stands at the head of its first sheet. */
  readonly name: string;
  /** Its input tables by name, headings first. */
  readonly inputs: ReadonlyMap<string, Cells>;
  readonly tables: readonly SpilledTable[];
  readonly wrong: readonly Wrong[];
  /** What of the file is not in the one that is written. */
  readonly left: readonly string[];
  /** What of an older file was brought up to date, each a sentence. */
  readonly broughtUp: readonly string[];
}

/**
 * Works a workbook file out anew.
 * @param then what else is to be done with the workbook before it is written, such as a search
 * @throws Refusal where it cannot be read; Error where a change names no cell of it
 */
export async function recompute(
  file: Uint8Array,
  changes: readonly Change[],
  functions: FunctionsBundle,
  then?: InGrid,
): Promise<Recomputed> {
  const { book: read, left, changed: broughtUp } = openWorkbook(file);
  const book = changes.reduce(changed, read);
  let rewritten = false;
  let inputs: ReadonlyMap<string, Cells> = new Map();
  const { workbook, problemAt } = await workOut(gridOfBook(book, 'Workbook', 'workbook'), functions, async (host) => {
    rewritten = (await then?.(host)) ?? false;
    inputs = await host.tables();
    return rewritten;
  });
  const worked = bookOfGrid(workbook);
  // Where rows were put in, all that refers to them has moved, as when the page saves it.
  const now = rewritten ? worked : withWorkedOut(book, worked);
  return {
    book: { ...now, properties: worked.properties },
    name: runName(workbook),
    inputs,
    tables: now.sheets.flatMap(tablesOf),
    wrong: now.sheets.flatMap((sheet, at) => [
      ...faults(sheet, (cell, code) => problemAt(at, cell.row, cell.column, code)),
      ...checksToPutRight(sheet),
    ]),
    left: [...left, ...keptInWords(read)],
    broughtUp: [...broughtUp, ...mergedInWords(read)],
  };
}

/** Reads a change such as Run!D5=4. @throws Error where it is none */
export function readChange(text: string): Change {
  const found = /^(?:'((?:[^']|'')+)'|([^'!=]+))!(\$?[A-Z]{1,3}\$?\d+)=(.*)$/is.exec(text.trim());
  const place = cellAt(found?.[3]);
  if (!found || !place) {
    throw new Error(`"${text}" names no cell and its content. Write it like Run!D5=4, or 'My sheet'!B2=Cork 6.`);
  }
  const [, quoted, plain, , content = ''] = found;
  return { sheet: (quoted?.replaceAll("''", "'") ?? plain ?? '').trim(), ...place, content: typed(content.trim()) };
}

function typed(text: string): Change['content'] {
  if (text === '') return null;
  if (/^(true|false)$/i.test(text)) return text.toLowerCase() === 'true';
  return /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(text) ? Number(text) : text;
}

function changed(book: Book, { sheet: name, row, column, content }: Change): Book {
  const at = book.sheets.findIndex((sheet) => sheet.name.toUpperCase() === name.toUpperCase());
  const sheet = book.sheets[at];
  if (!sheet) {
    const names = book.sheets.map((one) => one.name).join(', ');
    throw new Error(`The workbook has no sheet "${name}"; it has ${names}.`);
  }
  const was = sheet.cells.find((cell) => cell.row === row && cell.column === column);
  if (was?.spilled) {
    throw new Error(`${sheetInFormula(name)}!${cellAddress(row, column)} is part of a table that is worked out.`);
  }
  const formula = typeof content === 'string' && content.startsWith('=');
  const now: BookCell = {
    row,
    column,
    ...(was?.look && { look: was.look }),
    ...(content !== null && (formula ? { formula: content } : { value: content })),
  };
  const cells = [...sheet.cells.filter((cell) => cell !== was), now].sort(
    (one, other) => one.row - other.row || one.column - other.column,
  );
  return { ...book, sheets: book.sheets.map((one, place) => (place === at ? { ...sheet, cells } : one)) };
}

const place = (sheet: BookSheet, { row, column }: BookCell) =>
  `${sheetInFormula(sheet.name)}!${cellAddress(row, column)}`;

function plain(value: BookValue | undefined): string | number | boolean {
  return value === undefined ? '' : isFault(value) ? value.fault : value;
}

function tablesOf(sheet: BookSheet): SpilledTable[] {
  return sheet.cells.flatMap((anchor) => {
    const planned = plannedResult(anchor.formula);
    if (!planned || !anchor.spill) return [];
    return [
      {
        name: planned.name,
        at: place(sheet, anchor),
        rows: rowsOf(sheet, anchor),
        formats: planned.columns.map(({ format }) => format),
      },
    ];
  });
}

function rowsOf({ cells }: BookSheet, { row, column, spill }: BookCell): (string | number | boolean)[][] {
  const { rows, columns } = spill ?? { rows: 1, columns: 1 };
  const table = Array.from({ length: rows }, () => new Array<string | number | boolean>(columns).fill(''));
  for (const cell of cells) {
    const line = table[cell.row - row];
    const at = cell.column - column;
    if (line && at >= 0 && at < columns) line[at] = plain(cell.value);
  }
  return table;
}

function faults(sheet: BookSheet, why: (cell: BookCell, code: string) => string | undefined): Wrong[] {
  return sheet.cells.flatMap((cell) => {
    if (cell.formula === undefined || !isFault(cell.value)) return [];
    const code = cell.value.fault;
    return [{ at: place(sheet, cell), what: `${code} ${why(cell, code) ?? ''}`.trim() }];
  });
}

/** The rows of Checks that are to be put right, in words. */
function checksToPutRight(sheet: BookSheet): Wrong[] {
  return sheet.cells.flatMap((anchor) => {
    if (plannedResult(anchor.formula)?.name !== 'Checks') return [];
    return rowsOf(sheet, anchor).flatMap((cells, at) => {
      if (!cells.includes(VERDICT_WORDS.putRight)) return [];
      const words = cells.filter((cell) => typeof cell === 'string' && cell !== '' && cell !== VERDICT_WORDS.putRight);
      return [{ at: place(sheet, { ...anchor, row: anchor.row + at }), what: words.join(': ') }];
    });
  });
}
