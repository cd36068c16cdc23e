import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { area } from '../../../src/core/geometry/area';
import { convex } from '../../../src/core/geometry/convex';
import { convexWithin } from '../../../src/core/geometry/convex-within';
import { edgeLength } from '../../../src/core/geometry/edge-length';
import { difference } from '../../../src/core/geometry/regions';
import { anyOutline, rectangle, soleLike, tee } from '../cutting/outlines';

describe('convexWithin', () => {
  it('is the outline itself where that is convex', () => {
    expect(convexWithin(rectangle(30, 20), 0)).toEqual(rectangle(30, 20));
  });

  it('leaves out little of a sole, and the smaller part of a T (derived)', () => {
    const sole = soleLike(270, 60);
    const within = convexWithin(sole, 0.05);
    expect(within && area(within) / area(sole)).toBeGreaterThan(0.995);
    // Of its four squares the three in a row are left.
    const bar = convexWithin(tee, 0.5);
    expect(bar && area(bar)).toBeCloseTo(300, 9);
    expect(convexWithin(tee, 0.2)).toBeUndefined();
  });

  it('lies within the outline, has no hollow and loses no more than it may', () => {
    let found = 0;
    fc.assert(
      fc.property(anyOutline, fc.double({ min: 0.05, max: 0.95, noNaN: true }), (ring, mostLost) => {
        const within = convexWithin(ring, mostLost);
        if (!within) return;
        found++;
        expect(convex(within)).toBe(true);
        expect(area(within)).toBeGreaterThanOrEqual((1 - mostLost) * area(ring) * (1 - 1e-9));
        const outside = difference([within], [ring]).reduce((sum, one) => sum + area(one), 0);
        // To the steps of the polygon library.
        expect(outside).toBeLessThan(1e-4 * edgeLength(ring));
      }),
      { numRuns: 300, seed: 5 },
    );
    expect(found).toBeGreaterThan(100);
  });
});
