import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { crossesItself } from '../../../src/core/geometry/crosses-itself';
import type { Point, Ring } from '../../../src/core/geometry/ring';
import { rectangle, soleLike, tee } from '../cutting/outlines';

/**
 * Whether edges that are no neighbours share a point, or neighbours more than their corner: every pair, by the parameters
 * of both lines. Exact for whole numbers.
 */
function crossesSlowly(ring: Ring): boolean {
  const n = ring.length;
  const edge = (i: number) => [ring[i] as Point, ring[(i + 1) % n] as Point] as const;
  for (let i = 0; i < n; i++) {
    for (let j = i + 1; j < n; j++) {
      const shared = sharedPoints(edge(i), edge(j));
      const neighbours = (j === i + 1 ? 1 : 0) + (i === 0 && j === n - 1 ? 1 : 0);
      if (shared > neighbours) return true;
    }
  }
  return false;
}

/** How many points two edges share: 0, 1 or, of edges that lie on each other, Infinity. */
function sharedPoints([[ax, ay], [bx, by]]: Edge, [[cx, cy], [dx, dy]]: Edge): number {
  const det = (bx - ax) * (dy - cy) - (by - ay) * (dx - cx);
  if (det === 0) {
    if ((bx - ax) * (cy - ay) !== (by - ay) * (cx - ax)) return 0;
    const along = Math.abs(bx - ax) > Math.abs(by - ay) ? [ax, bx, cx, dx] : [ay, by, cy, dy];
    const [a, b, c, d] = along as [number, number, number, number];
    const overlap = Math.min(Math.max(a, b), Math.max(c, d)) - Math.max(Math.min(a, b), Math.min(c, d));
    return overlap < 0 ? 0 : overlap === 0 ? 1 : Infinity;
  }
  const t = ((cx - ax) * (dy - cy) - (cy - ay) * (dx - cx)) / det;
  const u = ((cx - ax) * (by - ay) - (cy - ay) * (bx - ax)) / det;
  return t >= 0 && t <= 1 && u >= 0 && u <= 1 ? 1 : 0;
}

type Edge = readonly [Point, Point];

describe('crossesItself', () => {
  it('is false for sound outlines, with inlets and in either direction', () => {
    for (const ring of [rectangle(10, 5), soleLike(), tee, [...tee].reverse()]) expect(crossesItself(ring)).toBe(false);
  });

  it('finds a bow tie', () => {
    expect(
      crossesItself([
        [0, 0],
        [10, 10],
        [10, 0],
        [0, 10],
      ]),
    ).toBe(true);
  });

  it('finds a corner that touches another edge', () => {
    expect(
      crossesItself([
        [0, 0],
        [10, 0],
        [10, 10],
        [5, 0],
        [0, 10],
      ]),
    ).toBe(true);
  });

  it('finds two corners at one place', () => {
    expect(
      crossesItself([
        [0, 0],
        [5, 5],
        [10, 0],
        [10, 10],
        [5, 5],
        [0, 10],
      ]),
    ).toBe(true);
  });

  it('finds an edge that folds back on its neighbour', () => {
    expect(
      crossesItself([
        [0, 0],
        [10, 0],
        [4, 0],
        [4, 5],
      ]),
    ).toBe(true);
  });

  it('passes points that lie on a line between two others', () => {
    expect(
      crossesItself([
        [0, 0],
        [5, 0],
        [10, 0],
        [10, 10],
        [0, 10],
      ]),
    ).toBe(false);
  });

  it('finds what a check of every pair of edges finds, for points in any order', () => {
    const place = fc.integer({ min: -6, max: 6 });
    fc.assert(
      fc.property(fc.array(fc.tuple(place, place), { minLength: 4, maxLength: 9 }), (points) => {
        // Edges without length are taken out before, by outline.
        const ring = points.filter(([x, y], i) => {
          const [px, py] = points[(i + points.length - 1) % points.length] as Point;
          return x !== px || y !== py;
        });
        fc.pre(ring.length > 3);
        expect(crossesItself(ring)).toBe(crossesSlowly(ring));
      }),
      { seed: 6, numRuns: 3000 },
    );
  });

  it('finds the same where the outline goes once along and comes back, with upright ends and touching ways', () => {
    const step = fc.tuple(
      fc.integer({ min: 0, max: 3 }),
      fc.integer({ min: -5, max: 5 }),
      fc.integer({ min: -5, max: 5 }),
    );
    fc.assert(
      fc.property(fc.array(step, { minLength: 2, maxLength: 7 }), fc.boolean(), (steps, reverse) => {
        const go: Point[] = [];
        const come: Point[] = [];
        let x = 0;
        for (const [dx, low, high] of steps) {
          x += dx;
          go.push([x, low]);
          come.unshift([x + (dx > 2 ? 1 : 0), high]);
        }
        const ring = [...go, ...come].filter(([px, py], i, all) => {
          const [qx, qy] = all[(i + 1) % all.length] as Point;
          return px !== qx || py !== qy;
        });
        fc.pre(ring.length > 3);
        if (reverse) ring.reverse();
        expect(crossesItself(ring)).toBe(crossesSlowly(ring));
      }),
      { seed: 16, numRuns: 5000 },
    );
  });
});
