import { area } from '../geometry/area';
import type { Piece } from './piece';
import { roomOn, type SheetFormat } from './sheet';

/**
 * No fewer sheets can hold the pieces: their net area over the area in which pieces let out by half the knife room may
 * lie (derived). A lower bound; shapes that do not interlock need more.
 */
export function leastSheets(pieces: readonly Piece[], format: SheetFormat): number {
  const net = pieces.reduce((sum, { ring, count }) => sum + area(ring) * count, 0);
  const { length, width } = roomOn(format);
  return net === 0 ? 0 : Math.max(1, Math.ceil(net / (length * width) - 1e-9));
}
