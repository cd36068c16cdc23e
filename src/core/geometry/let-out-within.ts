import type { Point, Ring } from './ring';

/** The most that an arc may turn between two corners of its, radians. */
const WIDEST = Math.PI / 12;

/** Edges that turn by less are one line, radians. */
const STRAIGHT = 1e-6;

/**
 * A convex ring within what a convex ring becomes when it is let out, and next to all of it: corners on the arcs (derived).
 * @param ring convex, counter-clockwise
 * @param distance mm, not negative
 */
export function letOutWithin(ring: Ring, distance: number): Ring {
  if (distance === 0) return ring;
  const points: Point[] = [];
  const n = ring.length;
  for (let i = 0; i < n; i++) {
    const p = ring[i === 0 ? n - 1 : i - 1]!;
    const [x, y] = ring[i]!;
    const q = ring[i + 1 === n ? 0 : i + 1]!;
    const before = Math.atan2(p[0] - x, y - p[1]);
    const turn = Math.atan2(
      (x - p[0]) * (q[1] - y) - (y - p[1]) * (q[0] - x),
      (x - p[0]) * (q[0] - x) + (y - p[1]) * (q[1] - y),
    );
    const parts = turn < STRAIGHT ? 0 : Math.ceil(turn / WIDEST);
    for (let k = 0; k <= parts; k++) {
      const angle = before + (parts && (turn * k) / parts);
      points.push([x + distance * Math.cos(angle), y + distance * Math.sin(angle)]);
    }
  }
  return points;
}
