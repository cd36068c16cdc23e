import { polygonHull } from 'd3-polygon';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { itemAt } from '../../../src/core/item-at';
import { area } from '../../../src/core/geometry/area';
import { convexHull } from '../../../src/core/geometry/convex-hull';
import type { Point, Ring } from '../../../src/core/geometry/ring';
import { tee } from '../cutting/outlines';

/** A ring from its lowest corner of those furthest left, so that two lists of the same ring can be held side by side. */
function fromLeft(ring: Ring): Ring {
  const corner = ring.reduce((best, at) => (at[0] < best[0] || (at[0] === best[0] && at[1] < best[1]) ? at : best));
  const first = ring.indexOf(corner);
  return [...ring.slice(first), ...ring.slice(0, first)];
}

describe('convexHull', () => {
  it('is the corners that a thread about the points bends at, counter-clockwise: of a T its box without two corners (derived)', () => {
    expect(fromLeft(convexHull(tee))).toEqual([
      [0, 10],
      [10, 0],
      [20, 0],
      [30, 10],
      [30, 20],
      [0, 20],
    ]);
  });

  it('leaves out points that lie on an edge between two corners, and points given twice', () => {
    const points: Point[] = [0, 1, 2].flatMap((x) => [0, 1, 2].map((y): Point => [x, y]));
    expect(fromLeft(convexHull([...points, ...points]))).toEqual([
      [0, 0],
      [2, 0],
      [2, 2],
      [0, 2],
    ]);
  });

  it('leaves the points that it is given as they are', () => {
    const points: Point[] = [
      [4, 0],
      [0, 0],
      [2, 3],
    ];
    const before = points.map((point) => [...point]);
    convexHull(points);
    expect(points).toEqual(before);
  });

  it('has the corners that another library finds, for points on a grid, many of them on one line', () => {
    const place = fc.integer({ min: -4, max: 4 });
    let compared = 0;
    fc.assert(
      fc.property(fc.array(fc.tuple(place, place), { minLength: 3, maxLength: 24 }), (points) => {
        const other = polygonHull(points);
        const [fromX, fromY] = itemAt(points, 0);
        const onOneLine = points.every(([x, y]) =>
          points.every(([u, v]) => (x - fromX) * (v - fromY) === (y - fromY) * (u - fromX)),
        );
        if (!other || onOneLine) return;
        compared += 1;
        const found = convexHull(points);
        expect(area(found)).toBeGreaterThan(0);
        const sorted = (ring: Ring) => ring.map(([x, y]) => `${x} ${y}`).sort();
        expect(sorted(found)).toEqual(sorted(other));
      }),
      { seed: 17, numRuns: 400 },
    );
    expect(compared).toBeGreaterThan(350);
  });
});
