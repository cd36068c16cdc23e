import { boxAbout, boxMoved } from '../../geometry/box';
import type { Box } from '../../geometry/ring';
import type { Placement } from './layout';
import type { Piece } from './piece';
import type { SheetFormat } from './sheet';

/** A rectangle on a sheet, mm, from its lower left corner. */
export interface Offcut {
  readonly x: number;
  readonly y: number;
  readonly length: number;
  readonly width: number;
}

/** Offcuts with a shorter side than this are not worth a place in the rack, mm (common practice). */
export const LEAST_SIDE = 50;

/** No offcut is narrower, mm: no piece of a bottom fits on it. */
export const SMALLEST_OFFCUT = 20;

/**
 * The rectangles that two straight cuts leave of a sheet, the first from edge to edge and as large as can be, the second
 * across what remains; each keeps the knife room from the pieces. Largest first, none where the pieces fill the sheet or
 * where it is no rectangle.
 */
export function leftover(
  pieces: readonly Piece[],
  format: SheetFormat,
  sheet: readonly Placement[],
  leastSide = LEAST_SIDE,
): readonly Offcut[] {
  if (format.natural) return [];
  const whole = { left: 0, bottom: 0, right: format.length, top: format.width };
  if (sheet.length === 0) return [offcut(whole)];
  const used = boxAbout(sheet.map(({ piece, turn, x, y }) => boxMoved(pieces[piece]!.ring, turn, x, y)));
  const first = largest(whole, used, format.knifeRoom, leastSide);
  if (!first) return [];
  const second = largest(first.rest, used, format.knifeRoom, leastSide);
  return [first, ...(second ? [second] : [])].map(({ cut }) => offcut(cut)).sort((a, b) => sizeOf(b) - sizeOf(a));
}

/** The largest strip that one cut parts from a rectangle beside what is used of it, and what remains. */
function largest(
  of: Box,
  used: Box,
  room: number,
  leastSide: number,
): { readonly cut: Box; readonly rest: Box } | undefined {
  const right = used.right + room;
  const left = used.left - room;
  const top = used.top + room;
  const bottom = used.bottom - room;
  const strips = [
    { cut: { ...of, left: right }, rest: { ...of, right } },
    { cut: { ...of, bottom: top }, rest: { ...of, top } },
    { cut: { ...of, right: left }, rest: { ...of, left } },
    { cut: { ...of, top: bottom }, rest: { ...of, bottom } },
  ];
  const real = strips.filter(({ cut }) => Math.min(cut.right - cut.left, cut.top - cut.bottom) >= leastSide);
  return real.sort((a, b) => sizeOf(offcut(b.cut)) - sizeOf(offcut(a.cut)))[0];
}

function offcut({ left, bottom, right, top }: Box): Offcut {
  return { x: left, y: bottom, length: right - left, width: top - bottom };
}

function sizeOf({ length, width }: Offcut): number {
  return length * width;
}
