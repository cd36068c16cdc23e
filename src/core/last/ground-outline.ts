import type { Point, Ring } from '../geometry/ring';
import { atLength, type Profile } from './profile';

/**
 * The outline of what lies flat under a raised last: lengths behind the tread line as they stand on the ground, the
 * forepart along the toe spring.
 * @param ring the developed outline of the last, x along the bottom
 */
export function groundOutline(ring: Ring, profile: Profile): Ring {
  const tread = atLength(profile, profile.tread);
  return ring.map(({ 0: s, 1: y }): Point => [s <= tread.s ? atLength(profile, s).x : tread.x + s - tread.s, y]);
}
