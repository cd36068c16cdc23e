import type { Layout } from '../core/cutting/layout';
import { fold } from '../core/plan/codes';
import type { StockCutting } from '../core/plan/cutting';
import { pieceKey } from '../core/plan/pieces';
import { type Cell, type Cells, isBlank } from './cell';
import { layoutsTable } from './layouts';

/** Columns of Layouts in the order of the table. */
const COLUMNS = ['stock', 'sheet', 'piece', 'x', 'y', 'turn'] as const;

/**
 * The rows of the table Layouts with a stock's layout in place of what stood there for it; rows of other stocks stay.
 * @param given the table as it stands, headings first; its columns keep their order
 */
export function withLayout(
  given: Cells,
  { stock, lines }: Pick<StockCutting, 'stock' | 'lines'>,
  layout: Layout,
): Cell[][] {
  const headings = (given[0] ?? []).map((cell) => fold(String(cell ?? '').split(/\s/)[0] ?? ''));
  const at = COLUMNS.map((name) => headings.indexOf(fold(layoutsTable.columns[name].heading)));
  const stockAt = at[0] ?? -1;
  const kept = given
    .slice(1)
    .filter((line) => !line.every(isBlank) && fold(String(line[stockAt] ?? '')) !== fold(stock.code))
    .map((line) => [...line]);
  const own = layout.flatMap((sheet, i) =>
    sheet.map(({ piece, x, y, turn }) => {
      const line = lines[piece >> 1];
      const key = line ? pieceKey(line, piece % 2 === 0 ? 'L' : 'R') : '';
      const values: readonly Cell[] = [stock.code, i + 1, key, x, y, turn];
      const row: Cell[] = headings.map(() => '');
      at.forEach((column, k) => {
        if (column >= 0) row[column] = values[k];
      });
      return row;
    }),
  );
  return [...kept, ...own];
}
