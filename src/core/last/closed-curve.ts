import { itemRound } from '../item-at';
import type { Point, Ring } from '../geometry/ring';
import { keptOf } from '../geometry/simplify';

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

/** Corners of a ring, x and y apart: a ring that is only measured needs no points. */
export interface Corners {
  readonly xs: Float64Array;
  readonly ys: Float64Array;
  readonly count: number;
}

/** A closed Catmull–Rom curve with centripetal parameters through the points (Yuksel, Schaefer & Keyser 2011). */
export function closedCurve(points: readonly Point[]): Ring {
  const { xs, ys, count } = cornersOfCurve(points);
  const ring = new Array<Point>(count);
  for (let i = 0; i < count; i++) ring[i] = [xs[i]!, ys[i]!];
  return ring;
}

/** The same, its corners x and y apart. */
export function cornersOfCurve(points: readonly Point[]): Corners {
  const n = points.length;
  const xs = new Float64Array(STEPS * n + 1);
  const ys = new Float64Array(STEPS * n + 1);
  for (let i = 0; i < n; i++) {
    traceBetween(itemRound(points, i - 1), points[i]!, itemRound(points, i + 1), itemRound(points, i + 2), i, xs, ys);
  }
  const kept = keptOf(xs, ys, STEPS * n, TOLERANCE);
  let count = 0;
  for (let i = 0; i < STEPS * n; i++) {
    if (!kept[i]) continue;
    xs[count] = xs[i]!;
    ys[count++] = ys[i]!;
  }
  return { xs, ys, count };
}

/** Traces the curve from the second of four points up to the third, the `i`th of its parts. */
function traceBetween(p0: Point, p1: Point, p2: Point, p3: Point, i: number, xs: Float64Array, ys: Float64Array): void {
  const a = gap(p0, p1);
  const b = gap(p1, p2);
  const c = gap(p2, p3);
  const fromX = b * tangent(p0[0], p1[0], p2[0], a, b);
  const fromY = b * tangent(p0[1], p1[1], p2[1], a, b);
  const toX = b * tangent(p1[0], p2[0], p3[0], b, c);
  const toY = b * tangent(p1[1], p2[1], p3[1], b, c);
  for (let k = 0; k < STEPS; k++) {
    const { start, leave, end, arrive } = WEIGHTS[k]!;
    xs[STEPS * i + k] = start * p1[0] + leave * fromX + end * p2[0] + arrive * toX;
    ys[STEPS * i + k] = start * p1[1] + leave * fromY + end * p2[1] + arrive * toY;
  }
}

/** How fast a coordinate changes with the parameter at the second of three points, whose parameters are a and b apart. */
function tangent(p: number, q: number, r: number, a: number, b: number): number {
  return (q - p) / a - (r - p) / (a + b) + (r - q) / b;
}

/** The centripetal parameter from one point to the next: the root of their distance. */
function gap(a: Point, b: Point): number {
  return Math.sqrt(Math.sqrt((b[0] - a[0]) ** 2 + (b[1] - a[1]) ** 2));
}
