import { describe, expect, it } from 'vitest';
import { wedgeEdge } from '../../../src/core/bottom/wedge-edge';
import { cut } from '../../../src/core/geometry/cut';
import { edgeLength } from '../../../src/core/geometry/edge-length';
import type { Point, Ring } from '../../../src/core/geometry/ring';
import { outlineModel } from '../../../src/core/last/outline-model';

const along = (path: readonly Point[]) =>
  path.slice(1).reduce((sum, [x, y], i) => sum + Math.hypot(x - (path[i] as Point)[0], y - (path[i] as Point)[1]), 0);

const sole = outlineModel({ length: 252, tread: 84, waist: 56, seat: 58, swing: 3 });
const slanted = (degrees: number): Ring => {
  const lean = Math.tan((degrees * Math.PI) / 180);
  return cut(sole, ([x, y]) => 150 - lean * y - x);
};
const rule = { front: 150, wedgeHeight: (x: number) => 40 - x / 5, platform: 0 };

describe('wedgeEdge', () => {
  it.each([-25, -12, 0, 12, 25])('of a wedge is its outline without its front, slanted by %i°', (degrees) => {
    const ring = slanted(degrees);
    const { path } = wedgeEdge(ring, rule);
    const front = Math.hypot(
      (path[0] as Point)[0] - (path.at(-1) as Point)[0],
      (path[0] as Point)[1] - (path.at(-1) as Point)[1],
    );
    expect(front).toBeGreaterThan(50);
    expect(along(path)).toBeCloseTo(edgeLength(ring) - front, 6);
    // Both ends lie on the slanted line.
    const lean = Math.tan((degrees * Math.PI) / 180);
    for (const [x, y] of [path[0] as Point, path.at(-1) as Point]) expect(x + lean * y).toBeCloseTo(150, 6);
  });

  it('with a platform runs all round from the back, where the seam stands, to the back again', () => {
    const { path } = wedgeEdge(sole, { ...rule, platform: 8 });
    expect(along(path)).toBeCloseTo(edgeLength(sole), 6);
    expect(path[0]).toEqual(path.at(-1));
    expect((path[0] as Point)[0]).toBe(Math.min(...sole.map(([x]) => x)));
  });

  it('with a platform is the same wherever the outline begins, and misses no corner', () => {
    const { path } = wedgeEdge(sole, { ...rule, platform: 8 });
    for (const first of [1, 7, sole.length - 1]) {
      const ring = [...sole.slice(first), ...sole.slice(0, first)];
      expect(wedgeEdge(ring, { ...rule, platform: 8 }).path).toEqual(path);
    }
    expect(path).toHaveLength(sole.length + 1);
  });

  it('is as high as wedge and platform behind the front, and as the platform before it', () => {
    const { heightAt } = wedgeEdge(sole, { ...rule, platform: 8 });
    expect(heightAt(0, 0)).toBe(48);
    expect(heightAt(149, 0)).toBeCloseTo(8 + 40 - 29.8, 9);
    expect(heightAt(200, 0)).toBe(8);
  });
});
