import type { Ring } from './ring';

/** The other foot's outline: mirrored in the length line, still counter-clockwise. */
export function mirror(ring: Ring): Ring {
  return ring.map(([x, y]) => [x, -y] as const).reverse();
}
