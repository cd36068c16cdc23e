// The only place that calls the polygon library, and of it only the parts in use: its index would bring all of it along.
import { ClipType, FillRule, PathType } from 'clipper2-ts/dist/Core.js';
import { Clipper64 } from 'clipper2-ts/dist/Engine.js';
import { ClipperOffset, EndType, JoinType } from 'clipper2-ts/dist/Offset.js';
import { Problem } from '../problem';
import type { Point, Ring } from './ring';

/*
 * Regions: rings of which those that run counter-clockwise enclose what belongs to the region and those that run
 * clockwise what does not.
 */

/** Polygon arithmetic is done in whole steps, of 0.1 µm where nothing else is asked for, which keeps it exact. */
const STEPS_PER_MM = 1e4;

/** How far a rounded corner may lie inside its true arc, mm. */
export const ARC_TOLERANCE = 0.01;

/** What lies in the first region and not in the second. */
export function difference(of: readonly Ring[], without: readonly Ring[]): readonly Ring[] {
  return combined(ClipType.Difference, of, without, FillRule.NonZero);
}

/** What lies in both regions. */
export function intersection(one: readonly Ring[], other: readonly Ring[], stepsPerMm?: number): readonly Ring[] {
  return combined(ClipType.Intersection, one, other, FillRule.NonZero, stepsPerMm);
}

/** What rings wind round at all, whichever way they run. */
export function union(region: readonly Ring[]): readonly Ring[] {
  return combined(ClipType.Union, region, [], FillRule.NonZero);
}

/** What a ring that may cross itself encloses: the parts that it winds round counter-clockwise. */
export function enclosed(ring: Ring): readonly Ring[] {
  return combined(ClipType.Union, [ring], [], FillRule.Positive);
}

/** A region let out by a distance with rounded corners, or taken in where it is negative. */
export function grown(region: readonly Ring[], distance: number): readonly Ring[] {
  return inflated(region, distance, JoinType.Round);
}

/** A region let out by at least a distance everywhere, with few corners: mitred, and squared where they are sharp. */
export function grownMitred(region: readonly Ring[], distance: number): readonly Ring[] {
  return inflated(region, distance, JoinType.Miter);
}

function combined(
  how: ClipType,
  subject: readonly Ring[],
  clip: readonly Ring[],
  fill: FillRule,
  stepsPerMm = STEPS_PER_MM,
): readonly Ring[] {
  return ended((finer) => {
    const steps = stepsPerMm * finer;
    const found: Path[] = [];
    const work = new Clipper64();
    work.addPaths(paths(subject, steps), PathType.Subject);
    work.addPaths(paths(clip, steps), PathType.Clip);
    work.execute(how, fill, found);
    return rings(found, steps);
  });
}

function inflated(region: readonly Ring[], distance: number, corners: JoinType): readonly Ring[] {
  if (distance === 0 || region.length === 0) return region;
  return ended((finer) => {
    const steps = STEPS_PER_MM * finer;
    const found: Path[] = [];
    // Corners are mitred as far out as twice the distance.
    const work = new ClipperOffset(2, ARC_TOLERANCE * steps);
    work.addPaths(paths(region, steps), corners, EndType.Polygon);
    work.execute(distance * steps, found);
    return rings(found, steps);
  });
}

/** Thrown where the library's sweep turns back, and would go to and fro for ever. */
class Astray extends Error {}

/** Heights that each sweep has met. */
const met = new WeakMap<object, number>();

/** What the library's sweep has of its own. */
interface Sweep {
  readonly vertexList: { readonly length: number };
  popScanline(): { readonly success: boolean; readonly y: number };
}

const sweep = Clipper64.prototype as unknown as Sweep;
const { popScanline: next } = sweep;

/**
 * A sweep goes upward and meets the height of each corner once. Rings of which edges cross within a few steps of one another may
 * send it down again, and then it has no end (clipper2-ts 2.0.1): one that has met more heights than there are corners is ended.
 */
sweep.popScanline = function (this: Sweep) {
  const heights = (met.get(this) ?? 0) + 1;
  met.set(this, heights);
  if (heights > 2 * this.vertexList.length + 2) throw new Astray();
  return next.call(this);
};

/** Steps so much finer are tried one after the other: on them crossings that had run together lie apart. */
const FINER = [1, 7, 61];

function ended(work: (finer: number) => readonly Ring[]): readonly Ring[] {
  for (const finer of FINER) {
    try {
      return work(finer);
    } catch (error) {
      if (!(error instanceof Astray)) throw error;
    }
  }
  throw new Problem(
    'unavailable',
    { argument: 'outline' },
    'its edges cross or lie on one another in too many places to be told apart; move some of its points by half a millimetre',
  );
}

type Path = { x: number; y: number }[];

function paths(region: readonly Ring[], stepsPerMm: number): Path[] {
  return region.map((ring) =>
    ring.map(({ 0: x, 1: y }) => ({ x: Math.round(x * stepsPerMm), y: Math.round(y * stepsPerMm) })),
  );
}

function rings(found: readonly Path[], stepsPerMm: number): readonly Ring[] {
  return found.map((path) => path.map(({ x, y }): Point => [x / stepsPerMm, y / stepsPerMm]));
}
