import { fittingTurn } from './fitting-turn';
import type { Piece } from './piece';
import type { SheetFormat } from './sheet';

/**
 * Of pieces so many as are left, and none of those that fit on no empty sheet.
 * @param left how many of each
 */
export function fittingOn(format: SheetFormat, pieces: readonly Piece[], left: readonly number[]): readonly Piece[] {
  return pieces.map((piece, kind) => {
    const count = left[kind]!;
    return { ...piece, count: count > 0 && fittingTurn(piece.ring, format, piece.way) !== undefined ? count : 0 };
  });
}
