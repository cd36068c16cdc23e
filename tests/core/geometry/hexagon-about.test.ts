import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { area } from '../../../src/core/geometry/area';
import { convexHull } from '../../../src/core/geometry/convex-hull';
import { hexagonAbout } from '../../../src/core/geometry/hexagon-about';
import { leastAbout } from '../../../src/core/geometry/least-about';
import type { Point } from '../../../src/core/geometry/ring';
import { anyOutline, regular } from '../cutting/outlines';

describe('hexagonAbout', () => {
  it('is the regular one about a circle, and the like about an ellipse: 2√3 ab', () => {
    expect(hexagonAbout(regular(720, 10))).toBeCloseTo(200 * Math.sqrt(3), 1);
    expect(hexagonAbout(regular(720, 10).map(([x, y]): Point => [3 * x + 7, y - 2]))).toBeCloseTo(
      600 * Math.sqrt(3),
      0,
    );
  });

  it('is never less than the least of all', () => {
    fc.assert(
      fc.property(anyOutline, (outline) => {
        const ring = convexHull(outline);
        expect(hexagonAbout(ring)).toBeGreaterThanOrEqual(area(ring) + leastAbout(ring, 6, 1e7)[6]! - 1e-6);
      }),
      { numRuns: 100, seed: 2 },
    );
  });
});
