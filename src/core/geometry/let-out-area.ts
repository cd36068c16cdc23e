import { itemRound } from '../item-at';
import { areaPaths, EndType, inflatePaths, JoinType } from 'clipper2-ts';
import { area } from './area';
import { crossesItself } from './crosses-itself';
import { ARC_TOLERANCE } from './let-out';
import { offsetCurve } from './offset-curve';
import type { Ring } from './ring';

const STEPS_PER_MM = 1e4;

/**
 * Area of a piece let out by `distance` with rounded corners, mm²: area + edge × distance + π distance² for a convex
 * piece (Steiner), less where the let-out edge meets itself. Never above the true area by more than rounding.
 * @param distance mm, not negative
 */
export function letOutArea(ring: Ring, distance: number): number {
  if (distance === 0) return area(ring);
  const curve = offsetCurve(ring, distance);
  // The curve lies outside the true arcs, between two tangents, by tan h − h for every corner of half angle h.
  if (!crossesItself(curve)) return area(curve) - distance ** 2 * roundedOff(ring, distance);
  const path = ring.map(([x, y]) => ({ x: Math.round(x * STEPS_PER_MM), y: Math.round(y * STEPS_PER_MM) }));
  const grown = inflatePaths(
    [path],
    distance * STEPS_PER_MM,
    JoinType.Round,
    EndType.Polygon,
    2,
    ARC_TOLERANCE * STEPS_PER_MM,
  );
  return Math.abs(areaPaths(grown)) / STEPS_PER_MM ** 2;
}

/** What the corners of the offset curve of a ring lie outside its arcs, as an area for distance 1. */
function roundedOff(ring: Ring, distance: number): number {
  const widest = 2 * Math.acos(distance / (distance + ARC_TOLERANCE));
  let sum = 0;
  ring.forEach(([x, y], i) => {
    const [px, py] = itemRound(ring, i - 1);
    const [qx, qy] = itemRound(ring, i + 1);
    const turn = Math.atan2((x - px) * (qy - y) - (y - py) * (qx - x), (x - px) * (qx - x) + (y - py) * (qy - y));
    if (turn <= 0) return;
    const corners = Math.max(1, Math.ceil(turn / widest));
    const half = turn / 2 / corners;
    sum += corners * (Math.tan(half) - half);
  });
  return sum;
}
