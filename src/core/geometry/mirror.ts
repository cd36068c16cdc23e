import type { Point, Ring } from './ring';

/** The other foot's outline: mirrored in the length line, still counter-clockwise. */
export function mirror(ring: Ring): Ring {
  return ring.map(({ 0: x, 1: y }): Point => [x, -y]).reverse();
}
