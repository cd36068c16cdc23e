import type { Point, Ring } from './ring';

/**
 * Whether two edges of a ring that are not neighbours touch or cross, or an edge folds back onto its neighbour.
 * Sweeps the edges by their left ends, so that a usual outline costs about n log n.
 */
export function crossesItself(ring: Ring): boolean {
  const n = ring.length;
  const edges = ring.map((from, i) => {
    const to = ring[(i + 1) % n] as Point;
    return { i, from, to, left: Math.min(from[0], to[0]), right: Math.max(from[0], to[0]) };
  });
  edges.sort((p, q) => p.left - q.left || p.i - q.i);
  for (let a = 0; a < n; a++) {
    const p = edges[a] as (typeof edges)[number];
    for (let b = a + 1; b < n; b++) {
      const q = edges[b] as (typeof edges)[number];
      if (q.left > p.right) break;
      const apart = Math.abs(p.i - q.i);
      if (apart === 1 || apart === n - 1) {
        const [first, second] = (p.i + 1) % n === q.i ? [p, q] : [q, p];
        if (foldsBack(first.from, first.to, second.to)) return true;
      } else if (touch(p.from, p.to, q.from, q.to)) {
        return true;
      }
    }
  }
  return false;
}

/** Twice the signed area of a triangle: positive where c lies to the left of a → b. */
function turn(a: Point, b: Point, c: Point): number {
  return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
}

function foldsBack(a: Point, b: Point, c: Point): boolean {
  return turn(a, b, c) === 0 && (b[0] - a[0]) * (c[0] - b[0]) + (b[1] - a[1]) * (c[1] - b[1]) < 0;
}

function touch(a: Point, b: Point, c: Point, d: Point): boolean {
  const c1 = turn(a, b, c);
  const d1 = turn(a, b, d);
  const a1 = turn(c, d, a);
  const b1 = turn(c, d, b);
  if (c1 * d1 < 0 && a1 * b1 < 0) return true;
  return (
    (c1 === 0 && between(a, b, c)) ||
    (d1 === 0 && between(a, b, d)) ||
    (a1 === 0 && between(c, d, a)) ||
    (b1 === 0 && between(c, d, b))
  );
}

function between(a: Point, b: Point, p: Point): boolean {
  return (
    Math.min(a[0], b[0]) <= p[0] &&
    p[0] <= Math.max(a[0], b[0]) &&
    Math.min(a[1], b[1]) <= p[1] &&
    p[1] <= Math.max(a[1], b[1])
  );
}
