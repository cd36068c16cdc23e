import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { area } from '../../../src/core/geometry/area';
import { convexHull } from '../../../src/core/geometry/convex-hull';
import { leastAbout } from '../../../src/core/geometry/least-about';
import type { Point, Ring } from '../../../src/core/geometry/ring';
import { rectangle, regular } from '../cutting/outlines';

/** The polygon whose sides touch a ring and look in some directions; its area, Infinity where they do not close it. */
function areaAbout(ring: Ring, directions: readonly number[]): number {
  const lines = [...directions]
    .sort((a, b) => a - b)
    .map((angle) => {
      const [nx, ny] = [Math.cos(angle), Math.sin(angle)];
      return { nx, ny, angle, far: Math.max(...ring.map(([x, y]) => x * nx + y * ny)) };
    });
  const corners = lines.map((one, i): Point | undefined => {
    const other = lines[(i + 1) % lines.length]!;
    const turn = (((other.angle - one.angle) % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
    if (turn < 1e-6 || turn > Math.PI - 1e-6) return undefined;
    const across = one.nx * other.ny - one.ny * other.nx;
    return [(one.far * other.ny - other.far * one.ny) / across, (one.nx * other.far - other.nx * one.far) / across];
  });
  const closed = corners.flatMap((corner) => (corner ? [corner] : []));
  return closed.length === lines.length ? area(closed) : Infinity;
}

const convexRing = fc
  .array(fc.tuple(fc.double({ min: 0, max: 100, noNaN: true }), fc.double({ min: 0, max: 60, noNaN: true })), {
    minLength: 5,
    maxLength: 40,
  })
  .map((points) => convexHull(points))
  .filter((ring) => ring.length > 2 && area(ring) > 200);

describe('leastAbout', () => {
  it('of a circle is that of the regular polygon about it: k tan π/k (derived), for a hexagon 2√3', () => {
    const corners = 480;
    const circle = regular(corners, 1);
    const least = leastAbout(circle, 9, 10);
    for (let k = 3; k <= 9; k++) {
      const about = k * Math.tan(Math.PI / k) - area(circle);
      expect(least[k]!).toBeLessThanOrEqual(about);
      // One side stands for the two edges at a corner: what they turn there is left out.
      expect(least[k]!).toBeGreaterThan(about * 0.98);
    }
    expect(area(circle) + least[6]!).toBeCloseTo(2 * Math.sqrt(3), 2);
  });

  it('is nothing once there are as many sides as the ring has, and never more than the most', () => {
    expect([...leastAbout(rectangle(30, 20), 6, 50)].slice(4)).toEqual([0, 0, 0]);
    const hexagon = leastAbout(regular(6, 10), 8, 1000);
    expect([...hexagon].slice(6)).toEqual([0, 0, 0]);
    expect(Math.max(...leastAbout(regular(60, 10), 8, 7))).toBe(7);
  });

  it('is never more than what any polygon about the ring takes', () => {
    fc.assert(
      fc.property(
        convexRing,
        fc.array(fc.double({ min: 0, max: 2 * Math.PI, noNaN: true }), { minLength: 3, maxLength: 9 }),
        (ring, directions) => {
          const least = leastAbout(ring, 9, 1e6);
          expect(least[directions.length]!).toBeLessThanOrEqual(areaAbout(ring, directions) - area(ring) + 1e-6);
          // Sides along edges are what the least is made of.
          const along = directions.map((at) => {
            const i = Math.floor((at / (2 * Math.PI)) * ring.length) % ring.length;
            const [[px, py], [qx, qy]] = [ring[i]!, ring[(i + 1) % ring.length]!];
            return Math.atan2(px - qx, qy - py) + 1e-9;
          });
          expect(least[directions.length]!).toBeLessThanOrEqual(areaAbout(ring, along) - area(ring) + 1e-4);
        },
      ),
      { numRuns: 600, seed: 4 },
    );
  });

  it('comes near the least that is found by moving sides about, on fine outlines', () => {
    const egg = regular(150, 50).map(([x, y]): Point => [x * (1 + x / 200), 0.6 * y]);
    const least = leastAbout(egg, 8, 1e6);
    for (const k of [4, 5, 6, 7]) {
      let directions = Array.from({ length: k }, (_, i) => (2 * Math.PI * i) / k + 0.2);
      let best = areaAbout(egg, directions);
      for (let step = 0.5; step > 1e-4; step *= 0.7) {
        for (let i = 0; i < k; i++) {
          for (const by of [step, -step, step / 3, -step / 3]) {
            const moved = directions.map((one, j) => (j === i ? one + by : one));
            const size = areaAbout(egg, moved);
            if (size < best) [best, directions] = [size, moved];
          }
        }
      }
      expect(least[k]!).toBeLessThanOrEqual(best - area(egg));
      expect(least[k]!).toBeGreaterThan(0.95 * (best - area(egg)));
    }
  });

  it('stands corners that all but fall together or lie on a line', () => {
    const ring: Ring = [
      [0, 0],
      [10, 0],
      [20, 1e-13],
      [30, 0],
      [30, 1e-12],
      [30, 20],
      [0, 20],
      [0, 20 - 1e-13],
    ];
    expect([...leastAbout(ring, 5, 1e3)].slice(4)).toEqual([0, 0].map(() => expect.closeTo(0, 6) as number));
  });
});
