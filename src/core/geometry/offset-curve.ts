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
  const edges = ring.map(([x, y], i) => {
    const [tx, ty] = itemRound(ring, i + 1);
    const length = Math.sqrt((tx - x) ** 2 + (ty - y) ** 2);
    return { x, y, length, normalX: (ty - y) / length, normalY: (x - tx) / length };
  });
  const widest = 2 * Math.acos(distance / (distance + ARC_TOLERANCE));
  const curve: Point[] = [];
  let before = itemRound(edges, -1);
  for (const edge of edges) {
    const { x, y, normalX: bx, normalY: by } = edge;
    const { normalX: ax, normalY: ay } = before;
    const shorter = Math.min(before.length, edge.length);
    before = edge;
    const turn = Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
    const reach = distance * Math.abs(Math.tan(turn / 2));
    if (turn < 0 && reach > shorter) {
      curve.push([x + distance * ax, y + distance * ay], [x + distance * bx, y + distance * by]);
      continue;
    }
    const corners = turn < widest ? 1 : Math.ceil(turn / widest);
    if (corners === 1) {
      // The tangents' corner lies on the bisector of both normals, at distance / cos(turn / 2).
      const stretch = distance / (1 + ax * bx + ay * by);
      curve.push([x + stretch * (ax + bx), y + stretch * (ay + by)]);
      continue;
    }
    const radius = distance / Math.cos(turn / 2 / corners);
    const first = Math.atan2(ay, ax) + turn / 2 / corners;
    for (let k = 0; k < corners; k++) {
      const angle = first + (k * turn) / corners;
      curve.push([x + radius * Math.cos(angle), y + radius * Math.sin(angle)]);
    }
  }
  return curve;
}
