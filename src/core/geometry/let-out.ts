import { EndType, inflatePaths, JoinType } from 'clipper2-ts';
import { Problem } from '../problem';
import { area } from './area';
import type { Ring } from './ring';

/** Polygon arithmetic is done in whole steps of 0.1 µm, which keeps it exact. */
const STEPS_PER_MM = 1e4;

/** How far a rounded corner may lie inside its true arc, mm. */
export const ARC_TOLERANCE = 0.01;

/**
 * The outline that lies `distance` outside a ring (inside where negative), corners rounded.
 * A convex outline grows by edge × distance + π distance² (Steiner).
 * @throws Problem where nothing is left or the outline falls apart.
 */
export function letOut(ring: Ring, distance: number, argument = 'distance'): Ring {
  if (distance === 0) return ring;
  const path = ring.map(([x, y]) => ({ x: Math.round(x * STEPS_PER_MM), y: Math.round(y * STEPS_PER_MM) }));
  const grown = inflatePaths(
    [path],
    distance * STEPS_PER_MM,
    JoinType.Round,
    EndType.Polygon,
    2,
    ARC_TOLERANCE * STEPS_PER_MM,
  ).map((one) => one.map(({ x, y }) => [x / STEPS_PER_MM, y / STEPS_PER_MM] as const));
  // A hole is an inlet that the let-out edge has closed: a knife does not reach it, so the piece keeps it.
  const outer = grown.filter((one) => area(one) > 0);
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
