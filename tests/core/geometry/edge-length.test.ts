import { polygonLength } from 'd3-polygon';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { edgeLength } from '../../../src/core/geometry/edge-length';
import { anyOutline, rectangle, regular } from '../cutting/outlines';

describe('edgeLength', () => {
  it('goes all the way round: 300 for a rectangle 100 × 50, 12 for a triangle 3-4-5 (derived)', () => {
    expect(edgeLength(rectangle(100, 50))).toBe(300);
    expect(
      edgeLength([
        [0, 0],
        [3, 0],
        [0, 4],
      ]),
    ).toBe(12);
  });

  it('comes near 2 π r for many corners (derived)', () => {
    expect(edgeLength(regular(1000, 50))).toBeCloseTo(100 * Math.PI, 2);
  });

  it('is nothing of a point or none', () => {
    expect(edgeLength([])).toBe(0);
    expect(edgeLength([[1, 2]])).toBe(0);
  });

  it('agrees with another library', () => {
    fc.assert(
      fc.property(anyOutline, (ring) => {
        expect(edgeLength(ring)).toBeCloseTo(polygonLength([...ring] as [number, number][]), 6);
      }),
      { seed: 5 },
    );
  });
});
