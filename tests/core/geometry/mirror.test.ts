import { describe, expect, it } from 'vitest';
import { area } from '../../../src/core/geometry/area';
import { mirror } from '../../../src/core/geometry/mirror';
import { soleLike } from '../cutting/outlines';

describe('mirror', () => {
  it('swaps inside and outside and keeps lengths', () => {
    expect(
      mirror([
        [0, -1],
        [10, -1],
        [10, 5],
      ]),
    ).toEqual([
      [10, -5],
      [10, 1],
      [0, 1],
    ]);
  });

  it('stays counter-clockwise, with the same area', () => {
    const ring = soleLike();
    expect(area(mirror(ring))).toBeCloseTo(area(ring), 9);
  });

  it('done twice is the same outline', () => {
    const ring = soleLike();
    expect(mirror(mirror(ring))).toEqual(ring);
  });
});
