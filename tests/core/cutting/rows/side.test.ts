import { describe, expect, it } from 'vitest';
import { clearance } from '../../../../src/core/cutting/rows/reach';
import { mirroredSides, quarterTurned, type Sides, sidesOf } from '../../../../src/core/cutting/rows/side';
import { mirror } from '../../../../src/core/geometry/mirror';
import { moved } from '../../../../src/core/geometry/moved';
import type { Ring } from '../../../../src/core/geometry/ring';
import { rectangle } from '../outlines';

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

describe('sidesOf', () => {
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
