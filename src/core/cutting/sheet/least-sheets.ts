import { area } from '../../geometry/area';
import { letOutArea } from '../../geometry/let-out-area';
import { OutlineIndex } from '../../geometry/outline-index';
import { groundOfCells } from './ground-of-cells';
import { BEST, type NaturalSheet, usableGround } from './natural-sheet';
import type { Piece } from './piece';
import { roomOn, type SheetFormat } from './sheet';
import type { Matters, Room, Weighing } from './weighing';
import { weighings } from './weighings';

/**
 * No fewer sheets can hold the pieces: by every weighing of them, what they weigh, less what the offcuts hold, over what a
 * sheet holds (derived). The plain area is one of the weighings.
 * @param enough sheets that do hold them: once so many are needed nothing is left to be found out
 */
export function leastSheets(pieces: readonly Piece[], format: SheetFormat, enough = Infinity): number {
  const wanted = pieces.filter(({ count }) => count > 0);
  const shelf = shelfRooms(format);
  if (format.natural) return leastNatural(wanted, format, format.natural, shelf, enough);
  const room = roomOn(format);
  return leastBy((matters) => weighings(wanted, room, format, matters), room, shelf, enough);
}

/** The same by the plain area alone. */
export function leastByArea(pieces: readonly Piece[], format: SheetFormat): number {
  const { length, width } = roomOn(format);
  return sheetsFor(areaWithRoom(pieces, format), length * width, offcutsHold(format));
}

/** @param weigh the weighings of all pieces that matter */
function leastBy(
  weigh: (matters: Matters) => Iterable<Weighing>,
  room: Room,
  shelf: readonly Room[],
  enough = Infinity,
): number {
  let least = 0;
  // What all of them weigh together is rounded.
  const matters: Matters = (sheets) => Math.ceil(sheets * (1 + 1e-9)) > least;
  for (const { weight, hold } of weigh(matters)) {
    const held = shelf.reduce((sum, one) => sum + hold(one), 0);
    least = Math.max(least, sheetsFor(weight, hold(room), held));
    if (least >= enough) break;
  }
  return least;
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

/** Whole sheets for a weight: one at least where the offcuts do not hold it all. */
function sheetsFor(weight: number, held: number, onOffcuts: number): number {
  const rest = weight - onOffcuts;
  return rest <= 0 ? 0 : Math.max(1, Math.ceil(rest / held - 1e-9));
}

/** Room on all offcuts together, mm². */
export function offcutsHold(format: SheetFormat): number {
  return shelfRooms(format).reduce((sum, { length, width }) => sum + length * width, 0);
}

/** Room on each offcut; pieces that are to match lie on none. */
function shelfRooms({ offcuts = [], pairs, knifeRoom, edgeTrim }: SheetFormat): readonly Room[] {
  if (pairs !== undefined) return [];
  return offcuts
    .map((offcut) => roomOn({ ...offcut, knifeRoom, edgeTrim }))
    .map(({ length, width }) => ({ length: Math.max(0, length), width: Math.max(0, width) }));
}

/** For each quality: the pieces that need it or better, by weighings of the area in which they may lie. */
function leastNatural(
  wanted: readonly Piece[],
  { edgeTrim, knifeRoom }: SheetFormat,
  sheet: NaturalSheet,
  shelf: readonly Room[],
  enough: number,
): number {
  const qualities = new Set(wanted.map(({ quality = BEST }) => quality));
  const least = [...qualities].map((quality) => {
    const needing = wanted.filter(({ quality: own = BEST }) => own <= quality);
    const ground = usableGround(sheet, quality, edgeTrim, knifeRoom / 2);
    const room = { length: ground.reduce((sum, ring) => sum + area(ring), 0), width: 1, ground: groundOfCells(ground) };
    return leastBy((matters) => weighings(needing, room, { knifeRoom }, matters), room, shelf, enough);
  });
  return Math.max(0, ...least.filter(Number.isFinite));
}
