import { describe, expect, it } from 'vitest';
import { pathLength } from '../../../src/core/geometry/path-length';
import { type Point3, type Ruling, unroll } from '../../../src/core/geometry/unroll';

/** Part of a cone's wall, from radius r on the ground to R at height h, sweeping an angle in degrees. */
function frustum(R: number, r: number, h: number, sweep: number, steps: number): readonly Ruling[] {
  return Array.from({ length: steps + 1 }, (_, i): Ruling => {
    const angle = ((sweep * Math.PI) / 180) * (i / steps);
    const at = (radius: number, z: number): Point3 => [radius * Math.cos(angle), radius * Math.sin(angle), z];
    return [at(r, 0), at(R, h)];
  });
}

describe('unroll', () => {
  it('lays half a cone frustum out as the sector that it is: R 25, r 16, h 70 (derived, bench.md)', () => {
    const { lower, upper } = unroll(frustum(25, 16, 70, 180, 1800));
    const s = Math.hypot(70, 25 - 16);
    expect(s).toBeCloseTo(70.576, 3);
    const outer = (25 * s) / (25 - 16);
    expect(outer).toBeCloseTo(196.045, 3);
    // The first ruling stands upright: the sector's centre is below it.
    const centre = -(outer - s);
    for (const [x, y] of lower) expect(Math.hypot(x, y - centre)).toBeCloseTo(125.469, 2);
    for (const [x, y] of upper) expect(Math.hypot(x, y - centre)).toBeCloseTo(196.045, 2);
    const [x, y] = upper[upper.length - 1]!;
    // 180° × (R − r) / s
    expect((Math.atan2(x, y - centre) * 180) / Math.PI).toBeCloseTo(22.954, 3);
    // Chord at the seat: what a straight strip would be short of.
    expect(Math.hypot(x - upper[0]![0], y - upper[0]![1])).toBeCloseTo(78.016, 2);
  });

  it('comes to the area φ (R + r) s / 2 = 4545.29 from below as steps grow finer (derived, bench.md)', () => {
    const areas = [6, 18, 90].map((steps) => unroll(frustum(25, 16, 70, 180, steps)).area);
    expect(areas[0]).toBeCloseTo(4491.1, 1);
    expect(areas[1]).toBeCloseTo(4539.25, 2);
    expect(areas[2]).toBeCloseTo(4545.05, 2);
    expect(unroll(frustum(25, 16, 70, 180, 2000)).area).toBeCloseTo(4545.29, 2);
  });

  it('unrolls a whole frustum to the published sector: R 4, r 2.5, h 4 give 11.39, 7.12 and 126.4° (The Net of a Frustum)', () => {
    const { lower, upper } = unroll(frustum(4, 2.5, 4, 360, 2000));
    const centre = 7.12 * -1;
    expect(Math.hypot(upper[0]![0], upper[0]![1] - centre)).toBeCloseTo(11.39, 2);
    expect(Math.hypot(lower[0]![0], lower[0]![1] - centre)).toBeCloseTo(7.12, 6);
    const [x, y] = upper[upper.length - 1]!;
    const angle = (Math.atan2(x, y - centre) * 180) / Math.PI;
    expect(angle).toBeCloseTo(126.4, 1);
  });

  it('keeps edges as long as they are, and an upright wall straight', () => {
    const rulings: readonly Ruling[] = [0, 30, 90, 200, 260].map((at): Ruling => {
      const [x, y] = [20 * Math.cos(at / 20), 20 * Math.sin(at / 20)];
      return [
        [x, y, 0],
        [x, y, 12],
      ];
    });
    const { lower, upper } = unroll(rulings);
    const chords = rulings.slice(1).reduce((sum, [[x, y]], i) => {
      const [px, py] = rulings[i]![0];
      return sum + Math.hypot(x - px, y - py);
    }, 0);
    expect(pathLength(lower)).toBeCloseTo(chords, 9);
    for (const [, y] of lower) expect(y).toBeCloseTo(0, 9);
    for (const [, y] of upper) expect(y).toBeCloseTo(12, 9);
  });

  it('takes a wall that ends in a point', () => {
    const { area, upper } = unroll([
      [
        [0, 0, 0],
        [0, 0, 10],
      ],
      [
        [20, 0, 0],
        [20, 0, 0],
      ],
      [
        [30, 0, 0],
        [30, 0, 0],
      ],
    ]);
    expect(area).toBeCloseTo(100, 9);
    expect(upper.flat().every(Number.isFinite)).toBe(true);
  });
});
