import { area } from './area';
import { convexHull } from './convex-hull';
import type { Point, Ring } from './ring';

/** Areas that differ by a smaller share are one, and edges that turn by less one line: what rounding makes of them. */
const SAME = 1e-9;

/**
 * A convex ring within an outline, which leaves out as little as comes easily: what lies beyond the line of an edge beside a
 * hollow is cut off, edge after edge, always where the least is lost and left hollow (derived).
 * @param mostLost share of the area, 0 to 1
 * @returns undefined where more would be lost
 */
export function convexWithin(ring: Ring, mostLost: number): Ring | undefined {
  const whole = area(ring);
  const least = whole * (1 - mostLost);
  // More is cut off at a hollow than it holds, but for odd outlines.
  if (area(convexHull(ring)) > whole / Math.max(SAME, 1 - mostLost)) return undefined;
  let kept = ring;
  for (let cuts = 0; cuts <= ring.length; cuts++) {
    const hull = convexHull(kept);
    if (area(hull) <= area(kept) * (1 + SAME)) return hull;
    let best: Ring | undefined;
    let most = -Infinity;
    for (const [p, q] of edgesAtHollows(kept)) {
      const rest = leftOf(kept, p, q);
      const size = area(rest);
      if (size < least) continue;
      // What is left of hollows counts as lost already.
      const worth = 2 * size - area(convexHull(rest));
      if (worth > most) [best, most] = [rest, worth];
    }
    if (!best) return undefined;
    kept = best;
  }
  return undefined;
}

/** The edges before and after every hollow corner. */
function edgesAtHollows(ring: Ring): readonly (readonly [Point, Point])[] {
  const n = ring.length;
  const edges: (readonly [Point, Point])[] = [];
  for (let i = 0; i < n; i++) {
    const p = ring[i === 0 ? n - 1 : i - 1]!;
    const q = ring[i]!;
    const r = ring[i + 1 === n ? 0 : i + 1]!;
    const turn = (q[0] - p[0]) * (r[1] - q[1]) - (q[1] - p[1]) * (r[0] - q[0]);
    const edge = Math.hypot(q[0] - p[0], q[1] - p[1]) * Math.hypot(r[0] - q[0], r[1] - q[1]);
    if (turn < -SAME * edge) edges.push([p, q], [q, r]);
  }
  return edges;
}

/**
 * What of a ring lies to the left of the line through two points (Sutherland and Hodgman 1974, for one line). Parts that
 * fall apart hang together along the line; the area is right also then.
 */
function leftOf(ring: Ring, p: Point, q: Point): Ring {
  const dx = q[0] - p[0];
  const dy = q[1] - p[1];
  const side = (point: Point) => (point === p || point === q ? 0 : dx * (point[1] - p[1]) - dy * (point[0] - p[0]));
  const kept: Point[] = [];
  let before = ring[ring.length - 1]!;
  let a = side(before);
  for (const point of ring) {
    const b = side(point);
    if ((a < 0 && b > 0) || (a > 0 && b < 0)) {
      const share = a / (a - b);
      kept.push([before[0] + (point[0] - before[0]) * share, before[1] + (point[1] - before[1]) * share]);
    }
    if (b >= 0) kept.push(point);
    [before, a] = [point, b];
  }
  return kept;
}
