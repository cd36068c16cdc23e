import { fittingTurn } from './sheet/fitting-turn';
import { type Layout, type Placement, wholeSheets } from './sheet/layout';
import { packNatural } from './natural/pack-natural';
import { packRows } from './rows/pack-rows';
import type { Piece } from './sheet/piece';
import { formatAt, type SheetFormat, type ShelfOffcut } from './sheet/sheet';

/**
 * The layout that comes quickly: rows, or what natural sheets take. Pieces lie on offcuts first, and whole sheets take the
 * rest; an offcut that saves no whole sheet stays on the shelf, the largest before the others.
 * @throws Problem that names a piece which fits on no such sheet
 */
export function quickLayout(pieces: readonly Piece[], format: SheetFormat): Layout {
  const { offcuts = [], ...whole } = format;
  if (offcuts.length === 0) return onWholeSheets(pieces, whole);
  const without = onWholeSheets(pieces, whole);
  const none: Layout = offcuts.map(() => []);
  // Places that match across a sheet or beside each other are laid on whole sheets only.
  if (whole.pairs !== undefined || without.length === 0) return [...none, ...without];
  const largestFirst = [...offcuts.keys()].sort((a, b) => sizeOf(offcuts[b]) - sizeOf(offcuts[a]) || a - b);
  let used = largestFirst;
  let best = withOffcuts(pieces, format, largestFirst);
  if (wholeSheets(best, format) >= without.length) return [...none, ...without];
  for (const offcut of largestFirst) {
    if (best[offcut].length === 0) continue;
    const fewer = used.filter((one) => one !== offcut);
    const layout = withOffcuts(pieces, format, fewer);
    if (wholeSheets(layout, format) > wholeSheets(best, format)) continue;
    [used, best] = [fewer, layout];
  }
  return best;
}

/** Rows; where a sheet is traced or left and right pieces are to match, which rows cannot lay, what natural sheets take. */
function onWholeSheets(pieces: readonly Piece[], format: SheetFormat): Layout {
  const { natural, pairs } = format;
  return natural || pairs ? packNatural(pieces, format) : packRows(pieces, format);
}

/** Lays pieces on offcuts, one after the other, and the rest on whole sheets. */
function withOffcuts(pieces: readonly Piece[], format: SheetFormat, order: readonly number[]): Layout {
  const { offcuts = [], ...whole } = format;
  const left = pieces.map(({ count }) => count);
  const layout: Placement[][] = offcuts.map(() => []);
  for (const offcut of order) {
    const own = formatAt(format, offcut);
    const fitting = pieces.map((piece, kind) => ({
      ...piece,
      count: left[kind] > 0 && fittingTurn(piece.ring, own, piece.way) !== undefined ? left[kind] : 0,
    }));
    const [laid = []] = packRows(fitting, own, 1);
    layout[offcut] = [...laid];
    for (const { piece } of laid) left[piece]--;
  }
  const rest = pieces.map((piece, kind) => ({ ...piece, count: left[kind] }));
  return [...layout, ...onWholeSheets(rest, whole)];
}

function sizeOf({ length, width }: ShelfOffcut): number {
  return length * width;
}
