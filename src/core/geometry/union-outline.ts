import { FillRule, union } from 'clipper2-ts';
import { area } from './area';
import type { Point, Ring } from './ring';

/** Whole steps of polygon arithmetic in a millimetre. */
const STEPS_PER_MM = 1e4;

/** The outer edges of rings taken together, counter-clockwise; inner edges are left out. */
export function unionOutline(rings: readonly Ring[]): readonly Ring[] {
  const paths = rings.map((ring) =>
    // Orientation tells inside from outside here, so every ring is made to turn the same way.
    (area(ring) < 0 ? [...ring].reverse() : ring).map(([x, y]) => ({
      x: Math.round(x * STEPS_PER_MM),
      y: Math.round(y * STEPS_PER_MM),
    })),
  );
  return union(paths, FillRule.NonZero)
    .map((path) => path.map(({ x, y }): Point => [x / STEPS_PER_MM, y / STEPS_PER_MM]))
    .filter((ring) => area(ring) > 0);
}
