import { area } from './area';
import { edgeLength } from './edge-length';
import { intersection } from './regions';
import type { Ring } from './ring';

/** Whole steps of 0.01 µm: overlaps are told apart down to that depth. */
const STEPS_PER_MM = 1e5;

/**
 * How deep two pieces lie in each other, mm: the width of what they share, as that of a long
 * thin strip. 0 where they only touch.
 */
export function overlap(a: Ring, b: Ring): number {
  return depth(intersection([a], [b], STEPS_PER_MM));
}

/** Width of a long thin region, mm: twice its area over its edge length. */
export function depth(region: readonly Ring[]): number {
  const size = region.reduce((sum, ring) => sum + area(ring), 0);
  return size <= 0 ? 0 : (2 * size) / region.reduce((sum, ring) => sum + edgeLength(ring), 0);
}
