import { lastsTable } from './lasts';
import { layoutsTable } from './layouts';
import { offcutsTable } from './offcuts';
import { offersTable } from './offers';
import { outlinesTable } from './outlines';
import { pairageTable } from './pairage';
import { ratesTable } from './rates';
import { stockTable } from './stock';
import { stylesTable } from './styles';
import type { Columns, Table } from './schema';

/** All input tables by their argument, in the order in which the functions that plan take them. */
export const INPUT_TABLES = {
  pairage: pairageTable,
  styles: stylesTable,
  lasts: lastsTable,
  stock: stockTable,
  rates: ratesTable,
  outlines: outlinesTable,
  layouts: layoutsTable,
  offcuts: offcutsTable,
  offers: offersTable,
} as const;

/** How a table is laid out, where its headings alone do not say. */
const LAID_OUT: Partial<Record<string, string>> = { pairage: 'styles down, sizes across' };

/** What a function's argument of that name takes, for help; undefined for a name that is no input table's. */
export function tableInWords(argument: string): string | undefined {
  const table = Object.values<Table<Columns>>(INPUT_TABLES).find((one) => one.argument === argument);
  const laidOut = LAID_OUT[argument];
  return table && `${table.name} with its headings${laidOut ? `: ${laidOut}` : ''}.`;
}

/** Arguments that a plan goes without. */
const LEFT_OUT: readonly string[] = ['outlines', 'layouts', 'offcuts', 'offers'];

/** How functions.json describes the tables that the functions that plan take. */
export function planParameters(): readonly object[] {
  return Object.keys(INPUT_TABLES).map((name) => ({
    description: tableInWords(name),
    dimensionality: 'matrix',
    name,
    ...(LEFT_OUT.includes(name) && { optional: true }),
    type: 'any',
  }));
}
