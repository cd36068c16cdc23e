import { polygonArea } from 'd3-polygon';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { area, roundedArea } from '../../../src/core/geometry/area';
import { mirror } from '../../../src/core/geometry/mirror';
import { moved } from '../../../src/core/geometry/moved';
import type { Ring } from '../../../src/core/geometry/ring';
import { anyOutline, rectangle, regular } from '../cutting/outlines';

describe('area', () => {
  it('is length × width of a rectangle and half of it for a triangle (derived)', () => {
    expect(area(rectangle(100, 50))).toBe(5000);
    expect(area(rectangle(100, 50).slice(0, 3))).toBe(2500);
  });

  it('is n r² sin(2π / n) / 2 for a regular outline of n corners (derived)', () => {
    expect(area(regular(7, 60))).toBeCloseTo((7 * 3600 * Math.sin((2 * Math.PI) / 7)) / 2, 6);
  });

  it('is negative clockwise', () => {
    expect(area([...rectangle(100, 50)].reverse())).toBe(-5000);
  });

  it('is nothing of a point, a line and no point at all', () => {
    expect(area([])).toBe(0);
    expect(area([[3, 4]])).toBe(0);
    expect(
      area([
        [0, 0],
        [5, 5],
      ]),
    ).toBe(0);
  });

  it('does not change with the point that is listed first or repeated', () => {
    const ring = regular(9);
    expect(area([...ring.slice(4), ...ring.slice(0, 4)])).toBeCloseTo(area(ring), 9);
    expect(area([...ring, ring[0]] as Ring)).toBeCloseTo(area(ring), 9);
  });

  it('is the same for both feet and wherever the piece lies', () => {
    const ring = regular(5);
    expect(area(mirror(ring))).toBeCloseTo(area(ring), 9);
    expect(area(moved(ring, 33, 1000, -500))).toBeCloseTo(area(ring), 6);
  });

  it('agrees with another library, which counts clockwise rings positive', () => {
    fc.assert(
      fc.property(anyOutline, (ring) => {
        expect(area(ring)).toBeCloseTo(-polygonArea([...ring] as [number, number][]), 6);
      }),
      { seed: 4 },
    );
  });
});

describe('roundedArea', () => {
  it('is the area to within half a step, the same for the mirror image, and adds up the same in any order', () => {
    fc.assert(
      fc.property(fc.array(anyOutline, { minLength: 2, maxLength: 6 }), (rings) => {
        const sizes = rings.map(roundedArea);
        rings.forEach((ring, i) => {
          expect(Math.abs(sizes[i]! - area(ring))).toBeLessThanOrEqual(1 / 2048);
          expect(roundedArea(mirror(ring))).toBe(sizes[i]);
        });
        const sum = (list: readonly number[]) => list.reduce((all, one) => all + one, 0);
        expect(sum([...sizes].reverse())).toBe(sum(sizes));
      }),
    );
  });
});
