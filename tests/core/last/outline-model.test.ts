import { itemRound } from '../../../src/core/item-at';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { area } from '../../../src/core/geometry/area';
import { box } from '../../../src/core/geometry/box';
import { crossesItself } from '../../../src/core/geometry/crosses-itself';
import type { Ring } from '../../../src/core/geometry/ring';
import { outlineModel } from '../../../src/core/last/outline-model';
import { evenly } from '../../evenly';

const measures = { length: 252, tread: 84, waist: 56, seat: 58, swing: 0 };

/** Width of an outline at a place along it. */
function widthAt(ring: Ring, x: number): number {
  const ys = edgesAt(ring, x);
  return Math.max(...ys) - Math.min(...ys);
}

/** Where an outline is crossed square to the length at a place along it. */
function edgesAt(ring: Ring, x: number): readonly number[] {
  return ring.flatMap(([ax, ay], i) => {
    const [bx, by] = itemRound(ring, i + 1);
    return ax <= x !== bx <= x ? [ay + ((x - ax) / (bx - ax)) * (by - ay)] : [];
  });
}

describe('outlineModel', () => {
  it('is as wide as measured at seat line and tread line, L/6 from the back and L/3 from the toe (The Manufacture of Boots and Shoes, 1902)', () => {
    const ring = outlineModel(measures);
    expect(widthAt(ring, 42)).toBeCloseTo(58, 0);
    expect(widthAt(ring, 168)).toBeCloseTo(84, 0);
  });

  // A calliper with its jaws along the length reads the tread across both joints (common practice).
  it('is nowhere wider than the tread, whatever its swing, and the piece that is cut by it as wide as that', () => {
    for (const swing of [0, 4, 10, -4]) {
      const ring = outlineModel({ ...measures, swing }).filter(([x]) => x > 126);
      const { top, bottom } = box(ring);
      expect(top - bottom).toBeCloseTo(84, 1);
    }
  });

  it('has its inside joint before the outside one, at 0.70 of the length by feet (ANSUR II: ball length 2.61 + 0.7286 of the foot)', () => {
    const ring = outlineModel(measures);
    const at = (side: 1 | -1) => ring.reduce((most, point) => (side * point[1] > side * most[1] ? point : most))[0];
    // A foot of 240 mm on this last of 252 (EU 38 by two points of toe allowance, 13.3 mm).
    expect(Math.abs(at(-1) - (2.61 + 0.7286 * 238.7))).toBeLessThan(5);
    expect(at(1)).toBeLessThan(at(-1));
    expect((at(1) + at(-1)) / 2).toBeGreaterThan(0.64 * 252);
    expect((at(1) + at(-1)) / 2).toBeLessThan(0.7 * 252);
  });

  it('is nowhere between them narrower than the waist by more than a millimetre', () => {
    const ring = outlineModel(measures);
    const narrowest = Math.min(...Array.from({ length: 120 }, (_, i) => widthAt(ring, 45 + i)));
    expect(Math.abs(narrowest - 56)).toBeLessThan(1);
  });

  it('is exactly as long as the bottom, from the back at 0', () => {
    const { left, right } = box(outlineModel(measures));
    expect(left).toBeCloseTo(0, 1);
    expect(right).toBeCloseTo(252, 1);
  });

  it('swings the forepart outward and leaves the seat', () => {
    const [straight, swung] = [outlineModel(measures), outlineModel({ ...measures, swing: 6 })];
    const topIn = (ring: Ring, from: number, to: number) =>
      Math.max(...ring.filter(([x]) => x >= from && x <= to).map(([, y]) => y));
    expect(topIn(swung, 150, 190) - topIn(straight, 150, 190)).toBeCloseTo(6, 0);
    expect(topIn(swung, 20, 50)).toBeCloseTo(topIn(straight, 20, 50), 0);
  });

  it("swings by a tenth at the waist, half at the ball's back and whole at the tread (common practice)", () => {
    const [straight, swung] = [outlineModel(measures), outlineModel({ ...measures, swing: 10 })];
    const outside = (ring: Ring, x: number) => Math.max(...edgesAt(ring, x));
    for (const [at, share] of [
      [0.43, 0.1],
      [0.55, 0.5],
      [2 / 3, 1],
    ] as const) {
      expect(outside(swung, at * 252) - outside(straight, at * 252)).toBeCloseTo(10 * share, 0);
    }
  });

  it('is a sound counter-clockwise outline for any measures that lasts have', () => {
    const mm = evenly;
    fc.assert(
      fc.property(
        mm(120, 330),
        mm(0.24, 0.42),
        mm(0.5, 0.9),
        mm(0.55, 0.85),
        mm(-8, 12),
        (length, slender, waist, seat, swing) => {
          const tread = length * slender;
          const ring = outlineModel({ length, tread, waist: waist * tread, seat: seat * tread, swing });
          expect(area(ring)).toBeGreaterThan(0.5 * length * tread);
          expect(area(ring)).toBeLessThan(length * tread);
          expect(crossesItself(ring)).toBe(false);
        },
      ),
      { seed: 14 },
    );
  });
});
