import { itemRound } from '../item-at';
import { area } from './area';
import { crossesItself, goesAndComes } from './crosses-itself';
import { offsetCurve } from './offset-curve';
import { ARC_TOLERANCE, grown } from './regions';
import type { Ring } from './ring';

/**
 * Area of a piece let out by `distance` with rounded corners, mm²: area + edge × distance + π distance² for a convex
 * piece (Steiner), less where the let-out edge meets itself. Never above the true area by more than rounding.
 * @param distance mm, not negative
 */
export function letOutArea(ring: Ring, distance: number): number {
  if (distance === 0) return area(ring);
  return ofOpenOutline(ring, distance) ?? ofAnyOutline(ring, distance);
}

/**
 * The same in one look round an outline whose let-out edge does not meet itself: one that goes once along x and comes back
 * once, with every hollow so wide that its edges keep a part of their own. A hollow corner of angle φ takes
 * distance² (tan φ/2 − φ/2) away (derived).
 */
function ofOpenOutline(ring: Ring, distance: number): number | undefined {
  const n = ring.length;
  let edge = 0;
  let hollow = 0;
  let before = 0;
  let first = 0;
  for (let i = 0; i < n; i++) {
    const { 0: x, 1: y } = ring[i]!;
    const p = ring[i === 0 ? n - 1 : i - 1]!;
    const q = ring[i + 1 === n ? 0 : i + 1]!;
    const ax = x - p[0];
    const ay = y - p[1];
    const bx = q[0] - x;
    const by = q[1] - y;
    const across = ax * by - ay * bx;
    let reach = 0;
    if (across < 0) {
      const half = Math.atan2(-across, ax * bx + ay * by) / 2;
      reach = distance * Math.tan(half);
      hollow += Math.tan(half) - half;
    }
    const length = Math.sqrt(ax * ax + ay * ay);
    // What the hollow corners at both its ends take off the edge that ends here.
    if (i > 0 && before + reach >= length) return undefined;
    if (i === 0) first = reach;
    edge += length;
    before = reach;
  }
  const [[x, y], [px, py]] = [ring[0]!, ring[n - 1]!];
  if (before + first >= Math.sqrt((x - px) ** 2 + (y - py) ** 2)) return undefined;
  if (!goesAndComes(ring)) return undefined;
  return area(ring) + distance * edge + distance ** 2 * (Math.PI - hollow);
}

function ofAnyOutline(ring: Ring, distance: number): number {
  const curve = offsetCurve(ring, distance);
  // The curve lies outside the true arcs, between two tangents, by tan h − h for every corner of half angle h.
  if (!crossesItself(curve)) return area(curve) - distance ** 2 * roundedOff(ring, distance);
  return grown([ring], distance).reduce((sum, part) => sum + area(part), 0);
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
