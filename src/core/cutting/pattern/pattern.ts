import type { Lay } from '../rows/lay';
import { clearance, endOf, type Peaked, type Reach } from '../rows/reach';
import { type Fineness, minimise } from '../../numerics/minimise';

/** A piece of a pattern, let out by half the knife room, with its origin. */
export interface Member {
  readonly lay: Lay;
  readonly x: number;
  readonly y: number;
}

/** What a row repeats: one piece at least. */
export type Members = readonly [Member, ...Member[]];

/**
 * A piece repeated without end: its members stand `pitch` apart along a row, and each row repeats `rise` above the one
 * below, shifted by `slant` along it.
 */
export interface Pattern {
  readonly members: Members;
  readonly pitch: number;
  readonly slant: number;
  readonly rise: number;
}

/** Area of ground that a pattern takes for one piece, mm²: its cutting area. */
export function cuttingArea({ members, pitch, rise }: Pattern): number {
  return (pitch * rise) / members.length;
}

export const COARSE: Fineness = { places: 12, steps: 12 };
export const FINE: Fineness = { places: 32, steps: 40 };

/** Rows of the piece in one turn, each over the other. Row model (derived). */
export function singleRows(piece: Lay, fineness: Fineness): Pattern {
  const pitch = clearance(piece.sides.right, piece.sides.left, 0);
  const { shift } = lowest(piece.sides.top, piece.sides.bottom, pitch, fineness);
  return stacked([{ lay: piece, x: 0, y: 0 }], pitch, shift);
}

/**
 * Rows of the piece and rows of the piece turned end for end in turn, each sunk into the one below. For a convex piece
 * the best such pattern is the densest double lattice (Mount 1991, after Kuperberg and Kuperberg 1990).
 */
export function doubleRows(piece: Lay, reversed: Lay, fineness: Fineness): Pattern {
  const pitch = clearance(piece.sides.right, piece.sides.left, 0);
  const up = lowest(piece.sides.top, reversed.sides.bottom, pitch, fineness);
  const back = lowest(reversed.sides.top, piece.sides.bottom, pitch, fineness);
  const members: Members = [
    { lay: piece, x: 0, y: 0 },
    { lay: reversed, x: up.shift, y: up.gap },
  ];
  return stacked(members, pitch, up.shift + back.shift);
}

/** Rows in which the piece stands end for end beside itself, at the height where a row comes out shortest. */
export function alternateRows(piece: Lay, reversed: Lay, fineness: Fineness): Pattern | undefined {
  const at = (height: number): Pattern | undefined => {
    const there = clearance(piece.sides.right, reversed.sides.left, height);
    const back = clearance(reversed.sides.right, piece.sides.left, -height);
    if (there === -Infinity || back === -Infinity) return undefined;
    return pairRows(piece, reversed, there, height, fineness);
  };
  // At its lowest and highest the reversed piece is flush with the other's ends; a quarter of the height either way is tried.
  const flush = piece.box.bottom - reversed.box.bottom;
  const { best } = minimise(
    (height) => groundOrInfinity(at(height)),
    flush - piece.height / 4,
    flush + piece.height / 4,
    {
      places: Math.ceil(fineness.places / 2),
      steps: Math.ceil(fineness.steps / 2),
    },
  );
  return at(best);
}

/** Part of the pitch within which the slant of rows is sought: about a middle, so much to either side. */
export interface SlantRange {
  readonly about: number;
  readonly within: number;
}

/**
 * The closest rows of a piece to which the piece turned end for end is held fast at (x, y), where they do not overlap.
 * @param range without it every slant is tried
 */
export function pairRows(
  piece: Lay,
  reversed: Lay,
  x: number,
  y: number,
  fineness: Fineness,
  range?: SlantRange,
): Pattern {
  const pitch = Math.max(
    clearance(piece.sides.right, piece.sides.left, 0),
    clearance(piece.sides.right, reversed.sides.left, y) - x,
    clearance(reversed.sides.right, piece.sides.left, -y) + x,
  );
  const members: Members = [
    { lay: piece, x: 0, y: 0 },
    { lay: reversed, x, y },
  ];
  const { about, within } = range ?? { about: 0.5, within: 0.5 };
  const { best } = minimise(
    (slant) => stacked(members, pitch, slant).rise,
    (about - within) * pitch,
    (about + within) * pitch,
    fineness,
  );
  return stacked(members, pitch, best);
}

function groundOrInfinity(pattern: Pattern | undefined): number {
  return pattern ? cuttingArea(pattern) : Infinity;
}

/** Lays rows of members as close above each other as all rows above allow, not only the next. */
export function stacked(members: Members, pitch: number, slant: number): Pattern {
  const top = Math.max(...members.map(({ lay, y }) => y + lay.box.top));
  const bottom = Math.min(...members.map(({ lay, y }) => y + lay.box.bottom));
  let rise = 0;
  for (let above = 1; above * rise < top - bottom - 1e-9 && above <= 64; above++) {
    rise = Math.max(rise, riseOver(members, pitch, above * slant) / above);
  }
  return { members, pitch, slant, rise };
}

/** How far above a row of members the same row must lie where it is shifted along. */
function riseOver(members: readonly Member[], pitch: number, shift: number): number {
  let most = -Infinity;
  for (const below of members) {
    for (const above of members) {
      const gap = rowGap(below.lay.sides.top, above.lay.sides.bottom, pitch, shift + above.x - below.x);
      most = Math.max(most, gap + below.y - above.y);
    }
  }
  return most;
}

/** How far above a row of one piece every `pitch` a row of another must lie where it is shifted along. */
export function rowGap(top: Reach, bottom: Peaked, pitch: number, shift: number): number {
  const first = Math.ceil((top.line[0]! - endOf(bottom) - shift) / pitch);
  const last = Math.floor((endOf(top) - bottom.line[0]! - shift) / pitch);
  let most = -Infinity;
  for (let k = first; k <= last; k++) most = Math.max(most, clearance(top, bottom, shift + k * pitch));
  return most;
}

function lowest(top: Reach, bottom: Peaked, pitch: number, fineness: Fineness): { shift: number; gap: number } {
  const { best, value } = minimise((shift) => rowGap(top, bottom, pitch, shift), 0, pitch, fineness);
  return { shift: best, gap: value };
}
