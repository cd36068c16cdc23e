import { finished, type Stepwise } from '../stepwise';
import { alike } from './sheet/alike';
import { fittingOn } from './sheet/fitting-on';
import type { Layout, Placements } from './sheet/layout';
import { packNaturalStepwise } from './natural/pack-natural';
import { onFewerSheets } from './rows/fewer-sheets';
import { packRowsStepwise } from './rows/pack-rows';
import type { Piece } from './sheet/piece';
import { formatOn, type SheetFormat, type ShelfOffcut } from './sheet/sheet';

/**
 * The layout that comes quickly: rows, or what natural sheets take. Pieces lie on offcuts first, and whole sheets take the
 * rest; an offcut that saves no whole sheet stays on the shelf, the largest before the others. Rows that all but take a
 * sheet less are varied until they do.
 * @throws Problem that names a piece which fits on no such sheet
 */
export function quickLayout(pieces: readonly Piece[], format: SheetFormat): Layout {
  return finished(quickLayoutStepwise(pieces, format));
}

/** The same, step by step. */
export function* quickLayoutStepwise(pieces: readonly Piece[], format: SheetFormat): Stepwise<Layout> {
  const { kinds, handedOut } = alike(pieces, format.pairs !== undefined);
  return handedOut(yield* layoutOf(kinds, format));
}

function* layoutOf(pieces: readonly Piece[], format: SheetFormat): Stepwise<Layout> {
  const { offcuts = [], ...whole } = format;
  const without = yield* varied(pieces, format, { offcuts: [], sheets: yield* onWholeSheets(pieces, whole) });
  if (offcuts.length === 0 || without.sheets.length === 0) return without;
  // Places that match across a sheet or beside each other are laid on whole sheets only.
  if (whole.pairs !== undefined) return without;
  const largestFirst = [...offcuts].sort((a, b) => sizeOf(b) - sizeOf(a));
  let used = largestFirst;
  let best = yield* withOffcuts(pieces, format, largestFirst);
  if (best.sheets.length >= without.sheets.length) return without;
  for (const offcut of largestFirst) {
    if (!best.offcuts.some(({ code }) => code === offcut.code)) continue;
    const fewer = used.filter((one) => one !== offcut);
    const layout = yield* withOffcuts(pieces, format, fewer);
    if (layout.sheets.length > best.sheets.length) continue;
    [used, best] = [fewer, layout];
  }
  return best;
}

/** Rows; where a sheet is traced or left and right pieces are to match, which rows cannot lay, what natural sheets take. */
function onWholeSheets(pieces: readonly Piece[], format: SheetFormat): Stepwise<readonly Placements[]> {
  const { natural, pairs } = format;
  return natural || pairs ? packNaturalStepwise(pieces, format) : packRowsStepwise(pieces, format);
}

/** Lays pieces on some offcuts, one after the other, and the rest on whole sheets. */
function* withOffcuts(pieces: readonly Piece[], format: SheetFormat, inTurn: readonly ShelfOffcut[]): Stepwise<Layout> {
  const { offcuts = [], ...whole } = format;
  const left = pieces.map(({ count }) => count);
  const laid = new Map<ShelfOffcut, Placements>();
  for (const offcut of inTurn) {
    const own = formatOn(format, { offcut: offcut.code });
    const fitting = fittingOn(own, pieces, left);
    const [placements = []] = yield* packRowsStepwise(fitting, own, 1);
    laid.set(offcut, placements);
    for (const { piece } of placements) left[piece]!--;
  }
  const rest = pieces.map((piece, kind) => ({ ...piece, count: left[kind]! }));
  const onOffcuts = offcuts.map((offcut) => ({ code: offcut.code, placements: laid.get(offcut) ?? [] }));
  const sheets = yield* onWholeSheets(rest, whole);
  const used = onOffcuts.filter(({ placements }) => placements.length > 0);
  return yield* varied(pieces, format, { offcuts: used, sheets });
}

/** Only rows can be varied, and offcuts take nothing else. */
function* varied(pieces: readonly Piece[], format: SheetFormat, layout: Layout): Stepwise<Layout> {
  return format.natural || format.pairs ? layout : yield* onFewerSheets(pieces, format, layout);
}

function sizeOf({ length, width }: ShelfOffcut): number {
  return length * width;
}
