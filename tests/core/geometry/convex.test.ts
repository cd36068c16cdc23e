import { polygonHull } from 'd3-polygon';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { itemRound } from '../../../src/core/item-at';
import { convex } from '../../../src/core/geometry/convex';
import { anyOutline, hook, rectangle, regular, tee } from '../cutting/outlines';

describe('convex', () => {
  it('is true of rectangles and regular outlines, false of an outline with an inlet', () => {
    expect(convex(rectangle(100, 50))).toBe(true);
    expect(convex(regular(9))).toBe(true);
    expect(convex(tee)).toBe(false);
    expect(convex(hook)).toBe(false);
  });

  it('takes a corner that lies on a line between two others for no bend, also where it lies a hair inward', () => {
    const inwardBy = (depth: number) =>
      convex([
        [0, 0],
        [50, depth],
        [100, 0],
        [100, 50],
        [0, 50],
      ]);
    expect([0, 1e-9, 1e-3].map(inwardBy)).toEqual([true, true, false]);
  });

  it('finds the inward corner wherever it stands in the list', () => {
    const dented = [
      [0, 0],
      [50, 20],
      [100, 0],
      [100, 50],
      [0, 50],
    ] as const;
    dented.forEach((_, i) => expect(convex([...dented.slice(i), ...dented.slice(0, i)])).toBe(false));
  });

  it('is true where another library’s hull needs every corner, for outlines of any shape', () => {
    const seen = { true: 0, false: 0 };
    fc.assert(
      fc.property(anyOutline, (ring) => {
        const hull = polygonHull([...ring] as [number, number][]);
        const every = hull?.length === ring.length;
        // Corners that all but lie on a line are told apart by rounding alone.
        fc.pre(!nearlyStraight(ring));
        seen[`${every}`] += 1;
        expect(convex(ring)).toBe(every);
      }),
      { seed: 31, numRuns: 600 },
    );
    expect(Math.min(seen.true, seen.false)).toBeGreaterThan(30);
  });
});

/** Whether a corner bends by less than a millionth of a turn. */
function nearlyStraight(ring: readonly (readonly [number, number])[]): boolean {
  return ring.some(([x, y], i) => {
    const [px, py] = itemRound(ring, i - 1);
    const [qx, qy] = itemRound(ring, i + 1);
    const [a, b] = [Math.atan2(y - py, x - px), Math.atan2(qy - y, qx - x)];
    return Math.abs(Math.sin(b - a)) < 1e-6;
  });
}
