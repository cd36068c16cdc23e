import { pointToEdge } from './point-to-edge';
import type { Point, Ring } from './ring';

/**
 * A ring with as few of its points as keep it within `tolerance` mm of the original (Ramer–Douglas–Peucker, by the
 * distance from the edge and not from its line: a point may lie beyond the edge's ends).
 */
export function simplify(ring: Ring, tolerance: number): Ring {
  const [first] = ring;
  if (!first) return ring;
  // Both ends of a line are kept: the ring is opened at its first point and at the one furthest from it.
  const far = ring.reduce(
    (best, point, i) => (distance(first, point) > distance(first, ring[best] as Point) ? i : best),
    0,
  );
  const there = thinned(ring.slice(0, far + 1), tolerance);
  const back = thinned([...ring.slice(far), first], tolerance);
  return [...there.slice(0, -1), ...back.slice(0, -1)];
}

function thinned(line: readonly Point[], tolerance: number): readonly Point[] {
  const kept = line.map((_, i) => i === 0 || i === line.length - 1);
  const open: [from: number, to: number][] = [[0, line.length - 1]];
  for (let stretch = open.pop(); stretch; stretch = open.pop()) {
    const [from, to] = stretch;
    const [[ax, ay], [bx, by]] = [line[from] as Point, line[to] as Point];
    let worst = tolerance ** 2;
    let at = -1;
    for (let i = from + 1; i < to; i++) {
      const [x, y] = line[i] as Point;
      const squared = pointToEdge(x, y, ax, ay, bx, by);
      if (squared > worst) [worst, at] = [squared, i];
    }
    if (at < 0) continue;
    kept[at] = true;
    open.push([from, at], [at, to]);
  }
  return line.filter((_, i) => kept[i]);
}

function distance(a: Point, b: Point): number {
  return Math.hypot(b[0] - a[0], b[1] - a[1]);
}
