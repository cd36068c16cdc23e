import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { moved } from '../../../src/core/geometry/moved';
import type { Ring } from '../../../src/core/geometry/ring';
import { rounded, roundedRing } from '../../../src/core/geometry/rounded-ring';
import { evenly } from '../../evenly';
import { anyOutline } from '../cutting/outlines';

describe('roundedRing', () => {
  it('moves no point by more than half a millionth of a mm along an axis', () => {
    fc.assert(
      fc.property(anyOutline, evenly(0, 360), (ring, turn) => {
        const turned = moved(ring, turn);
        roundedRing(turned).forEach(([x, y], i) => {
          expect(Math.abs(x - turned[i]![0])).toBeLessThanOrEqual(0.5001e-6);
          expect(Math.abs(y - turned[i]![1])).toBeLessThanOrEqual(0.5001e-6);
        });
      }),
    );
  });

  it('is the very same ring where it is rounded already', () => {
    const ring: Ring = [
      [0, 0],
      [12.3, 0.000001],
      [254.123456, 80],
    ];
    expect(roundedRing(ring)).toBe(ring);
    const once = roundedRing(moved(ring, 33));
    expect(once).not.toBe(ring);
    expect(roundedRing(once)).toBe(once);
  });

  it('is one where only the last bits differ', () => {
    const ring: Ring = [
      [1 / 3, 2 / 3],
      [100 / 7, 5 / 7],
      [Math.PI, 50 * Math.E],
    ];
    const other = ring.map(([x, y]) => [x * (1 + 4e-16), y * (1 - 4e-16)] as const);
    expect(other).not.toEqual(ring);
    expect(roundedRing(other)).toEqual(roundedRing(ring));
    expect(rounded(2 / 3)).toBe(0.666667);
  });
});
