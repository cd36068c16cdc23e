import type { Point, Ring } from './ring';

/** Steps in a millimetre to which coordinates are rounded: far finer than any knife, far coarser than the last bits. */
const STEPS_PER_MM = 1e6;

/**
 * A ring with its coordinates on a grid of a millionth of a mm; the very same where it lies on it. Engines differ in the
 * last bits of sines, cosines and powers; on the grid they agree, and so does all that is decided by the outline.
 */
export function roundedRing(ring: Ring): Ring {
  const n = ring.length;
  let on = 0;
  while (on < n && rounded(ring[on]![0]) === ring[on]![0] && rounded(ring[on]![1]) === ring[on]![1]) on++;
  if (on === n) return ring;
  return ring.map(({ 0: x, 1: y }): Point => [rounded(x), rounded(y)]);
}

/** A length on the same grid, mm. */
export function rounded(length: number): number {
  return Math.round(length * STEPS_PER_MM) / STEPS_PER_MM;
}
