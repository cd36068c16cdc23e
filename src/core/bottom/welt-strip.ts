import { edgeBeyond } from '../geometry/edge-beyond';
import type { Ring } from '../geometry/ring';

/** A welt before it is sewn on. */
export interface WeltStrip {
  /** Length to cut: the inseam and the lap, mm. */
  readonly length: number;
  readonly inseam: number;
  /** Length that its outer edge is stretched to, mm: a full turn of a strip w wide is 2πw longer outside (derived). */
  readonly outer: number;
}

/**
 * The strip for a welt along an outline.
 * @param from where it begins and ends, along the length from the back, mm; undefined for all round
 * @param lap mm over which its ends overlap, or by which they run on
 */
export function weltStrip(ring: Ring, lap: number, width: number, from?: number): WeltStrip {
  const inseam = edgeBeyond(ring, from ?? -Infinity);
  // Round the toe from side to side the strip turns by half of a full turn.
  const turns = from === undefined ? 2 * Math.PI : Math.PI;
  return { length: inseam + lap, inseam, outer: inseam + turns * width };
}
