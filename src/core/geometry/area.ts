import type { Ring } from './ring';

/** Area that a ring encloses, mm²; negative for a clockwise ring. Shoelace formula (derived). */
export function area(ring: Ring): number {
  let twice = 0;
  for (let i = 0, j = ring.length - 1; i < ring.length; j = i++) {
    const p = ring[j]!;
    const q = ring[i]!;
    twice += p[0] * q[1] - q[0] * p[1];
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
