import { fold } from '../core/plan/codes';
import type { FoundRow } from '../core/plan/inputs';
import { Problem } from '../core/problem';
import { type Cell, type Cells, isBlank } from './cell';
import { layoutsTable } from './layouts';
import { columnsIn } from './headings';

/**
 * The rows of the table Layouts with a stock's layout in place of what stood there for it; rows of other stocks stay.
 * @param given the table as it stands, headings first; its columns keep their order
 */
export function withLayout(given: Cells, stock: string, layout: readonly FoundRow[]): Cell[][] {
  const headings = given[0] ?? [];
  const at = columnsIn(layoutsTable, headings);
  if (!at.has('format') && layout.some(({ format }) => format !== undefined)) {
    throw new Problem(
      'invalid',
      { argument: 'layouts', table: layoutsTable.name },
      'it has no column Format to say on which sheets pieces lie; head a blank column so, then write again',
    );
  }
  const stockAt = at.get('stock') ?? -1;
  const kept = given
    .slice(1)
    .filter((line) => !line.every(isBlank) && fold(String(line[stockAt] ?? '')) !== fold(stock))
    .map((line) => [...line]);
  const own = layout.map((found) => {
    const row: Cell[] = headings.map(() => '');
    for (const [name, column] of at) row[column] = found[name as keyof FoundRow] ?? '';
    return row;
  });
  return [...kept, ...own];
}
