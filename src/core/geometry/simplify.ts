import { pointToEdge } from './point-to-edge';
import type { Ring } from './ring';

/**
 * A ring with as few of its points as keep it within `tolerance` mm of the original (Ramer–Douglas–Peucker, by the
 * distance from the edge and not from its line: a point may lie beyond the edge's ends).
 */
export function simplify(ring: Ring, tolerance: number): Ring {
  const [first] = ring;
  if (!first) return ring;
  const n = ring.length;
  // The first point stands once more at the end.
  const xs = new Float64Array(n + 1);
  const ys = new Float64Array(n + 1);
  let far = 0;
  let farthest = 0;
  for (let i = 0; i <= n; i++) {
    const { 0: x, 1: y } = i < n ? ring[i]! : first;
    xs[i] = x;
    ys[i] = y;
    const away = Math.hypot(x - first[0], y - first[1]);
    if (away > farthest) {
      farthest = away;
      far = i;
    }
  }
  // Both ends of a line are kept: the ring is opened at its first point and at the one furthest from it.
  const kept = new Uint8Array(n + 1);
  keepBetween(xs, ys, 0, far, tolerance ** 2, kept);
  keepBetween(xs, ys, far, n, tolerance ** 2, kept);
  kept[0] = kept[far] = 1;
  return ring.filter((_, i) => kept[i]);
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
