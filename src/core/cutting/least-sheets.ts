import { area } from '../geometry/area';
import { letOutArea } from '../geometry/let-out-area';
import { BEST, type NaturalSheet, usableArea } from './natural/natural-sheet';
import type { Piece } from './piece';
import { roomOn, type SheetFormat } from './sheet';

/**
 * No fewer sheets can hold the pieces: the area of the pieces let out by half the knife room over the area in which such
 * pieces may lie (derived). Shapes that do not interlock need more.
 */
export function leastSheets(pieces: readonly Piece[], format: SheetFormat): number {
  if (format.natural) return leastNatural(pieces, format, format.natural);
  const { length, width } = roomOn(format);
  const area = pieces.reduce((sum, { ring, count }) => sum + letOutArea(ring, format.knifeRoom / 2) * count, 0);
  return area === 0 ? 0 : Math.max(1, Math.ceil(area / (length * width) - 1e-9));
}

/** The same for each quality: the pieces that need it or better, over the area in which they may lie. */
function leastNatural(pieces: readonly Piece[], { edgeTrim }: SheetFormat, sheet: NaturalSheet): number {
  const wanted = pieces.filter(({ count }) => count > 0);
  const qualities = new Set(wanted.map(({ quality = BEST }) => quality));
  const least = [...qualities].map((quality) => {
    const needing = wanted.filter(({ quality: own = BEST }) => own <= quality);
    const net = needing.reduce((sum, { ring, count }) => sum + area(ring) * count, 0);
    return Math.max(1, Math.ceil(net / usableArea(sheet, quality, edgeTrim) - 1e-9));
  });
  return Math.max(0, ...least.filter(Number.isFinite));
}
