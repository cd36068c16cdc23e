import { area } from './area';
import { union } from './regions';
import type { Ring } from './ring';

/** The outer edges of rings taken together, counter-clockwise; inner edges are left out. */
export function unionOutline(rings: readonly Ring[]): readonly Ring[] {
  // Orientation tells inside from outside here, so every ring is made to turn the same way.
  const alike = rings.map((ring) => (area(ring) < 0 ? [...ring].reverse() : ring));
  return union(alike).filter((ring) => area(ring) > 0);
}
