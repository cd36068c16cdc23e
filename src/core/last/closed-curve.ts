import { itemRound } from '../item-at';
import type { Point, Ring } from '../geometry/ring';
import { simplify } from '../geometry/simplify';

/** Points between two given ones before the ring is thinned out. */
const STEPS = 12;
/** How far the thinned ring may lie off the curve, mm. */
const TOLERANCE = 0.05;

/** Weights of both ends and both tangents at each of the points (Hermite). */
const WEIGHTS = Array.from({ length: STEPS }, (_, step) => {
  const t = step / STEPS;
  return {
    start: 2 * t ** 3 - 3 * t ** 2 + 1,
    leave: t ** 3 - 2 * t ** 2 + t,
    end: 3 * t ** 2 - 2 * t ** 3,
    arrive: t ** 3 - t ** 2,
  };
});

/** A closed Catmull–Rom curve with centripetal parameters through the points (Yuksel, Schaefer & Keyser 2011). */
export function closedCurve(points: readonly Point[]): Ring {
  const n = points.length;
  const gap = (a: Point, b: Point) => Math.sqrt(Math.hypot(b[0] - a[0], b[1] - a[1]));
  const curve: Point[] = [];
  for (let i = 0; i < n; i++) {
    const p0 = itemRound(points, i - 1);
    const p1 = points[i]!;
    const p2 = itemRound(points, i + 1);
    const p3 = itemRound(points, i + 2);
    const a = gap(p0, p1);
    const b = gap(p1, p2);
    const c = gap(p2, p3);
    const first = (k: 0 | 1) => b * ((p1[k] - p0[k]) / a - (p2[k] - p0[k]) / (a + b) + (p2[k] - p1[k]) / b);
    const second = (k: 0 | 1) => b * ((p2[k] - p1[k]) / b - (p3[k] - p1[k]) / (b + c) + (p3[k] - p2[k]) / c);
    const fromX = first(0);
    const fromY = first(1);
    const toX = second(0);
    const toY = second(1);
    for (const { start, leave, end, arrive } of WEIGHTS) {
      curve.push([
        start * p1[0] + leave * fromX + end * p2[0] + arrive * toX,
        start * p1[1] + leave * fromY + end * p2[1] + arrive * toY,
      ]);
    }
  }
  return simplify(curve, TOLERANCE);
}
