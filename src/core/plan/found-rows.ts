import { type Layout, laidSheets } from '../cutting/sheet/layout';
import type { StockCutting } from './stock-cutting';
import type { FoundRow } from './inputs';

/** Rows for the table Layouts: where each piece of a stock lies on sheets of one format. */
export function foundRows(
  { stock, otherFormat, format, pieces }: Pick<StockCutting, 'stock' | 'otherFormat' | 'format' | 'pieces'>,
  layout: Layout,
): readonly FoundRow[] {
  return laidSheets(layout, format).flatMap(({ name, placements }, i) =>
    placements.map(({ piece, x, y, turn }) => ({
      stock: stock.code,
      // The table numbers offcuts too, though they go by their code.
      ...('offcut' in name ? { sheet: i + 1, offcut: name.offcut } : name),
      ...(otherFormat !== undefined && { format: otherFormat }),
      piece: pieces[piece]!.key,
      x,
      y,
      turn,
    })),
  );
}
