import { ramerDouglasPeuckerD } from 'clipper2-ts';
import type { Point, Ring } from './ring';

/** A ring with as few of its points as keep it within `tolerance` mm of the original (Ramer–Douglas–Peucker). */
export function simplify(ring: Ring, tolerance: number): Ring {
  // The algorithm keeps both ends of a line, so a ring is opened at a point that it keeps anyway and closed again.
  const [first] = ring;
  if (!first) return ring;
  const line = [...ring, first].map(([x, y]) => ({ x, y }));
  const thinned = ramerDouglasPeuckerD(line, tolerance);
  return thinned.slice(0, -1).map(({ x, y }): Point => [x, y]);
}
