import { itemRound } from '../../../src/core/item-at';
import fc from 'fast-check';
import { area } from '../../../src/core/geometry/area';
import { crossesItself } from '../../../src/core/geometry/crosses-itself';
import type { Point, Ring } from '../../../src/core/geometry/ring';
import { evenly } from '../../evenly';

/** Outlines for the tests, all invented. */

export function rectangle(length: number, width: number): Ring {
  return [
    [0, 0],
    [length, 0],
    [length, width],
    [0, width],
  ];
}

export function regular(corners: number, radius = 100, turn = 0.1): Ring {
  return Array.from({ length: corners }, (_, i): Point => {
    const angle = (2 * Math.PI * i) / corners + turn;
    return [radius * Math.cos(angle), radius * Math.sin(angle)];
  });
}

/** Something like a sole, 87 × 270 mm when the length is 270: heel at the left, toe at the right. */
export function soleLike(length = 270, corners = 60, mirrored = false): Ring {
  const scale = length / 270;
  const points = Array.from({ length: corners }, (_, i): Point => {
    const t = (2 * Math.PI * i) / corners;
    const halfWidth = 34 + 14 * Math.cos(t - 0.35) - 9 * Math.cos(2 * t) + 4 * Math.cos(3 * t);
    const swing = 10 * Math.cos(2 * t) + 6 * Math.cos(t);
    const across = halfWidth * Math.sin(t) + swing;
    return [135 * Math.cos(t) * scale, (mirrored ? 1 : -1) * across * scale];
  });
  return area(points) < 0 ? [...points].reverse() : points;
}

/** The T of four squares, each of side 10. */
export const tee: Ring = [
  [10, 0],
  [20, 0],
  [20, 10],
  [30, 10],
  [30, 20],
  [0, 20],
  [0, 10],
  [10, 10],
];

/** The T of five squares. */
export const longTee: Ring = [
  [10, 0],
  [20, 0],
  [20, 20],
  [30, 20],
  [30, 30],
  [0, 30],
  [0, 20],
  [10, 20],
];

/** A hook, which holds another one that is turned end for end. */
export const hook: Ring = [
  [0, 0],
  [40, 0],
  [40, 30],
  [30, 30],
  [30, 10],
  [10, 10],
  [10, 80],
  [0, 80],
];

/** Any outline about a middle: round, starred and thin, with corners that all but lie on a line. */
export const anyOutline: fc.Arbitrary<Ring> = fc
  .record({
    radii: fc.array(evenly(0.15, 1), { minLength: 3, maxLength: 24 }),
    size: evenly(20, 140),
    flat: evenly(0.05, 1),
    turn: evenly(0, 360),
    split: fc.boolean(),
  })
  .map(({ radii, size, flat, turn, split }) => {
    const corners = radii.map((radius, i): Point => {
      const angle = (2 * Math.PI * i) / radii.length + turn;
      return [size * radius * Math.cos(angle), size * flat * radius * Math.sin(angle)];
    });
    if (!split) return corners;
    return corners.flatMap((corner, i): Point[] => {
      const [nx, ny] = itemRound(corners, i + 1);
      return [corner, [(corner[0] + nx) / 2 + 1e-7, (corner[1] + ny) / 2]];
    });
  })
  .filter((ring) => area(ring) > 20 && !crossesItself(ring));
