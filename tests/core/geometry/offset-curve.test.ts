import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { area } from '../../../src/core/geometry/area';
import { box } from '../../../src/core/geometry/box';
import { ARC_TOLERANCE } from '../../../src/core/geometry/regions';
import { offsetCurve } from '../../../src/core/geometry/offset-curve';
import type { Ring } from '../../../src/core/geometry/ring';
import { evenly } from '../../evenly';
import { anyOutline, rectangle } from '../cutting/outlines';
import { toEdge } from '../cutting/oracle';

describe('offsetCurve', () => {
  it('is the ring itself at no distance', () => {
    const ring = rectangle(10, 5);
    expect(offsetCurve(ring, 0)).toBe(ring);
  });

  it('keeps straight edges at exactly the distance', () => {
    const { left, bottom, right, top } = box(offsetCurve(rectangle(100, 50), 2));
    for (const [found, wanted] of [
      [left, -2],
      [bottom, -2],
      [right, 102],
      [top, 52],
    ] as const)
      expect(found).toBeCloseTo(wanted, 9);
  });

  it('encloses what Steiner says for a convex piece, and hardly more', () => {
    const grown = area(offsetCurve(rectangle(100, 50), 2));
    const exact = 5000 + 2 * 300 + Math.PI * 4;
    expect(grown).toBeGreaterThan(exact);
    expect(grown).toBeLessThan(exact + 2 * Math.PI * 2 * ARC_TOLERANCE);
  });

  it('meets in one corner where a gentle inward corner lets it', () => {
    const ring: Ring = [
      [0, 0],
      [50, 10],
      [100, 0],
      [100, 60],
      [0, 60],
    ];
    expect(offsetCurve(ring, 3).filter(([x, y]) => Math.abs(x - 50) < 1 && y < 10)).toHaveLength(1);
  });

  it('nowhere lies further out than the tolerance allows, for outlines of any shape', () => {
    fc.assert(
      fc.property(anyOutline, evenly(0.1, 5), (ring, distance) => {
        for (const corner of offsetCurve(ring, distance)) {
          expect(toEdge(corner, ring)).toBeLessThan(distance + ARC_TOLERANCE + 1e-6);
        }
      }),
      { seed: 5 },
    );
  });
});
