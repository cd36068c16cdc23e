import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clearance, STRETCH } from '../../../../src/core/cutting/rows/reach';
import { mirroredSides, quarterTurned, type Sides, sidesOf } from '../../../../src/core/cutting/rows/side';
import { itemRound } from '../../../../src/core/item-at';
import { mirror } from '../../../../src/core/geometry/mirror';
import { moved } from '../../../../src/core/geometry/moved';
import type { Point, Ring } from '../../../../src/core/geometry/ring';
import { anyOutline, rectangle } from '../outlines';

const wedge: Ring = [
  [0, 0],
  [30, 0],
  [30, 30],
];

/** Holds sides against others at places along them, by a narrow probe. */
function expectSame(found: Sides, wanted: Sides): void {
  const probe = sidesOf(rectangle(0.5, 1)).bottom;
  for (const side of ['top', 'right', 'bottom', 'left'] as const) {
    for (const at of [-29, -12.5, 3, 17]) {
      expect(clearance(found[side], probe, at)).toBeCloseTo(clearance(wanted[side], probe, at), 9);
    }
  }
}

/** How far a ring reaches up, or down as a positive number, over a place along it. */
function outermost(ring: Ring, x: number, sign: 1 | -1): number {
  const reaches = ring.flatMap(([ax, ay], i) => {
    const [bx, by] = itemRound(ring, i + 1);
    return Math.min(ax, bx) <= x && x <= Math.max(ax, bx) && ax !== bx
      ? [sign * (ay + ((x - ax) / (bx - ax)) * (by - ay))]
      : [];
  });
  return Math.max(...reaches);
}

describe('sidesOf', () => {
  it('reaches at every place as far as the outermost edge there does (every edge looked at)', () => {
    fc.assert(
      fc.property(anyOutline, (ring) => {
        const sides = sidesOf(ring);
        const swapped = ring.map(([x, y]): Point => [y, x]);
        for (const [{ line }, of, sign] of [
          [sides.top, ring, 1],
          [sides.bottom, ring, -1],
          [sides.right, swapped, 1],
          [sides.left, swapped, -1],
        ] as const) {
          expect(line[0]).toBeCloseTo(Math.min(...of.map(([x]) => x)), 6);
          expect(line[line.length - 1 - ((line.length - 1) % STRETCH)]).toBeCloseTo(Math.max(...of.map(([x]) => x)), 6);
          for (let i = 0; i + STRETCH < line.length; i += STRETCH) {
            const half = ((line[i + STRETCH] as number) - (line[i] as number)) / 2;
            const reach = (line[i + 1] as number) + (line[i + 2] as number) * half;
            expect(reach).toBeCloseTo(outermost(of, (line[i] as number) + half, sign), 6);
          }
        }
      }),
      { seed: 31 },
    );
  });

  it('is turned by quarters as the ring is', () => {
    expectSame(quarterTurned(sidesOf(wedge)), sidesOf(moved(wedge, 90)));
  });

  it('is mirrored as the ring is', () => {
    expectSame(mirroredSides(sidesOf(wedge)), sidesOf(mirror(wedge)));
    expectSame(mirroredSides(quarterTurned(sidesOf(wedge))), sidesOf(mirror(moved(wedge, 90))));
  });

  it('reads the same from the other end', () => {
    const { top } = sidesOf(wedge);
    expect(top.reversed.reversed).toBe(top);
    // From 30 high at the left, −30, down to the ground at 0 (derived).
    expect([...top.reversed.line].map((value) => value + 0)).toEqual([-30, 30, -1, 0]);
  });
});
