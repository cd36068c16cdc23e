import type { Layout } from './layout';
import { packNatural } from './natural/pack-natural';
import { packRows } from './pack-rows';
import type { Piece } from './piece';
import type { SheetFormat } from './sheet';

/** Whether a sheet is one that rows cannot lay: traced, or with left and right pieces that match. */
export function isNatural({ natural, pairs }: SheetFormat): boolean {
  return natural !== undefined || pairs !== undefined;
}

/**
 * The layout that comes quickly: rows, or what natural sheets take.
 * @throws Problem that names a piece which fits on no such sheet
 */
export function quickLayout(pieces: readonly Piece[], format: SheetFormat): Layout {
  return isNatural(format) ? packNatural(pieces, format) : packRows(pieces, format);
}
