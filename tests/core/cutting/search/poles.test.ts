import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { polesOf } from '../../../../src/core/cutting/search/poles';
import { inside } from '../../../../src/core/geometry/inside';
import { toEdge } from '../oracle';
import { anyOutline, rectangle } from '../outlines';

describe('polesOf', () => {
  it('begins with the largest circle: of a rectangle half its width', () => {
    // To 1 %, as it says.
    const { radius } = polesOf(rectangle(90, 40), 24)[0]!;
    expect(radius).toBeLessThanOrEqual(20);
    expect(radius).toBeGreaterThan(20 / 1.02);
  });

  it('keeps circles within the outline and apart from each other, the larger first', () => {
    fc.assert(
      fc.property(anyOutline, (ring) => {
        const poles = polesOf(ring, 12);
        expect(poles.length).toBeGreaterThan(0);
        expect(poles.length).toBeLessThanOrEqual(12);
        poles.forEach(({ x, y, radius }, i) => {
          expect(inside(ring, x, y)).toBe(true);
          expect(toEdge([x, y], ring)).toBeGreaterThan(radius - 1e-9);
          if (i > 0) expect(radius).toBeLessThan(1.02 * poles[i - 1]!.radius);
          for (const other of poles.slice(0, i))
            expect(Math.hypot(x - other.x, y - other.y)).toBeGreaterThan(radius + other.radius - 1e-9);
        });
      }),
      { seed: 2, numRuns: 40 },
    );
  });
});
