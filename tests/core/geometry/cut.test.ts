import { intersection } from 'polyclip-ts';
import { describe, expect, it } from 'vitest';
import { area } from '../../../src/core/geometry/area';
import { cut } from '../../../src/core/geometry/cut';
import { rectangle, soleLike } from '../cutting/outlines';

describe('cut', () => {
  it('keeps the part where the measure is positive', () => {
    expect(cut(rectangle(100, 50), ([x]) => 40 - x)).toEqual([
      [0, 0],
      [40, 0],
      [40, 50],
      [0, 50],
    ]);
  });

  it('cuts on the slant', () => {
    // Half of a square along its diagonal.
    expect(area(cut(rectangle(10, 10), ([x, y]) => y - x))).toBeCloseTo(50, 9);
  });

  it('keeps all that lies wholly before the line and nothing that lies wholly behind it', () => {
    const ring = rectangle(10, 5);
    expect(cut(ring, () => 1)).toEqual(ring);
    expect(cut(ring, () => -1)).toEqual([]);
  });

  it('keeps a point on the line once', () => {
    const kept = cut(rectangle(10, 5), ([x]) => 10 - x);
    expect(kept).toHaveLength(4);
  });

  it('leaves no two points closer than a hundredth of a millimetre', () => {
    const kept = cut(rectangle(10, 5), ([x]) => x - 9.999);
    expect(kept.length).toBeLessThan(4);
  });

  it('keeps the area that another library keeps', () => {
    const ring = soleLike();
    for (const front of [-100, 0, 77.7, 200]) {
      const half = [
        [
          [-300, -300],
          [front, -300],
          [front, 300],
          [-300, 300],
          [-300, -300],
        ],
      ] as [number, number][][];
      const [[outer] = []] = intersection([[...ring, ring[0]] as [number, number][]], half) as [number, number][][][];
      const wanted = area((outer as [number, number][]).slice(0, -1));
      expect(area(cut(ring, ([x]) => front - x))).toBeCloseTo(wanted, 3);
    }
  });
});
