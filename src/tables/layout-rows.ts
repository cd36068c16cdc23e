import { fold } from '../core/plan/codes';
import type { LayoutRow } from '../core/plan/inputs';
import { type Cell, type Cells, isBlank } from './cell';
import { layoutsTable } from './layouts';

/** Columns of Layouts in the order of the table. */
const COLUMNS = ['stock', 'sheet', 'piece', 'x', 'y', 'turn'] as const;

/** One piece on one sheet, as it is written down. */
export type FoundRow = Omit<LayoutRow, 'row'>;

/**
 * The rows of the table Layouts with a stock's layout in place of what stood there for it; rows of other stocks stay.
 * @param given the table as it stands, headings first; its columns keep their order
 */
export function withLayout(given: Cells, stock: string, layout: readonly FoundRow[]): Cell[][] {
  const headings = (given[0] ?? []).map((cell) => fold(String(cell ?? '').split(/\s/)[0] ?? ''));
  const at = COLUMNS.map((name) => [name, headings.indexOf(fold(layoutsTable.columns[name].heading))] as const);
  const stockAt = at[0]?.[1] ?? -1;
  const kept = given
    .slice(1)
    .filter((line) => !line.every(isBlank) && fold(String(line[stockAt] ?? '')) !== fold(stock))
    .map((line) => [...line]);
  const own = layout.map((found) => {
    const row: Cell[] = headings.map(() => '');
    for (const [name, column] of at) if (column >= 0) row[column] = found[name];
    return row;
  });
  return [...kept, ...own];
}
