import type { Ring } from './ring';

/** Area that a ring encloses, mm²; negative for a clockwise ring. Shoelace formula (derived). */
export function area(ring: Ring): number {
  let twice = 0;
  let [px, py] = ring[ring.length - 1] ?? [0, 0];
  for (const [x, y] of ring) {
    twice += px * y - x * py;
    px = x;
    py = y;
  }
  return twice / 2;
}

const STEPS_PER_MM2 = 1024;

/**
 * The same for comparing, rounded to a power of two parts of a mm²: an outline and its mirror image have one area then, and
 * sums are exact in whatever order they are added up.
 */
export function roundedArea(ring: Ring): number {
  return Math.round(area(ring) * STEPS_PER_MM2) / STEPS_PER_MM2;
}
