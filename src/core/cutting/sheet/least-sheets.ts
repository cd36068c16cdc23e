import { area } from '../../geometry/area';
import { letOutArea } from '../../geometry/let-out-area';
import { OutlineIndex } from '../../geometry/outline-index';
import { BEST, type NaturalSheet, usableArea } from './natural-sheet';
import type { Piece } from './piece';
import { roomOn, type SheetFormat } from './sheet';

/**
 * No fewer sheets can hold the pieces: the area of the pieces let out by half the knife room over the area in which such
 * pieces may lie (derived). Shapes that do not interlock need more. Offcuts hold at most what room they have.
 */
export function leastSheets(pieces: readonly Piece[], format: SheetFormat): number {
  const onOffcuts = offcutsHold(format);
  if (format.natural) return leastNatural(pieces, format, format.natural, onOffcuts);
  const { length, width } = roomOn(format);
  return sheetsFor(areaWithRoom(pieces, format), length * width, onOffcuts);
}

/** Area of all pieces, each let out by half the knife room, mm². */
export function areaWithRoom(pieces: readonly Piece[], { knifeRoom }: Pick<SheetFormat, 'knifeRoom'>): number {
  // Pieces of one outline, and the other foot's, are of one area.
  const outlines = new OutlineIndex();
  const letOut: number[] = [];
  return pieces.reduce((sum, { ring, count }) => {
    const { number } = outlines.find(ring);
    return sum + (letOut[number] ??= letOutArea(ring, knifeRoom / 2)) * count;
  }, 0);
}

/** Whole sheets for an area: one at least where the offcuts do not hold it all. */
function sheetsFor(area: number, room: number, onOffcuts: number): number {
  const rest = area - onOffcuts;
  return rest <= 0 ? 0 : Math.max(1, Math.ceil(rest / room - 1e-9));
}

/** Room on all offcuts together, mm²; pieces that are to match lie on none. */
export function offcutsHold({ offcuts = [], pairs, knifeRoom, edgeTrim }: SheetFormat): number {
  if (pairs !== undefined) return 0;
  return offcuts
    .map((offcut) => roomOn({ ...offcut, knifeRoom, edgeTrim }))
    .reduce((sum, { length, width }) => sum + Math.max(0, length) * Math.max(0, width), 0);
}

/** The same for each quality: the pieces that need it or better, over the area in which they may lie. */
function leastNatural(
  pieces: readonly Piece[],
  { edgeTrim }: SheetFormat,
  sheet: NaturalSheet,
  onOffcuts: number,
): number {
  const wanted = pieces.filter(({ count }) => count > 0);
  const qualities = new Set(wanted.map(({ quality = BEST }) => quality));
  const least = [...qualities].map((quality) => {
    const needing = wanted.filter(({ quality: own = BEST }) => own <= quality);
    const net = needing.reduce((sum, { ring, count }) => sum + area(ring) * count, 0);
    return sheetsFor(net, usableArea(sheet, quality, edgeTrim), onOffcuts);
  });
  return Math.max(0, ...least.filter(Number.isFinite));
}
