import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { area } from '../../../src/core/geometry/area';
import { moved } from '../../../src/core/geometry/moved';
import type { Point } from '../../../src/core/geometry/ring';
import { simplify } from '../../../src/core/geometry/simplify';
import { ellipse } from '../ovals';
import { anyOutline } from '../cutting/outlines';
import { toEdge } from '../cutting/oracle';
import { evenly } from '../../evenly';

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

  it('keeps a tip that lies beyond the end of an edge, though on its line (derived)', () => {
    // Opened at the first point, which is not the tip: the tip at 20 lies off the line back to it by nothing.
    const needle: Point[] = [
      [10, 1],
      [-10, 0],
      [10, -1],
      [20, 0],
    ];
    expect(simplify(needle, 2)).toContainEqual([20, 0]);
  });

  it('leaves out points only, keeps their order, and every one left out lies within the tolerance of the edge', () => {
    let dropped = 0;
    fc.assert(
      fc.property(anyOutline, evenly(0.01, 5), (ring, tolerance) => {
        const thin = simplify(ring, tolerance);
        dropped += ring.length - thin.length;
        expect(thin).toEqual(ring.filter((point) => thin.includes(point)));
        expect(thin.length).toBeGreaterThan(1);
        for (const point of ring) expect(toEdge(point, thin)).toBeLessThanOrEqual(tolerance + 1e-9);
      }),
      { seed: 9 },
    );
    expect(dropped).toBeGreaterThan(100);
  });

  it('leaves out the most of an arc that the tolerance allows: half an angle h of a circle lies r (1 − cos h) off its chord (derived)', () => {
    // Halved again and again from two half circles, until a chord's arc rises by less than 0.1 of 100: h < 2.56°.
    const circle = ellipse(100, 100, 1024);
    expect(simplify(circle, 0.1)).toHaveLength(128);
    expect(simplify(circle, 0.1 / 4.01)).toHaveLength(256);
  });
});
