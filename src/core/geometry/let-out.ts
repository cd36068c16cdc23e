import { Problem } from '../problem';
import { area } from './area';
import { grown } from './regions';
import type { Ring } from './ring';

/**
 * The outline that lies `distance` outside a ring (inside where negative), corners rounded.
 * A convex outline grows by edge × distance + π distance² (Steiner).
 * @throws Problem where nothing is left or the outline falls apart.
 */
export function letOut(ring: Ring, distance: number, argument = 'distance'): Ring {
  if (distance === 0) return ring;
  // A hole is an inlet that the let-out edge has closed: a knife does not reach it, so the piece keeps it.
  const outer = grown([ring], distance).filter((one) => area(one) > 0);
  const [first] = outer;
  if (!first) {
    throw new Problem('unavailable', { argument }, `taken in by ${-distance} mm nothing of the outline is left`);
  }
  if (outer.length > 1) {
    throw new Problem(
      'unavailable',
      { argument },
      `taken in by ${-distance} mm the outline falls into ${outer.length} parts`,
    );
  }
  return first;
}
