import { columnsIn } from './headings';
import { bare, type Cell, type NumberRule } from './cell';
import { decimals } from './figures';
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

/** A column of an input table, as help has it. */
export interface ColumnWords extends HeadingWords {
  readonly table: string;
}

/** Every column of every input table, in the order of the tables; sizes as one column. */
export function columnsInWords(): readonly ColumnWords[] {
  return Object.values<Table<Columns>>(INPUT_TABLES).flatMap(({ name, columns, bySize }) => [
    ...Object.values(columns).map((column) => ({ table: name, heading: column.heading, say: aboutColumn(column) })),
    ...(bySize ? [{ table: name, heading: 'A size, such as 38', say: `${bySize.meaning}.` }] : []),
  ]);
}

function aboutColumn({ meaning, unit, bounds, choices, required, unread, fallback }: Column): string {
  return [
    `${meaning}${unit ? `, ${unit}` : ''}.`,
    bounds ? rangeInWords(bounds) : '',
    choices ? `One of: ${choices.join(', ')}.` : '',
    required ? 'Every row needs it.' : '',
    !unread && typeof fallback === 'number' ? `Blank: ${unit === '%' ? `${100 * fallback} %` : fallback}.` : '',
    !unread && typeof fallback === 'string' ? `Blank: ${fallback}.` : '',
  ]
    .filter(Boolean)
    .join(' ');
}

/** Bounds beyond which nobody comes are not told. */
const BEYOND = 1e6;

function rangeInWords({ least = -Infinity, above = -Infinity, most = Infinity, whole }: NumberRule): string {
  const [lower, upper] = [least > -BEYOND ? said(least) : undefined, most < BEYOND ? said(most) : undefined];
  const from = above > -BEYOND ? `more than ${said(above)}` : lower;
  const words =
    from === undefined
      ? upper && `at most ${upper}`
      : above > -BEYOND
        ? [from, upper && `at most ${upper}`].filter(Boolean).join(', ')
        : upper === undefined
          ? `${from} or more`
          : `${from} to ${upper}`;
  const range = [whole ? 'a whole number' : '', words].filter(Boolean).join(', ');
  return range && `${range.charAt(0).toUpperCase()}${range.slice(1)}.`;
}

function said(value: number): string {
  return decimals(value, 6);
}
