import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { area } from '../../../src/core/geometry/area';
import { inside } from '../../../src/core/geometry/inside';
import { simplifyOutward } from '../../../src/core/geometry/simplify-outward';
import { evenly } from '../../evenly';
import { toEdge } from '../cutting/oracle';
import { anyOutline, soleLike } from '../cutting/outlines';

describe('simplifyOutward', () => {
  it('holds the original and reaches no farther beyond it than it may, for outlines of any shape', () => {
    fc.assert(
      fc.property(anyOutline, evenly(0.01, 2), (ring, tolerance) => {
        const simple = simplifyOutward(ring, tolerance);
        for (const corner of ring) expect(toEdge(corner, simple) < 1e-6 || inside(simple, ...corner)).toBe(true);
        expect(area(simple)).toBeGreaterThan(area(ring) - 1e-6);
        for (const corner of simple) expect(toEdge(corner, ring)).toBeLessThan(tolerance + 1e-9);
      }),
      { seed: 5, numRuns: 200 },
    );
  });

  it('leaves a sole of 120 points about half of them within 0.2 mm', () => {
    expect(simplifyOutward(soleLike(270, 120), 0.2).length).toBeLessThan(70);
  });
});
