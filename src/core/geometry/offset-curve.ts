import { itemRound } from '../item-at';
import { ARC_TOLERANCE } from './regions';
import type { Point, Ring } from './ring';

/**
 * The curve `distance` outside every edge of a counter-clockwise ring, for measuring how far the let-out piece reaches.
 * Straight edges lie at exactly that distance; arcs are drawn round the true arc, never inside it, at most
 * ARC_TOLERANCE mm outside. Where an inlet is narrower than twice the distance the curve crosses itself; even there none
 * of it lies outside the piece let out.
 * @param distance mm, not negative
 */
export function offsetCurve(ring: Ring, distance: number): Ring {
  if (distance === 0) return ring;
  const n = ring.length;
  const widest = 2 * Math.acos(distance / (distance + ARC_TOLERANCE));
  const blunt = Math.cos(widest);
  const curve: Point[] = [];
  let { 0: x, 1: y } = itemRound(ring, -1);
  let { 0: nextX, 1: nextY } = itemRound(ring, 0);
  let before = Math.sqrt((nextX - x) ** 2 + (nextY - y) ** 2);
  let ax = (nextY - y) / before;
  let ay = (x - nextX) / before;
  for (let i = 0; i < n; i++) {
    x = nextX;
    y = nextY;
    const next = ring[i + 1 < n ? i + 1 : 0]!;
    nextX = next[0];
    nextY = next[1];
    const length = Math.sqrt((nextX - x) ** 2 + (nextY - y) ** 2);
    const bx = (nextY - y) / length;
    const by = (x - nextX) / length;
    const across = ax * by - ay * bx;
    const along = ax * bx + ay * by;
    // A hollow corner takes distance × tan(turn / 2) off both its edges, and tan(turn / 2) = sin / (1 + cos).
    if (across < 0 && distance * -across > (1 + along) * Math.min(before, length)) {
      curve.push([x + distance * ax, y + distance * ay], [x + distance * bx, y + distance * by]);
    } else if (across < 0 || along >= blunt) {
      // The tangents' corner lies on the bisector of both normals, at distance / cos(turn / 2).
      const stretch = distance / (1 + along);
      curve.push([x + stretch * (ax + bx), y + stretch * (ay + by)]);
    } else {
      const turn = Math.atan2(across, along);
      const corners = Math.ceil(turn / widest);
      const radius = distance / Math.cos(turn / 2 / corners);
      const first = Math.atan2(ay, ax) + turn / 2 / corners;
      for (let k = 0; k < corners; k++) {
        const angle = first + (k * turn) / corners;
        curve.push([x + radius * Math.cos(angle), y + radius * Math.sin(angle)]);
      }
    }
    before = length;
    ax = bx;
    ay = by;
  }
  return curve;
}
