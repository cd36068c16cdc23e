import { fold } from '../core/plan/codes';
import { nearestCode } from '../core/plan/nearest-code';
import { Problem } from '../core/problem';
import { alternatives, type Cell, cellInWords, isBlank } from '../tables/cell';
import { INPUT_TABLES } from '../tables/input-tables';
import type { Column, Table } from '../tables/schema';

/** What a cell's list offers: words, or the codes that stand on a sheet. */
export interface Offered {
  readonly words: readonly string[];
  readonly sheet?: string | undefined;
}

/** More words than these are not gone through in a sentence. */
const MOST_NAMED = 12;

/** What is wrong with a list cell's entry and what would do, as the tables read it; undefined where they take it. */
export function refusalOf(entry: Cell, { words, sheet }: Offered): string | undefined {
  if (isBlank(entry)) return undefined;
  const column = sheet === undefined ? columnOf(words) : undefined;
  if (column) return readingOf(entry, column);
  const known = new Set(words.map(fold));
  if (known.has(fold(String(entry)))) return undefined;
  if (sheet === undefined) return `${cellInWords(entry)} is not known; ${offer(words)}`;
  const unknown = String(entry)
    .split(/[,;+]/)
    .filter((code) => code.trim() !== '' && !known.has(fold(code)))
    .map((code) => code.trim());
  const [first] = unknown;
  if (first === undefined) return undefined;
  const near = nearestCode(first, words);
  return `${cellInWords(first)} is not in ${sheet}; ${near === undefined ? 'enter it there, or choose from the list' : `is "${near}" meant?`}`;
}

/** Columns of the input tables by the words that they take, each on a line; the first that takes them. */
const columns = new Map(
  Object.values<Pick<Table, 'columns'>>(INPUT_TABLES)
    .flatMap((table) => Object.values(table.columns))
    .flatMap((column) => (column.choices ? [[column.choices.join('\n'), column] as const] : []))
    .reverse(),
);

/** The column of an input table that takes these words. */
function columnOf(words: readonly string[]): Column | undefined {
  return columns.get(words.join('\n'));
}

function readingOf(entry: Cell, column: Column): string | undefined {
  try {
    column.read(entry, { argument: column.heading });
    return undefined;
  } catch (error) {
    if (error instanceof Problem) return error.reason;
    throw error;
  }
}

function offer(words: readonly string[]): string {
  return words.length > MOST_NAMED ? 'choose from the list' : `use ${alternatives(words)}`;
}
