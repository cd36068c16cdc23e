import { itemRound } from '../item-at';
import type { Point, Ring } from '../geometry/ring';
import { simplify } from '../geometry/simplify';

/** Points between two given ones before the ring is thinned out. */
const STEPS = 12;
/** How far the thinned ring may lie off the curve, mm. */
const TOLERANCE = 0.05;

/** A closed Catmull–Rom curve with centripetal parameters through the points (Yuksel, Schaefer & Keyser 2011). */
export function closedCurve(points: readonly Point[]): Ring {
  const n = points.length;
  const at = (i: number) => itemRound(points, i);
  const gap = (a: Point, b: Point) => Math.sqrt(Math.hypot(b[0] - a[0], b[1] - a[1]));
  const curve: Point[] = [];
  for (let i = 0; i < n; i++) {
    const [p0, p1, p2, p3] = [at(i - 1), at(i), at(i + 1), at(i + 2)];
    const [a, b, c] = [gap(p0, p1), gap(p1, p2), gap(p2, p3)];
    const tangents = ([0, 1] as const).map((k) => [
      b * ((p1[k] - p0[k]) / a - (p2[k] - p0[k]) / (a + b) + (p2[k] - p1[k]) / b),
      b * ((p2[k] - p1[k]) / b - (p3[k] - p1[k]) / (b + c) + (p3[k] - p2[k]) / c),
    ]) as [[number, number], [number, number]];
    for (let step = 0; step < STEPS; step++) {
      const t = step / STEPS;
      const hermite = [
        2 * t ** 3 - 3 * t ** 2 + 1,
        t ** 3 - 2 * t ** 2 + t,
        3 * t ** 2 - 2 * t ** 3,
        t ** 3 - t ** 2,
      ] as const;
      const value = (k: 0 | 1) =>
        hermite[0] * p1[k] + hermite[1] * tangents[k][0] + hermite[2] * p2[k] + hermite[3] * tangents[k][1];
      curve.push([value(0), value(1)]);
    }
  }
  return simplify(curve, TOLERANCE);
}
