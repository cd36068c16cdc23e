import { itemRound } from '../core/item-at';
import { box } from '../core/geometry/box';
import { inside } from '../core/geometry/inside';
import type { Point, Ring } from '../core/geometry/ring';
import type { LineOfPiece } from './line-of-piece';
import { type CircleMark, circle, type Lettering, type Marks, type Scale, text } from './mark';

const LINE_HEIGHT = 3.5;
/** Width of a letter of 3.5 u on the average of figures and letters, u. */
const LETTER = 1.95;

/** The height between the edges of a ring at a place along it, and its middle. */
function between(ring: Ring, x: number): { readonly height: number; readonly middle: number } {
  const ys: number[] = [];
  let [px, py] = itemRound(ring, -1);
  for (const [qx, qy] of ring) {
    if (px > x !== qx > x) ys.push(py + ((qy - py) * (x - px)) / (qx - px));
    [px, py] = [qx, qy];
  }
  const [low, high] = [Math.min(...ys), Math.max(...ys)];
  return ys.length > 1 ? { height: high - low, middle: (low + high) / 2 } : { height: 0, middle: 0 };
}

/** A place for a label within a piece, and how far the edge is from it along and across the piece, mm. */
export interface Spot {
  readonly at: Point;
  readonly room: number;
}

/** How many places along a piece are looked at. */
const PLACES = 13;

/** Where a label has room: middles of the ring across its length, the widest and farthest from its ends first. */
export function spotsOf(ring: Ring): readonly Spot[] {
  const { left, right } = box(ring);
  const spots = Array.from({ length: PLACES }, (_, k): Spot => {
    const x = left + ((right - left) * (k + 1)) / (PLACES + 1);
    const { height, middle } = between(ring, x);
    return { at: [x, middle], room: Math.min(height / 2, x - left, right - x) };
  }).sort((a, b) => b.room - a.room);
  const most = spots[0]?.room ?? 0;
  return spots.filter(({ room }) => room > 0.6 * most);
}

/** Where a piece's toe end is. */
export function toeOf(ring: Ring): Point {
  const { right, left } = box(ring);
  const x = right - 0.06 * (right - left);
  return [x, between(ring, x).middle];
}

/** A small black point marks the toe, where a piece is large enough to need it. */
export function needsToePoint(ring: Ring, scale: number): boolean {
  const { left, right, bottom, top } = box(ring);
  return Math.min(right - left, top - bottom) * scale > 4 && Math.max(right - left, top - bottom) * scale > 9;
}

export function toePoint([x, y]: Point, at: Scale): CircleMark {
  return circle(at.x(x), at.y(y), 0.5, { fill: 'ink' });
}

/** Lines of lettering, level and centred on a spot. */
export interface PieceLabel {
  readonly lines: readonly string[];
  readonly spot: Point;
}

/**
 * Style and item, size and foot, as far as they have room within the piece and beside its toe point.
 * @param number of the piece in a list beside the picture, which goes before all else
 */
export function labelIn(
  ring: Ring,
  spots: readonly Spot[],
  line: LineOfPiece,
  toe: Point | undefined,
  scale: number,
  number?: number,
): PieceLabel | undefined {
  if (!line) return undefined;
  const { run, layer, sizeRun } = line.line;
  const size = String(sizeRun.size);
  const both = `${size} ${line.foot}`;
  const plain = [[`${run.style.code} ${layer.item}`, both], [both], [size, line.foot]];
  const ways = number === undefined ? plain : [[String(number), both], [String(number)]];
  return lettering(ways, ring, spots, toe, scale);
}

/** A figure that stands for a piece too small for more. */
export function keyIn(ring: Ring, spots: readonly Spot[], key: number, scale: number): PieceLabel | undefined {
  return lettering([[String(key)]], ring, spots, undefined, scale);
}

/** The first of several letterings that has room. */
function lettering(
  ways: readonly (readonly string[])[],
  ring: Ring,
  spots: readonly Spot[],
  toe: Point | undefined,
  scale: number,
): PieceLabel | undefined {
  for (const lines of ways) {
    const needed = Math.min(...halves({ lines }, scale));
    for (const { at: spot, room } of spots) {
      // The widest come first: where the lettering is higher than that, no other has room.
      if (room < needed) break;
      const label = { lines, spot };
      if (isWithin(label, ring, scale) && !(toe && covers(label, toe, scale))) return label;
    }
  }
  return undefined;
}

export function written({ lines, spot: [x, y] }: PieceLabel, at: Scale, on: boolean): Marks {
  const first = at.y(y) - ((lines.length - 1) * LINE_HEIGHT) / 2 + 1.25;
  const lettering: Lettering = on ? 'on' : 'plain';
  return lines.map((words, i) => text(at.x(x), first + i * LINE_HEIGHT, words, lettering));
}

/** Half the width and half the height of a label, mm. */
function halves({ lines }: Pick<PieceLabel, 'lines'>, scale: number): readonly [number, number] {
  const wide = Math.max(...lines.map(({ length }) => length)) * LETTER;
  return [wide / 2 / scale, (lines.length * LINE_HEIGHT) / 2 / scale];
}

function isWithin(label: PieceLabel, ring: Ring, scale: number): boolean {
  const [half, high] = halves(label, scale);
  const [x, y] = label.spot;
  for (let a = -1; a <= 1; a++) {
    if (!inside(ring, x + a * half, y - high) || !inside(ring, x + a * half, y + high)) return false;
  }
  return true;
}

/** Whether a label lies over a point or within a millimetre of the drawing of it. */
export function covers(label: PieceLabel, [x, y]: Point, scale: number): boolean {
  const [half, high] = halves(label, scale);
  return Math.abs(x - label.spot[0]) < half + 1 / scale && Math.abs(y - label.spot[1]) < high + 0.5 / scale;
}
