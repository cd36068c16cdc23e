import type { Point, Ring } from './ring';

/** Points closer than this to the next are one, mm. */
const SAME = 0.01;

/**
 * The part of a ring on which a straight-line measure is not negative (Sutherland–Hodgman for one line). The ring must
 * cross the line at most twice, as an outline cut across its length does.
 * @param side rising linearly in x and y: positive on the part to keep
 */
export function cut(ring: Ring, side: (point: Point) => number): Ring {
  const kept = ring.flatMap((p, i): Point[] => {
    const q = ring[(i + 1) % ring.length] as Point;
    const [a, b] = [side(p), side(q)];
    const crossing: Point[] =
      a < 0 !== b < 0 ? [[p[0] + ((q[0] - p[0]) * a) / (a - b), p[1] + ((q[1] - p[1]) * a) / (a - b)]] : [];
    return a >= 0 ? [p, ...crossing] : crossing;
  });
  return kept.filter((p, i) => {
    const q = kept[(i + 1) % kept.length] as Point;
    return Math.hypot(p[0] - q[0], p[1] - q[1]) > SAME;
  });
}
