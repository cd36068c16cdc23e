import { describe, expect, it } from 'vitest';
import { firstWaste } from '../../../../src/core/cutting/pattern/first-waste';
import type { Ring } from '../../../../src/core/geometry/ring';
import { rectangle, regular, soleLike } from '../outlines';

const density = (ring: Ring) => 1 - firstWaste(ring, 0, { kind: 'any' }).share;

describe('firstWaste', () => {
  it('is never less than nothing, whatever binary digits do (derived)', () => {
    for (const [length, width] of [
      [100, 50],
      [37, 3.3],
      [271, 91.7],
    ] as const)
      expect(firstWaste(rectangle(length, width), 0, { kind: 'any' }).share).toBeGreaterThanOrEqual(0);
  });

  it('is that of the densest packing of regular pentagons, (5 − √5) / 3 (Hales and Kusner, Packings of regular pentagons in the plane, 2016)', () => {
    expect(density(regular(5))).toBeCloseTo((5 - Math.sqrt(5)) / 3, 5);
  });

  it('is nought for triangles, quadrilaterals, also with an inward corner, and centrally symmetric hexagons, which tile (derived)', () => {
    const tiles: Ring[] = [
      [
        [0, 0],
        [100, 10],
        [30, 70],
      ],
      [
        [0, 0],
        [100, 10],
        [120, 80],
        [-10, 50],
      ],
      [
        [0, 0],
        [100, -40],
        [30, 10],
        [60, 90],
      ],
      [
        [0, 0],
        [60, -20],
        [100, 30],
        [90, 80],
        [30, 100],
        [-10, 50],
      ],
      [
        [0, 0],
        [20, 0],
        [20, 10],
        [10, 10],
        [10, 30],
        [0, 30],
      ],
    ];
    for (const tile of tiles) expect(density(tile)).toBeCloseTo(1, 5);
  });

  it('is at most 1 − √3/2 for convex outlines (Kuperberg and Kuperberg, Double-lattice packings of convex bodies in the plane, 1990)', () => {
    for (const corners of [7, 8, 9, 11, 16, 33]) {
      expect(density(regular(corners))).toBeGreaterThan(Math.sqrt(3) / 2);
    }
  });

  it('comes near that of the disc, π / √12, for many corners (Thue 1892)', () => {
    expect(density(regular(180))).toBeCloseTo(Math.PI / Math.sqrt(12), 3);
  });

  it('counts the knife room on the cutting area (derived)', () => {
    const upright = 1 - (266 * 96) / (270 * 100);
    const waste = firstWaste(rectangle(266, 96), 4, { kind: 'endForEnd' }).share;
    // Round the corners the knife room is round, so that rows set off from each other save a trace.
    expect(waste).toBeLessThanOrEqual(upright);
    expect(waste).toBeCloseTo(upright, 3);
  });

  it('is greater where the ends may not be swapped', () => {
    const triangle: Ring = [
      [0, 0],
      [100, 0],
      [50, 80],
    ];
    expect(firstWaste(triangle, 0, { kind: 'oneWay' }).share).toBeCloseTo(1 / 3, 5);
    expect(firstWaste(soleLike(), 0, { kind: 'oneWay' }).share).toBeGreaterThan(
      firstWaste(soleLike(), 0, { kind: 'any' }).share,
    );
  });
});
