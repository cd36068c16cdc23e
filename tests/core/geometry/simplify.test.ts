import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { area } from '../../../src/core/geometry/area';
import { moved } from '../../../src/core/geometry/moved';
import type { Point } from '../../../src/core/geometry/ring';
import { simplify } from '../../../src/core/geometry/simplify';
import { ellipse } from '../ovals';
import { anyOutline } from '../cutting/outlines';
import { toEdge } from '../cutting/oracle';

describe('simplify', () => {
  it('drops points that lie on a line between two others', () => {
    const square = [0, 1, 2, 3].flatMap((side) =>
      moved(
        [0, 2, 4, 6, 8].map((x): Point => [x - 5, -5]),
        90 * side,
      ),
    );
    const thin = simplify(square, 0.01);
    expect(thin).toHaveLength(4);
    expect(area(thin)).toBeCloseTo(area(square), 9);
  });

  it('leaves no ring as it is', () => {
    expect(simplify([], 0.1)).toEqual([]);
  });

  it('thins a fine curve out', () => {
    const fine = ellipse(130, 45, 2000);
    const thin = simplify(fine, 0.05);
    expect(thin.length).toBeLessThan(200);
    expect(area(thin)).toBeCloseTo(area(fine), -2);
  });

  it('keeps every dropped point within the tolerance of the edge', () => {
    fc.assert(
      fc.property(anyOutline, fc.double({ min: 0.01, max: 5, noNaN: true }), (ring, tolerance) => {
        const thin = simplify(ring, tolerance);
        if (thin.length < 3) return;
        for (const point of ring) expect(toEdge(point, thin)).toBeLessThanOrEqual(tolerance + 1e-9);
      }),
      { seed: 9 },
    );
  });
});
