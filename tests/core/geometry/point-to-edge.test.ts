import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pointToEdge } from '../../../src/core/geometry/point-to-edge';
import { evenly } from '../../evenly';

describe('pointToEdge', () => {
  it('is the square of the distance: straight across beside the edge, to its nearer end beyond it (derived)', () => {
    expect(pointToEdge(3, 4, 0, 0, 10, 0)).toBe(16);
    expect(pointToEdge(-3, 4, 0, 0, 10, 0)).toBe(25);
    expect(pointToEdge(13, 4, 0, 0, 10, 0)).toBe(25);
    expect(pointToEdge(5, 5, 0, 0, 10, 10)).toBeCloseTo(0, 12);
    // Off the diagonal of a square its opposite corners lie 5 √2 away.
    expect(pointToEdge(10, 0, 0, 0, 10, 10)).toBeCloseTo(50, 12);
  });

  it('is the least of the distances from many points of the edge, for any edge', () => {
    const place = evenly(-100, 100);
    fc.assert(
      fc.property(place, place, place, place, place, place, (x, y, ax, ay, bx, by) => {
        const length = Math.hypot(bx - ax, by - ay);
        fc.pre(length > 1e-3);
        const among = Array.from({ length: 1001 }, (_, i) =>
          Math.hypot(x - ax - (i / 1000) * (bx - ax), y - ay - (i / 1000) * (by - ay)),
        );
        const found = Math.sqrt(pointToEdge(x, y, ax, ay, bx, by));
        expect(found).toBeLessThanOrEqual(Math.min(...among) + 1e-9);
        expect(found).toBeGreaterThanOrEqual(Math.min(...among) - length / 1000);
      }),
      { seed: 2, numRuns: 300 },
    );
  });
});
