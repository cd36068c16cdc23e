import { pointToEdge } from './point-to-edge';
import type { Ring } from './ring';

/**
 * A ring with as few of its points as keep it within `tolerance` mm of the original (Ramer–Douglas–Peucker, by the
 * distance from the edge and not from its line: a point may lie beyond the edge's ends).
 */
export function simplify(ring: Ring, tolerance: number): Ring {
  const n = ring.length;
  const xs = new Float64Array(n + 1);
  const ys = new Float64Array(n + 1);
  for (let i = 0; i < n; i++) {
    const point = ring[i]!;
    xs[i] = point[0];
    ys[i] = point[1];
  }
  const kept = keptOf(xs, ys, n, tolerance);
  return ring.filter((_, i) => kept[i]);
}

/**
 * Which points of a ring that are: 1 or 0 for each.
 * @param xs of the points one after the other, with room for one more; the same for `ys`
 * @param n points
 */
export function keptOf(xs: Float64Array, ys: Float64Array, n: number, tolerance: number): Uint8Array {
  const kept = new Uint8Array(n + 1);
  if (n === 0) return kept;
  const firstX = xs[0]!;
  const firstY = ys[0]!;
  // The first point stands once more at the end.
  xs[n] = firstX;
  ys[n] = firstY;
  let far = 0;
  let farthest = 0;
  for (let i = 1; i < n; i++) {
    const away = (xs[i]! - firstX) ** 2 + (ys[i]! - firstY) ** 2;
    if (away > farthest) {
      farthest = away;
      far = i;
    }
  }
  // Both ends of a line are kept: the ring is opened at its first point and at the one furthest from it.
  keepBetween(xs, ys, 0, far, tolerance ** 2, kept);
  keepBetween(xs, ys, far, n, tolerance ** 2, kept);
  kept[0] = kept[far] = 1;
  return kept;
}

/** Marks the points between two that must stay, so that all lie within a distance, here squared, of what stays. */
function keepBetween(
  xs: Float64Array,
  ys: Float64Array,
  from: number,
  to: number,
  most: number,
  kept: Uint8Array,
): void {
  const ax = xs[from]!;
  const ay = ys[from]!;
  const bx = xs[to]!;
  const by = ys[to]!;
  let worst = most;
  let at = -1;
  for (let i = from + 1; i < to; i++) {
    const squared = pointToEdge(xs[i]!, ys[i]!, ax, ay, bx, by);
    if (squared > worst) {
      worst = squared;
      at = i;
    }
  }
  if (at < 0) return;
  kept[at] = 1;
  keepBetween(xs, ys, from, at, most, kept);
  keepBetween(xs, ys, at, to, most, kept);
}
