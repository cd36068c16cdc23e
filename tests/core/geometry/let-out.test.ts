import { polygonContains } from 'd3-polygon';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { area } from '../../../src/core/geometry/area';
import { crossesItself } from '../../../src/core/geometry/crosses-itself';
import { edgeLength } from '../../../src/core/geometry/edge-length';
import { letOut } from '../../../src/core/geometry/let-out';
import type { Ring } from '../../../src/core/geometry/ring';
import { evenly } from '../../evenly';
import { oval } from '../ovals';
import { anyOutline, rectangle, regular, tee } from '../cutting/outlines';
import { toEdge } from '../cutting/oracle';

describe('letOut', () => {
  it('lets an outline of 180 cm² with an edge of 620 mm out by 3 mm to 198.9 cm² (Steiner)', () => {
    const ring = oval(18_000, 620);
    expect(area(ring)).toBeCloseTo(18_000, 0);
    expect(edgeLength(ring)).toBeCloseTo(620, 1);
    expect(area(letOut(ring, 3)) / 100).toBeCloseTo(198.9, 1);
  });

  it('adds edge × distance + π distance² to convex outlines (Steiner)', () => {
    for (const ring of [rectangle(266, 96), regular(5, 80), regular(40, 60)]) {
      const wanted = area(ring) + 4 * edgeLength(ring) + 16 * Math.PI;
      expect(Math.abs(area(letOut(ring, 4)) - wanted)).toBeLessThan(0.02 * Math.PI * 8);
    }
  });

  it('adds edge and full turn to the edge: 2 π distance (derived)', () => {
    const ring = rectangle(266, 96);
    expect(edgeLength(letOut(ring, 4))).toBeCloseTo(edgeLength(ring) + 8 * Math.PI, 0);
  });

  it('takes in by a negative distance: a rectangle keeps its corners (derived)', () => {
    expect(area(letOut(rectangle(100, 50), -5))).toBeCloseTo(90 * 40, 6);
  });

  it('does nothing at no distance', () => {
    const ring = rectangle(10, 5);
    expect(letOut(ring, 0)).toBe(ring);
  });

  it('keeps an inlet that the let-out edge closes as part of the piece', () => {
    const purse: Ring = [
      [0, 0],
      [60, 0],
      [60, 60],
      [32, 60],
      [32, 55],
      [50, 55],
      [50, 10],
      [10, 10],
      [10, 55],
      [28, 55],
      [28, 60],
      [0, 60],
    ];
    expect(area(letOut(purse, 3))).toBeCloseTo(area(letOut(rectangle(60, 60), 3)), -1);
  });

  it('says where nothing is left, or the outline falls apart', () => {
    expect(() => letOut(rectangle(100, 50), -25)).toThrow('distance: taken in by 25 mm nothing of the outline is left');
    const dumbbell: Ring = [
      [0, 0],
      [40, 0],
      [40, 18],
      [80, 18],
      [80, 0],
      [120, 0],
      [120, 40],
      [80, 40],
      [80, 22],
      [40, 22],
      [40, 40],
      [0, 40],
    ];
    expect(() => letOut(dumbbell, -3, 'let_out')).toThrow('let_out: taken in by 3 mm the outline falls into 2 parts');
    expect(area(letOut(tee, -3))).toBeGreaterThan(0);
  });

  it('stays a sound outline around the first one, every corner at the distance, for outlines of any shape', () => {
    fc.assert(
      fc.property(anyOutline, evenly(0.1, 30), (ring, distance) => {
        const out = letOut(ring, distance);
        expect(area(out)).toBeGreaterThan(area(ring));
        expect(crossesItself(out)).toBe(false);
        for (const corner of out) {
          expect(toEdge(corner, ring)).toBeLessThan(distance + 0.02);
          expect(toEdge(corner, ring)).toBeGreaterThan(distance - 0.02);
        }
        for (const [x, y] of ring) expect(polygonContains([...out] as [number, number][], [x, y])).toBe(true);
      }),
      { seed: 7 },
    );
  });
});
