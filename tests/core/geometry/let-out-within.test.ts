import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { area } from '../../../src/core/geometry/area';
import { convex } from '../../../src/core/geometry/convex';
import { convexHull } from '../../../src/core/geometry/convex-hull';
import { edgeLength } from '../../../src/core/geometry/edge-length';
import { letOutWithin } from '../../../src/core/geometry/let-out-within';
import { ARC_TOLERANCE, difference, grown } from '../../../src/core/geometry/regions';
import { anyOutline, rectangle } from '../cutting/outlines';

describe('letOutWithin', () => {
  it('takes nothing away where nothing is let out', () => {
    expect(letOutWithin(rectangle(30, 20), 0)).toEqual(rectangle(30, 20));
  });

  it('lies within what the ring becomes when it is let out, and takes nearly all of it (Steiner)', () => {
    fc.assert(
      fc.property(anyOutline, fc.double({ min: 0.1, max: 5, noNaN: true }), (outline, distance) => {
        const ring = convexHull(outline);
        const out = letOutWithin(ring, distance);
        expect(convex(out)).toBe(true);
        const outside = difference([out], grown([ring], distance)).reduce((sum, one) => sum + area(one), 0);
        // The polygon library draws arcs to within so much.
        expect(outside).toBeLessThan(ARC_TOLERANCE * edgeLength(out));
        const all = area(ring) + edgeLength(ring) * distance + Math.PI * distance ** 2;
        expect(area(out)).toBeLessThanOrEqual(all + 1e-9);
        // Arcs of 15° are flattened by a ninetieth at most of what they add.
        expect(area(out)).toBeGreaterThan(all - (Math.PI * distance ** 2) / 60);
      }),
      { numRuns: 100, seed: 6 },
    );
  });
});
