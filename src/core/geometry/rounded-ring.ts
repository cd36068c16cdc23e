import type { Point, Ring } from './ring';

/** Steps in a millimetre to which coordinates are rounded: far finer than any knife, far coarser than the last bits. */
const STEPS_PER_MM = 1e6;

/**
 * A ring with its coordinates on a grid of a millionth of a mm; the very same where it lies on it. Engines differ in the
 * last bits of sines, cosines and powers; on the grid they agree, and so does all that is decided by the outline.
 */
export function roundedRing(ring: Ring): Ring {
  const made: Point[] = [];
  let same = true;
  for (let i = 0; i < ring.length; i++) {
    const point = ring[i]!;
    const x = rounded(point[0]);
    const y = rounded(point[1]);
    if (x !== point[0] || y !== point[1]) same = false;
    made.push([x, y]);
  }
  return same ? ring : made;
}

/** A length on the same grid, mm. */
export function rounded(length: number): number {
  return Math.round(length * STEPS_PER_MM) / STEPS_PER_MM;
}
