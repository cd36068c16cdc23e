import { type Token, tokenize } from '@borgar/fx';
import type { Book, BookCell, BookName, BookSheet, BookValue } from '../../exchange/xlsx/book';
import { isFault } from '../../exchange/xlsx/book';
import { isEdge } from '../../exchange/xlsx/stored-formula';
import { cellAddress } from '../../tables/cell-address';
import { sheetInFormula } from '../../workbook/address';
import { GRID_FUNCTIONS } from './grid-functions';

/** What a formula of the grid begins with that keeps the value of one that the grid cannot work out. */
const KEEPS = '=IF(TRUE,';
/** Larger tables would make a formula that is no use to anybody. */
const MOST_CELLS = 20_000;
/** So many cells are named. */
const NAMED = 8;

/**
 * A workbook of a file for the grid: a formula that the grid cannot work out, such as one with a function of another add-in
 * or a link to another workbook, keeps the value that it came with, as =IF(TRUE,value,formula): whatever hangs on it goes
 * on with that, and its references move as those of other formulas do.
 */
export function withKeptValues(book: Book): Book {
  const names = new NamesKnown(book.names);
  return {
    ...book,
    sheets: book.sheets.map((sheet) => {
      const kept = keptOn(sheet, names);
      if (kept.size === 0) return sheet;
      const spilled = spilledValues(sheet, kept);
      const cells = sheet.cells.map((cell): BookCell => {
        const value = kept.has(cell) ? literalOf(cell, spilled) : undefined;
        return value === undefined ? cell : { ...cell, formula: `${KEEPS}${value},${cell.formula?.slice(1)})` };
      });
      return { ...sheet, cells };
    }),
  };
}

/** A workbook of the grid for a file: the formulas as the file had them. */
export function withoutKeptValues(book: Book): Book {
  if (!book.sheets.some(({ cells }) => cells.some(({ formula }) => formula?.startsWith(KEEPS)))) return book;
  const names = new NamesKnown(book.names);
  const bare = (cell: BookCell): BookCell => {
    const formula = cell.formula?.startsWith(KEEPS) ? formulaKept(cell.formula) : undefined;
    return formula === undefined || names.canWorkOut(formula) ? cell : { ...cell, formula };
  };
  return { ...book, sheets: book.sheets.map((sheet) => ({ ...sheet, cells: sheet.cells.map(bare) })) };
}

/** Which cells of a file keep the values that they came with, as part of a sentence; nothing where all are worked out. */
export function keptInWords(book: Book): readonly string[] {
  const names = new NamesKnown(book.names);
  const all = book.sheets.flatMap((sheet) =>
    [...keptOn(sheet, names)].map(({ row, column }) => `${sheetInFormula(sheet.name)}!${cellAddress(row, column)}`),
  );
  if (all.length === 0) return [];
  const more = all.length - NAMED;
  const cells = more > 0 ? `${all.slice(0, NAMED).join(', ')} and ${more} more` : all.join(', ');
  return [`how to work out ${cells}, which keep their formulas and the values they came with`];
}

function keptOn({ cells }: BookSheet, names: NamesKnown): ReadonlySet<BookCell> {
  return new Set(
    cells.filter(
      ({ formula, value, spill }) =>
        formula !== undefined &&
        value !== undefined &&
        !isFault(value) &&
        (spill?.rows ?? 1) * (spill?.columns ?? 1) <= MOST_CELLS &&
        !names.canWorkOut(formula),
    ),
  );
}

type Values = ReadonlyMap<string, BookValue | undefined>;

/** What stands in cells over which tables spill, where a value that is kept does. */
function spilledValues({ cells }: BookSheet, kept: ReadonlySet<BookCell>): Values {
  if (![...kept].some(({ spill }) => spill)) return new Map();
  return new Map(cells.filter(({ spilled }) => spilled).map((cell) => [`${cell.row} ${cell.column}`, cell.value]));
}

/** A cell's value as a formula has it, a table's as an array. */
function literalOf({ row, column, value, spill }: BookCell, spilled: Values): string | undefined {
  if (!spill) return value === undefined ? undefined : literal(value);
  const line = (down: number) =>
    Array.from({ length: spill.columns }, (_, across) =>
      literal(down + across === 0 ? value : spilled.get(`${row + down} ${column + across}`)),
    );
  return `{${Array.from({ length: spill.rows }, (_, down) => line(down).join(',')).join(';')}}`;
}

function literal(value: BookValue | undefined): string {
  if (value === undefined) return '""';
  if (isFault(value)) return value.fault;
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  return typeof value === 'number' ? String(value) : `"${value.replaceAll('"', '""')}"`;
}

/** The formula whose value another one keeps, if that is what it does. */
function formulaKept(formula: string): string | undefined {
  const tokens = tokenize(formula.slice(KEEPS.length), { mergeRefs: true });
  let depth = 0;
  const comma = tokens.findIndex(({ type, value }) => {
    if (type !== 'operator') return false;
    if (value === '{') depth++;
    if (value === '}') depth--;
    return value === ',' && depth === 0;
  });
  const plain = tokens.slice(0, comma).every(({ type, value }) => isPlain(type) || '{},;-'.includes(value));
  const last = tokens.at(-1);
  if (comma < 1 || !plain || last?.value !== ')') return undefined;
  return `=${tokens
    .slice(comma + 1, -1)
    .map(({ value }) => value)
    .join('')}`;
}

function isPlain(type: string): boolean {
  return type === 'number' || type === 'string' || type === 'bool' || type === 'error';
}

/** A workbook's names: those that stand for what the grid cannot work out are like it. */
class NamesKnown {
  private readonly names = new Set<string>();

  constructor(given: readonly BookName[]) {
    let waiting = given.map(({ name, meaning }) => ({ name: name.toUpperCase(), meaning: `=${meaning}` }));
    // A name may stand for others, which come before it or after.
    for (let before = -1; before !== waiting.length && waiting.length > 0;) {
      before = waiting.length;
      waiting = waiting.filter(({ name, meaning }) => !this.canWorkOut(meaning) || !this.names.add(name));
    }
  }

  canWorkOut(formula: string): boolean {
    const tokens = tokenize(formula, { mergeRefs: true });
    const own = ownNames(tokens);
    return tokens.every(({ type, value }) => {
      if (type === 'func') return isKnown(value) || this.has(value) || own.has(value.toUpperCase());
      if (type === 'range_named') return this.has(value) || own.has(value.toUpperCase());
      if (type === 'range' || type === 'range_beam' || type === 'range_ternary') return isHere(value);
      return type !== 'structured' && !(type === 'unknown' && /[[\]'\\]/.test(value));
    });
  }

  private has(name: string): boolean {
    return this.names.has(name.slice(name.lastIndexOf('!') + 1).toUpperCase());
  }
}

function isKnown(name: string): boolean {
  const plain = name.toUpperCase();
  return GRID_FUNCTIONS.has(plain) || plain === 'SINGLE' || plain.startsWith('SOLEBENCH.');
}

/** Names that a formula gives itself by LET and LAMBDA: each is an argument by itself, and another follows. */
function ownNames(all: readonly Token[]): ReadonlySet<string> {
  const tokens = all.filter(({ type }) => type !== 'whitespace');
  const gives = tokens.some(({ type, value }) => type === 'func' && /^(LET|LAMBDA)$/i.test(value));
  const named = tokens.filter(
    ({ type }, at) => type === 'range_named' && isEdge(tokens[at - 1]) && tokens[at + 1]?.value === ',',
  );
  return new Set(gives ? named.map(({ value }) => value.toUpperCase()) : []);
}

/** Whether a reference leads to one sheet of the same workbook. */
function isHere(reference: string): boolean {
  const sheet = reference.slice(0, reference.lastIndexOf('!') + 1);
  return !/[[\]:]/.test(sheet);
}
