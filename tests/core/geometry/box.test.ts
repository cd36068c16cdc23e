import { describe, expect, it } from 'vitest';
import { box } from '../../../src/core/geometry/box';
import { moved } from '../../../src/core/geometry/moved';
import { rectangle } from '../cutting/outlines';

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
