import { polygonContains } from 'd3-polygon';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inside } from '../../../src/core/geometry/inside';
import { evenly } from '../../evenly';
import { anyOutline } from '../cutting/outlines';

describe('inside', () => {
  it('agrees with another library for any outline', () => {
    const place = evenly(-150, 150);
    fc.assert(
      fc.property(anyOutline, place, place, (ring, x, y) => {
        expect(inside(ring, x, y)).toBe(polygonContains([...ring] as [number, number][], [x, y]));
      }),
      { seed: 3 },
    );
  });
});
