import { area } from '../../geometry/area';
import { box } from '../../geometry/box';
import { cornersOf } from '../../geometry/gap';
import { pointToEdge } from '../../geometry/point-to-edge';
import type { Box, Ring } from '../../geometry/ring';

/** A circle inscribed in a piece. */
export interface Pole {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

/** So many poles are enough once they cover more than this share of the piece. */
const ENOUGH: readonly (readonly [count: number, covered: number])[] = [
  [64, 0],
  [16, 0.8],
  [8, 0.9],
];

/**
 * Circles that stand for a piece where overlaps are weighed: each the largest that fits in what the ones before have
 * left (the surrogate of Gardeyn, Vanden Berghe and Wauters 2025, arXiv 2509.13329, section on quantification).
 * @param most never more than so many
 */
export function polesOf(ring: Ring, most: number): readonly Pole[] {
  const whole = Math.abs(area(ring));
  const corners = cornersOf(ring);
  const poles: Pole[] = [];
  let covered = 0;
  for (;;) {
    const pole = largestCircle(corners, box(ring), poles);
    if (!(pole.radius > 0)) return poles;
    poles.push(pole);
    covered += (Math.PI * pole.radius ** 2) / whole;
    let enough = most;
    for (const [count, share] of ENOUGH) if (covered > share) enough = Math.min(enough, count);
    if (poles.length >= enough) return poles;
  }
}

/** The largest circle within a ring that keeps clear of others, to 1 %: squares that may hold its centre, split ever finer. */
function largestCircle(corners: Float64Array, { left, bottom, right, top }: Box, others: readonly Pole[]): Pole {
  const side = Math.max(right - left, top - bottom);
  const radiusAt = (x: number, y: number) => {
    let radius = toEdge(corners, x, y);
    for (const other of others) {
      const [dx, dy] = [x - other.x, y - other.y];
      radius = Math.min(radius, Math.sqrt(dx * dx + dy * dy) - other.radius);
    }
    return radius;
  };
  let best: Pole = { x: 0, y: 0, radius: 0 };
  let squares = [{ x: (left + right) / 2, y: (bottom + top) / 2, half: side / 2 }];
  while (squares.length > 0) {
    const measured = squares.map((square) => ({ ...square, radius: radiusAt(square.x, square.y) }));
    for (const { x, y, radius } of measured) if (radius > best.radius) best = { x, y, radius };
    squares = measured
      .filter(({ half, radius }) => half > side / 512 && radius + half * Math.SQRT2 > 1.01 * best.radius + 1e-4 * side)
      .flatMap(({ x, y, half }) =>
        [-0.5, 0.5].flatMap((u) => [-0.5, 0.5].map((v) => ({ x: x + u * half, y: y + v * half, half: half / 2 }))),
      );
  }
  return best;
}

/** Distance of a point from the edges of an outline, by its corners' x and y; below 0 outside it. */
function toEdge(corners: Float64Array, x: number, y: number): number {
  let least = Infinity;
  let odd = false;
  let ax = corners[corners.length - 2]!;
  let ay = corners[corners.length - 1]!;
  for (let k = 0; k < corners.length; k += 2) {
    const bx = corners[k]!;
    const by = corners[k + 1]!;
    least = Math.min(least, pointToEdge(x, y, ax, ay, bx, by));
    if (by > y !== ay > y && x < ((ax - bx) * (y - by)) / (ay - by) + bx) odd = !odd;
    ax = bx;
    ay = by;
  }
  return odd ? Math.sqrt(least) : -Math.sqrt(least);
}
