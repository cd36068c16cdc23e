import { area } from '../../geometry/area';
import { box } from '../../geometry/box';
import { cornersOf } from '../../geometry/gap';
import { pointToEdge } from '../../geometry/point-to-edge';
import type { Ring } from '../../geometry/ring';

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
  const { left, bottom, right, top } = box(ring);
  const side = Math.max(right - left, top - bottom);
  const poles: Pole[] = [];
  let squares = [squareAt(corners, poles, (left + right) / 2, (bottom + top) / 2, side / 2)];
  let covered = 0;
  for (;;) {
    const { x, y, radius, split } = largestCircle(corners, side, poles, squares);
    if (!(radius > 0)) return poles;
    const pole = { x, y, radius };
    poles.push(pole);
    squares = split;
    for (const square of squares) keepClear(square, pole);
    covered += (Math.PI * radius ** 2) / whole;
    let enough = most;
    for (const [count, share] of ENOUGH) if (covered > share) enough = Math.min(enough, count);
    if (poles.length >= enough) return poles;
  }
}

/** A square that may hold a circle's middle, by its own middle and half its side, and the radius of a circle about that. */
interface Square {
  readonly x: number;
  readonly y: number;
  readonly half: number;
  radius: number;
}

function squareAt(corners: Float64Array, poles: readonly Pole[], x: number, y: number, half: number): Square {
  const square = { x, y, half, radius: toEdge(corners, x, y) };
  for (const pole of poles) keepClear(square, pole);
  return square;
}

/** A circle about the middle of a square is to keep clear of a pole as well. */
function keepClear(square: Square, pole: Pole): void {
  const [dx, dy] = [square.x - pole.x, square.y - pole.y];
  square.radius = Math.min(square.radius, Math.sqrt(dx * dx + dy * dy) - pole.radius);
}

/**
 * The largest circle within a ring that keeps clear of others, to 1 %: squares that may hold its middle, split ever finer.
 * @returns with it the squares as they are split by then: where others have room, which only gets less, is found sooner
 */
function largestCircle(
  corners: Float64Array,
  side: number,
  others: readonly Pole[],
  squares: readonly Square[],
): Pole & { readonly split: Square[] } {
  let best: Pole = { x: 0, y: 0, radius: 0 };
  const split: Square[] = [];
  for (let level = squares; level.length > 0;) {
    for (const square of level) if (square.radius > best.radius) best = square;
    const finer: Square[] = [];
    for (const square of level) {
      const { x, y, half, radius } = square;
      const bound = radius + half * Math.SQRT2;
      if (half > side / 512 && bound > 1.01 * best.radius + 1e-4 * side) {
        for (const u of [-0.5, 0.5]) {
          for (const v of [-0.5, 0.5]) finer.push(squareAt(corners, others, x + u * half, y + v * half, half / 2));
        }
      } else if (bound > 1e-4 * side) split.push(square);
    }
    level = finer;
  }
  return { x: best.x, y: best.y, radius: best.radius, split };
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
