import {
  difference as differenceOf,
  EndType,
  FillRule,
  inflatePaths,
  intersect as intersectionOf,
  JoinType,
} from 'clipper2-ts';
import { ARC_TOLERANCE } from './let-out';
import type { Point, Ring } from './ring';

/** Whole steps of polygon arithmetic in a millimetre. */
const STEPS_PER_MM = 1e4;

type Path = { x: number; y: number }[];

/*
 * Regions: rings of which those that run counter-clockwise enclose what belongs to the region and those that run
 * clockwise what does not.
 */

/** What lies in the first region and not in the second. */
export function difference(of: readonly Ring[], without: readonly Ring[]): readonly Ring[] {
  return rings(differenceOf(paths(of), paths(without), FillRule.NonZero));
}

/** What lies in both regions. */
export function intersection(one: readonly Ring[], other: readonly Ring[]): readonly Ring[] {
  return rings(intersectionOf(paths(one), paths(other), FillRule.NonZero));
}

/** A region let out by a distance with rounded corners, or taken in where it is negative. */
export function grown(region: readonly Ring[], distance: number): readonly Ring[] {
  if (distance === 0 || region.length === 0) return region;
  const tolerance = ARC_TOLERANCE * STEPS_PER_MM;
  return rings(inflatePaths(paths(region), distance * STEPS_PER_MM, JoinType.Round, EndType.Polygon, 2, tolerance));
}

/** A region let out by at least a distance everywhere, with few corners: mitred, and squared where they are sharp. */
export function grownMitred(region: readonly Ring[], distance: number): readonly Ring[] {
  if (distance === 0 || region.length === 0) return region;
  return rings(inflatePaths(paths(region), distance * STEPS_PER_MM, JoinType.Miter, EndType.Polygon, 2));
}

function paths(region: readonly Ring[]): Path[] {
  return region.map((ring) =>
    ring.map(([x, y]) => ({ x: Math.round(x * STEPS_PER_MM), y: Math.round(y * STEPS_PER_MM) })),
  );
}

function rings(found: readonly Path[]): readonly Ring[] {
  return found.map((path) => path.map(({ x, y }): Point => [x / STEPS_PER_MM, y / STEPS_PER_MM]));
}
