import type { Point, Ring } from './ring';

/** Points closer than this to the next are one, mm. */
const SAME = 0.01;

/**
 * The part of a ring on which a straight-line measure is not negative (Sutherland–Hodgman for one line). The ring must
 * cross the line at most twice, as an outline cut across its length does.
 * @param side rising linearly in x and y: positive on the part to keep
 */
export function cut(ring: Ring, side: (point: Point) => number): Ring {
  const kept: Point[] = [];
  const [first] = ring;
  if (!first) return ring;
  const atFirst = side(first);
  let p = first;
  let a = atFirst;
  for (let i = 1; i <= ring.length; i++) {
    const q = i < ring.length ? ring[i]! : first;
    const b = i < ring.length ? side(q) : atFirst;
    if (a >= 0) kept.push(p);
    if (a < 0 !== b < 0) kept.push([p[0] + ((q[0] - p[0]) * a) / (a - b), p[1] + ((q[1] - p[1]) * a) / (a - b)]);
    p = q;
    a = b;
  }
  return kept.filter(({ 0: x, 1: y }, i) => {
    const next = kept[i + 1 < kept.length ? i + 1 : 0]!;
    return (x - next[0]) ** 2 + (y - next[1]) ** 2 > SAME ** 2;
  });
}
