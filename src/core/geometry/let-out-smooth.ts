import { union, FillRule } from 'clipper2-ts';
import { area } from './area';
import { crossesItself } from './crosses-itself';
import type { Point, Ring } from './ring';

/** Whole steps of polygon arithmetic in a millimetre. */
const STEPS_PER_MM = 1e4;

/**
 * Lets a smooth outline out by an amount that may differ from place to place (welt or sole projection by zone): each
 * point moves along its normal, mitred so that straight edges move by the amount. Keeps the number of points, which the
 * exact letOut does not; loops that a tight hollow would make are cut away.
 * @param amount mm at a point and its index, negative to take in
 */
export function letOutSmooth(ring: Ring, amount: number | ((point: Point, index: number) => number)): Ring {
  const n = ring.length;
  const at = (i: number) => ring[(i + n) % n] as Point;
  const moved = ring.map((p, i): Point => {
    const [a, b] = [normal(at(i - 1), p), normal(p, at(i + 1))];
    const by = (typeof amount === 'number' ? amount : amount(p, i)) / Math.max(0.3, 1 + a[0] * b[0] + a[1] * b[1]);
    return [p[0] + by * (a[0] + b[0]), p[1] + by * (a[1] + b[1])];
  });
  return crossesItself(moved) ? withoutLoops(moved) : moved;
}

/** Unit normal to the right of an edge: outward on a counter-clockwise ring. */
function normal([ax, ay]: Point, [bx, by]: Point): Point {
  const length = Math.hypot(bx - ax, by - ay) || 1;
  return [(by - ay) / length, (ax - bx) / length];
}

function withoutLoops(ring: Ring): Ring {
  const path = ring.map(([x, y]) => ({ x: Math.round(x * STEPS_PER_MM), y: Math.round(y * STEPS_PER_MM) }));
  const parts = union([path], FillRule.Positive).map((one) =>
    one.map(({ x, y }): Point => [x / STEPS_PER_MM, y / STEPS_PER_MM]),
  );
  return parts.reduce<Ring>((largest, part) => (area(part) > area(largest) ? part : largest), []);
}
