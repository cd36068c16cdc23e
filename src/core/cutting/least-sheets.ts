import { letOutArea } from '../geometry/let-out-area';
import type { Piece } from './piece';
import { roomOn, type SheetFormat } from './sheet';

/**
 * No fewer sheets can hold the pieces: the area of the pieces let out by half the knife room over the area in which such
 * pieces may lie (derived). Shapes that do not interlock need more.
 */
export function leastSheets(pieces: readonly Piece[], format: SheetFormat): number {
  const { length, width } = roomOn(format);
  const area = pieces.reduce((sum, { ring, count }) => sum + letOutArea(ring, format.knifeRoom / 2) * count, 0);
  return area === 0 ? 0 : Math.max(1, Math.ceil(area / (length * width) - 1e-9));
}
