import { columnsIn } from './headings';
import { bare, type Cell } from './cell';
import { INPUT_TABLES } from './input-tables';
import type { Column, Columns, Table } from './schema';

/** What a heading of an input table is for. */
export interface HeadingWords {
  readonly heading: string;
  /** What stands under it, in which unit, which words it takes, and what a blank cell means. */
  readonly say: string;
}

/**
 * What the column of a table is for; undefined for a heading of the maker's own.
 * @param headings the table's first row
 * @param at the column, from 0
 */
export function headingInWords(name: string, headings: readonly Cell[], at: number): HeadingWords | undefined {
  const table = Object.values<Table<Columns>>(INPUT_TABLES).find((one) => one.name === name);
  const heading = String(bare(headings[at]) ?? '')
    .split('\n')[0]
    ?.trim();
  if (!table || !heading) return undefined;
  const found = [...columnsIn(table, headings)].find(([, column]) => column === at)?.[0];
  const column = found === undefined ? undefined : table.columns[found];
  if (column) return { heading: column.heading, say: aboutColumn(column) };
  return table.bySize && Number.isFinite(Number(heading)) ? { heading, say: `${table.bySize.meaning}.` } : undefined;
}

function aboutColumn({ meaning, unit, choices, required, unread, fallback }: Column): string {
  return [
    `${meaning}${unit ? `, ${unit}` : ''}.`,
    choices ? `One of: ${choices.join(', ')}.` : '',
    required ? 'Every row needs it.' : '',
    !unread && typeof fallback === 'number' ? `Blank: ${unit === '%' ? `${100 * fallback} %` : fallback}.` : '',
    !unread && typeof fallback === 'string' ? `Blank: ${fallback}.` : '',
  ]
    .filter(Boolean)
    .join(' ');
}
