import { area } from '../../geometry/area';
import { box } from '../../geometry/box';
import { convexHull } from '../../geometry/convex-hull';
import { mirror } from '../../geometry/mirror';
import { moved } from '../../geometry/moved';
import { bytesOfRecords } from '../../bytes';
import { Memo } from '../../memo';
import { Memory } from '../../memory';
import type { Box, Ring } from '../../geometry/ring';
import { type Pole, polesOf } from './poles';

/** A kind of piece in one of the turns in which it may lie, about the middle of its box. */
export interface TurnedOutline {
  readonly kind: number;
  readonly turn: number;
  /** The kind that is the other foot's, where this one's outline was mirrored from it. */
  readonly mirrorOf?: number | undefined;
  readonly ring: Ring;
  readonly box: Box;
  /** Poles one after the other, the largest first: x, y, radius. */
  readonly poles: Float64Array;
  readonly area: number;
  readonly hullArea: number;
  /** Greatest distance between two corners. */
  readonly diameter: number;
  /** Where the middle lies in the turned ring as given: what was taken off its coordinates. */
  readonly middleX: number;
  readonly middleY: number;
}

/** Poles kept at most of an outline, by how many shapes there are: losses between poles are worked out for every two. */
const MOST_POLES: readonly (readonly [shapes: number, poles: number])[] = [
  [60, 24],
  [240, 12],
  [Infinity, 10],
];

/** Poles of outlines that have been asked for, whichever search asked. */
const known = new Memo<readonly Pole[]>(new Memory(16e6), 'poles', ({ length }) => bytesOfRecords(length));

/**
 * A kind of piece in all the turns in which it may lie. Centred on their boxes, all turns are alike to a sample.
 * @param kinds how many there are in all
 * @param mirrorOf the kind that it was mirrored from
 */
export function inTurns(
  ring: Ring,
  kind: number,
  turns: readonly number[],
  kinds: number,
  mirrorOf?: number,
): readonly TurnedOutline[] {
  const [, most] = MOST_POLES.find(([shapes]) => kinds * turns.length <= shapes)!;
  const poles = mirrorOf === undefined ? polesFor(ring, most) : mirroredPoles(polesFor(mirror(ring), most));
  const hull = convexHull(ring);
  const diameter = diameterOf(hull);
  return turns.map((turn) => {
    const turned = moved(ring, turn);
    const { left, bottom, right, top } = box(turned);
    const middleX = (left + right) / 2;
    const middleY = (bottom + top) / 2;
    const centred = moved(turned, 0, -middleX, -middleY);
    const places = moved(
      poles.map(({ x, y }) => [x, y] as const),
      turn,
      -middleX,
      -middleY,
    );
    return {
      kind,
      turn,
      mirrorOf,
      ring: centred,
      box: box(centred),
      poles: Float64Array.from(poles.flatMap(({ radius }, i) => [places[i]![0], places[i]![1], radius])),
      area: Math.abs(area(ring)),
      hullArea: Math.abs(area(hull)),
      diameter,
      middleX,
      middleY,
    };
  });
}

function diameterOf(hull: Ring): number {
  let most = 0;
  for (let i = 0; i < hull.length; i++) {
    const { 0: x, 1: y } = hull[i]!;
    for (let j = 0; j < i; j++) most = Math.max(most, (hull[j]![0] - x) ** 2 + (hull[j]![1] - y) ** 2);
  }
  return Math.sqrt(most);
}

function polesFor(ring: Ring, most: number): readonly Pole[] {
  return known.get(JSON.stringify([most, ring]), () => polesOf(ring, most));
}

function mirroredPoles(poles: readonly Pole[]): readonly Pole[] {
  return poles.map(({ x, y, radius }) => ({ x, y: -y, radius }));
}
