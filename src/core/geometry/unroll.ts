import type { Point } from './ring';

/** A point in space, mm. */
export type Point3 = readonly [x: number, y: number, z: number];

/** A straight line in a surface, from its lower edge to its upper one. */
export type Ruling = readonly [lower: Point3, upper: Point3];

/** A surface laid flat: its edges point for point, and its area, mm². */
export interface Unrolled {
  readonly lower: readonly Point[];
  readonly upper: readonly Point[];
  readonly area: number;
}

/**
 * Lays a ruled surface flat by true side lengths, two triangles between every two rulings: PᵢQᵢQᵢ₊₁, then PᵢQᵢ₊₁Pᵢ₊₁
 * (derived; exact in the limit for what can be unrolled, such as the wall of a cone). The first ruling stands upright on
 * the origin, the rest follows to its right.
 * @param rulings two or more
 */
export function unroll(rulings: readonly Ruling[]): Unrolled {
  const [first, ...others] = rulings;
  if (!first) return { lower: [], upper: [], area: 0 };
  let [p, q] = first;
  let lower: Point = [0, 0];
  let upper: Point = [0, distance(p, q)];
  const edges = { lower: [lower], upper: [upper] };
  let area = 0;
  for (const [nextP, nextQ] of others) {
    const high = rightOf(lower, upper, distance(p, nextQ), distance(q, nextQ));
    area += triangle(lower, high, upper);
    const low = rightOf(lower, high, distance(p, nextP), distance(nextQ, nextP));
    area += triangle(lower, low, high);
    [p, q, lower, upper] = [nextP, nextQ, low, high];
    edges.lower.push(low);
    edges.upper.push(high);
  }
  return { ...edges, area };
}

function distance([ax, ay, az]: Point3, [bx, by, bz]: Point3): number {
  return Math.hypot(bx - ax, by - ay, bz - az);
}

/** The point so far from two others, to the right of the way from the first to the second. */
function rightOf([ax, ay]: Point, [bx, by]: Point, fromA: number, fromB: number): Point {
  const length = Math.hypot(bx - ax, by - ay);
  // Where the two are one, any direction is as good.
  const [ux, uy] = length > 0 ? [(bx - ax) / length, (by - ay) / length] : [0, 1];
  const along = length > 0 ? (fromA ** 2 - fromB ** 2 + length ** 2) / (2 * length) : 0;
  const off = Math.sqrt(Math.max(0, fromA ** 2 - along ** 2));
  return [ax + along * ux + off * uy, ay + along * uy - off * ux];
}

function triangle([ax, ay]: Point, [bx, by]: Point, [cx, cy]: Point): number {
  return ((bx - ax) * (cy - ay) - (cx - ax) * (by - ay)) / 2;
}
