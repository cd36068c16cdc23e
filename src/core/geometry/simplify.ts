import { ramerDouglasPeuckerD } from 'clipper2-ts';
import type { Point, Ring } from './ring';

/** A ring with as few of its points as keep it within `tolerance` mm of the original (Ramer–Douglas–Peucker). */
export function simplify(ring: Ring, tolerance: number): Ring {
  const [first] = ring;
  if (!first) return ring;
  // The algorithm keeps both ends of a line: the ring is opened at its first point and at the one furthest from it. It
  // would take a line that comes back to its start for a ring and leave the start out.
  const far = ring.reduce(
    (best, point, i) => (distance(first, point) > distance(first, ring[best] as Point) ? i : best),
    0,
  );
  const there = thinned(ring.slice(0, far + 1), tolerance);
  const back = thinned([...ring.slice(far), first], tolerance);
  return [...there.slice(0, -1), ...back.slice(0, -1)];
}

function thinned(line: readonly Point[], tolerance: number): readonly Point[] {
  return ramerDouglasPeuckerD(
    line.map(([x, y]) => ({ x, y })),
    tolerance,
  ).map(({ x, y }): Point => [x, y]);
}

function distance(a: Point, b: Point): number {
  return Math.hypot(b[0] - a[0], b[1] - a[1]);
}
