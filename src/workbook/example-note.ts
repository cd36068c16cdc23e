import { ratesTable } from '../tables/rates';
import type { Area, CellPlan, SheetPlan } from './workbook';

/**
 * A formula that says a sentence, with the tables that it is of, while one of the example rows stands somewhere in its table as
 * it came. Rows may be sorted, moved and put in between.
 * @param said the sentence up to the names of the tables, and what is said after it and once there are no examples
 */
export function whileExamples(
  sheets: readonly SheetPlan[],
  said: { readonly some: string; readonly always: string },
): string {
  const names = sheets.flatMap(({ cells, tables }) =>
    tables.flatMap(({ name, area }) => {
      const counts = examplesOf(cells, area).map((row) => counted(name, row));
      // What things cost has no code of its own: one row of several that stands as it came may well be the maker's.
      const least = name === ratesTable.name && counts.length > 1 ? 1 : 0;
      return counts.length === 0 ? [] : [`IF(${counts.join('+')}>${least},${quoted(` ${name},`)},"")`];
    }),
  );
  if (names.length === 0) return `=${quoted(said.always)}`;
  const sentence = [quoted(said.some), ...names, quoted(`. ${said.always}`)].join('&');
  // Each row is counted once: a sentence without names goes again, and with names the comma after the last.
  return `=SUBSTITUTE(SUBSTITUTE(${sentence},${quoted(`${said.some}. `)},""),",. ",". ")`;
}

/** Values of an example row by their column in its table, from 1. */
type ExampleRow = readonly (readonly [column: number, value: string | number])[];

function examplesOf(cells: readonly CellPlan[], area: Area): readonly ExampleRow[] {
  const within = cells.filter(
    ({ row, column }) => row >= area.row && row < area.row + area.rows && inColumns(area, column),
  );
  // Sizes come and go, and with them what stands behind them.
  const sizes = within.filter(({ row, value }) => row === area.row && typeof value === 'number');
  const end = Math.min(...sizes.map(({ column }) => column), area.column + area.columns);
  const rows = new Map<number, [number, string | number][]>();
  for (const { row, column, role, value } of within) {
    if (role !== 'example' || column >= end || value === undefined || typeof value === 'boolean') continue;
    rows.set(row, [...(rows.get(row) ?? []), [column - area.column + 1, value]]);
  }
  return [...rows.values()];
}

function inColumns({ column: first, columns }: Area, column: number): boolean {
  return column >= first && column < first + columns;
}

/** How often a row stands in a table. */
function counted(table: string, row: ExampleRow): string {
  return `COUNTIFS(${row.map(([column, value]) => `INDEX({${table}},0,${column}),${asked(value)}`).join(',')})`;
}

/** What COUNTIFS is to look for: in words, its signs for any letters stand for themselves. */
function asked(value: string | number): string {
  return typeof value === 'number' ? String(value) : quoted(value.replace(/[~*?]/g, '~$&'));
}

function quoted(words: string): string {
  return `"${words.replaceAll('"', '""')}"`;
}
