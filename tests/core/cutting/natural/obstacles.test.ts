import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rectangular, usableGround } from '../../../../src/core/cutting/sheet/natural-sheet';
import { obstaclesOn } from '../../../../src/core/cutting/natural/obstacles';
import { Space } from '../../../../src/core/cutting/search/space';
import { area } from '../../../../src/core/geometry/area';
import { crossesItself } from '../../../../src/core/geometry/crosses-itself';
import { inside } from '../../../../src/core/geometry/inside';
import { evenly } from '../../../evenly';
import { toEdge } from '../oracle';
import { FORMAT, SHEET } from './hide';

const { length, width, edgeTrim } = FORMAT;
const point = fc.tuple(evenly(0, length), evenly(0, width));

describe('obstaclesOn', () => {
  it('covers just what the edge trim, holes and poor zones take from the sheet', () => {
    // Derived: a point is free where it lies within the outline, the trim away from every edge, and on good ground.
    for (const quality of [1, 2]) {
      const obstacles = obstaclesOn(SHEET, quality, edgeTrim, 0);
      const closed = SHEET.zones.filter((zone) => zone.quality > quality).map(({ ring }) => ring);
      fc.assert(
        fc.property(point, ([x, y]) => {
          const edges = [SHEET.outline, ...SHEET.holes].map((ring) => toEdge([x, y], ring) - edgeTrim);
          const zones = closed.map((ring) => toEdge([x, y], ring));
          // Within the coarseness of the obstacles either answer will do.
          fc.pre([...edges, ...zones].every((distance) => Math.abs(distance) > 0.6));
          const free =
            inside(SHEET.outline, x, y) &&
            edges.every((distance) => distance > 0) &&
            ![...SHEET.holes, ...closed].some((ring) => inside(ring, x, y));
          expect(obstacles.some((ring) => inside(ring, x, y))).toBe(!free);
        }),
        { seed: 5, numRuns: 500 },
      );
    }
  });

  it('leaves the neighbour its room: along the length no farther than half the way to the next sheet', () => {
    // Sheets lie half a length apart in the search (space.ts), so this one may take a quarter on each side.
    const tall = rectangular({ length: 200, width: 900 });
    const xs = obstaclesOn(tall, 1, 0, 0).flatMap((ring) => ring.map(([x]) => x));
    expect(Math.min(...xs)).toBeGreaterThanOrEqual(-50);
    expect(Math.max(...xs)).toBeLessThanOrEqual(250);
    const space = new Space([200, 200], [900, 900]);
    expect(space.start(1) - 50).toBeGreaterThanOrEqual(250);
  });

  it('is made of simple outlines, and a poor zone makes more of them', () => {
    const obstacles = (quality: 1 | 2) => obstaclesOn(SHEET, quality, edgeTrim, 0);
    const [best, second] = [obstacles(1), obstacles(2)];
    expect([...best, ...second].some(crossesItself)).toBe(false);
    expect(best.length).toBeGreaterThan(second.length);
    const usable = (quality: 1 | 2) =>
      usableGround(SHEET, quality, edgeTrim).reduce((sum, ring) => sum + area(ring), 0);
    expect(usable(1)).toBeLessThan(usable(2));
  });
});
