import type { Point, Ring } from './ring';
import { simplify } from './simplify';

/**
 * How often an outline turns inwards between turning outwards: 0 of a convex one, 2 of a sole with a waist.
 * @param deeper mm; hollows that are not are no more than a rough edge
 */
export function hollows(ring: Ring, deeper: number): number {
  const corners = simplify(ring, deeper);
  const inwards = corners.map((corner, i) =>
    turnsInwards(corners.at(i - 1) ?? corner, corner, corners[i + 1] ?? corners[0]),
  );
  return inwards.filter((is, i) => is && !inwards.at(i - 1)).length;
}

function turnsInwards(before: Point, corner: Point, after: Point = corner): boolean {
  return (corner[0] - before[0]) * (after[1] - corner[1]) < (corner[1] - before[1]) * (after[0] - corner[0]);
}
