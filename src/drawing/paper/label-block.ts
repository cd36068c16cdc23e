import { itemRound } from '../../core/item-at';
import { inside } from '../../core/geometry/inside';
import { box } from '../../core/geometry/box';
import type { Box, Point, Ring } from '../../core/geometry/ring';
import { widthOf } from './letter-width';
import { type Marks, rectangle, text } from '../mark';
import { movedMarks, readable } from '../move-marks';

/** Lines of lettering, one under the other. */
export interface LabelBlock {
  /** The first is larger and semibold. */
  readonly lines: readonly string[];
}

/** Where a block stands, and how large it is lettered. */
export interface LabelPlace {
  readonly at: Point;
  /** degrees, counter-clockwise as it is seen: along the piece or across it */
  readonly turn: number;
  readonly size: number;
  readonly fits: boolean;
}

/** Heights of the lettering that are tried, the largest first, mm. */
const SIZES = [4, 3.5, 3, 2.5, 2.1] as const;
/** The first line is so much larger. */
const HEAD = 1.4;
const LEADING = 1.3;
/** Width and height of a block in a size. */
export function blockSize({ lines }: LabelBlock, size: number): readonly [wide: number, high: number] {
  const wide = Math.max(0, ...lines.map((words, i) => widthOf(words, i === 0 ? size * HEAD : size, i === 0)));
  return [wide, size * LEADING * (lines.length - 1) + size * HEAD];
}

/**
 * The place in a ring where a block has room, lettered as large as can be; away from lines at `lines` along the ring where
 * that is possible.
 * @param ring as it is drawn, y downward
 */
export function placeIn(ring: Ring, block: LabelBlock, lines: readonly number[]): LabelPlace {
  const { left, right, bottom, top } = box(ring);
  const middle: Point = [(left + right) / 2, (bottom + top) / 2];
  for (const size of SIZES) {
    const [wide, high] = blockSize(block, size);
    for (const turn of [0, 90]) {
      const [w, h] = turn === 0 ? [wide + 3, high + 2] : [high + 2, wide + 3];
      const spots = spotsIn(ring, w, h).map((at) => ({ at, cost: costOf(at, w, lines, middle) }));
      const best = spots.sort((a, b) => a.cost - b.cost)[0];
      if (best) return { at: best.at, turn, size, fits: true };
    }
  }
  return { at: middle, turn: 0, size: itemRound(SIZES, -1), fits: false };
}

/** Middles of places where a box of a size lies within a ring. */
function spotsIn(ring: Ring, wide: number, high: number): readonly Point[] {
  const { left, right, bottom, top } = box(ring);
  if (wide > right - left || high > top - bottom) return [];
  const spots: Point[] = [];
  for (let i = 1; i < 24; i++) {
    for (let k = 1; k < 12; k++) {
      const [x, y] = [left + ((right - left) * i) / 24, bottom + ((top - bottom) * k) / 12];
      if (holds(ring, x, y, wide / 2, high / 2)) spots.push([x, y]);
    }
  }
  return spots;
}

function holds(ring: Ring, x: number, y: number, a: number, b: number): boolean {
  for (let i = -2; i <= 2; i++) {
    if (!inside(ring, x + (a * i) / 2, y - b) || !inside(ring, x + (a * i) / 2, y + b)) return false;
  }
  return inside(ring, x - a, y) && inside(ring, x + a, y);
}

function costOf([x, y]: Point, wide: number, lines: readonly number[], [mx, my]: Point): number {
  const crossed = lines.filter((at) => Math.abs(at - x) < wide / 2 + 1).length;
  return 1000 * crossed + Math.abs(x - mx) + Math.abs(y - my);
}

/** What a block takes up where it stands, y downward as it is drawn. */
export function blockBox(block: LabelBlock, { at: [x, y], turn, size }: LabelPlace): Box {
  const [wide, high] = blockSize(block, size);
  const [w, h] = [wide / 2 + 0.8, high / 2 + 0.8];
  return turn === 0
    ? { left: x - w, right: x + w, bottom: y - h, top: y + h }
    : { left: x - h, right: x + h, bottom: y - w, top: y + w };
}

/** The ground of a block, which goes over what it would hide. */
export function blockGround(block: LabelBlock, { at, turn, size }: LabelPlace): Marks {
  const [wide, high] = blockSize(block, size);
  const ground = rectangle(-wide / 2 - 0.8, -high / 2 - 0.6, wide + 1.6, high + 1.4, { fill: 'paper' });
  return movedMarks([ground], turn, at[0], at[1]);
}

/** A block's words at its place, readable on a page on which its piece is turned by `turn`. */
export function blockWords({ lines }: LabelBlock, { at, turn: own, size }: LabelPlace, turn: number): Marks {
  const [, high] = blockSize({ lines }, size);
  const words = lines.map((line, i) => {
    const y = -high / 2 + size * HEAD * 0.82 + i * size * LEADING;
    return text(0, y, line, i === 0 ? 'bold' : 'plain', 'middle', {
      size: i === 0 ? size * HEAD : size,
      layer: 'text',
    });
  });
  return movedMarks(words, readable(own, turn), at[0], at[1]);
}
