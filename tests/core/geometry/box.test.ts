import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { box, boxAbout, boxMoved } from '../../../src/core/geometry/box';
import { moved } from '../../../src/core/geometry/moved';
import { evenly } from '../../evenly';
import { anyOutline, rectangle } from '../cutting/outlines';

describe('box', () => {
  it('is the least and the greatest x and y', () => {
    expect(
      box([
        [3, -7],
        [-2, 4],
        [8, 1],
      ]),
    ).toEqual({ left: -2, bottom: -7, right: 8, top: 4 });
  });

  it('of a piece turned by 45° is as wide as its diagonals are long (derived)', () => {
    const { left, right, bottom, top } = box(moved(rectangle(100, 100), 45));
    expect(right - left).toBeCloseTo(100 * Math.SQRT2, 9);
    expect(top - bottom).toBeCloseTo(100 * Math.SQRT2, 9);
  });

  it('of no point is none', () => {
    const { left, right } = box([]);
    expect(right - left).toBe(-Infinity);
  });
});

describe('boxMoved', () => {
  it('is the box about the ring once it is turned and moved', () => {
    const place = evenly(-500, 500);
    const turn = fc.oneof(fc.constantFrom(0, 90, 180, 270), evenly(0, 360));
    fc.assert(
      fc.property(anyOutline, turn, place, place, (ring, degrees, x, y) => {
        const [found, wanted] = [boxMoved(ring, degrees, x, y), box(moved(ring, degrees, x, y))];
        for (const side of ['left', 'bottom', 'right', 'top'] as const)
          expect(found[side]).toBeCloseTo(wanted[side], 9);
      }),
      { seed: 5 },
    );
  });
});

describe('boxAbout', () => {
  it('reaches as far as any of the boxes', () => {
    const low = { left: 0, bottom: -3, right: 10, top: 2 };
    expect(boxAbout([low, { left: -1, bottom: 0, right: 4, top: 9 }])).toEqual({
      left: -1,
      bottom: -3,
      right: 10,
      top: 9,
    });
  });
});
