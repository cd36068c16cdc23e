import { type Cells, isBlank, isNought } from './cell';
import type { Headings } from './headings';
import { blankIsNoNought, type Column, type Columns, type Table } from './schema';

/**
 * Whether a table's blank cells have all arrived as 0, as some versions of the office suite hand them over: none is blank,
 * and 0 stands in the place of words.
 * @param lines below the headings
 */
export function noughtsForBlanks(table: Table<Columns>, found: Headings, lines: Cells): boolean {
  const columns = columnsOf(table, found).filter(({ unread }) => !unread);
  const read = [...columns.map(({ at }) => at), ...found.sizes.map(({ column }) => column)];
  if (lines.some((line) => read.some((at) => isBlank(line[at])))) return false;
  return columns.some(
    ({ kind, noughtIsBlank, at }) => kind !== 'number' && noughtIsBlank && lines.some((line) => isNought(line[at])),
  );
}

/** Whether 0 is then taken for a blank cell in a column although it could be an answer: what must be entered stays. */
export function doubtful(column: Column): boolean {
  return blankIsNoNought(column) && !column.required;
}

/** Headings under which a 0 that may have been entered was taken for a blank cell. @param rows those that say something */
export function doubtfulHeadings(table: Table<Columns>, found: Headings, rows: Cells): readonly string[] {
  return columnsOf(table, found)
    .filter((column) => doubtful(column) && rows.some((row) => isNought(row[column.at])))
    .map(({ heading }) => heading);
}

function columnsOf(table: Table<Columns>, { at }: Headings): readonly (Column & { readonly at: number })[] {
  return [...at].map(([name, column]) => ({ ...(table.columns[name] as Column), at: column }));
}
