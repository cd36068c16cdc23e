import { describe, expect, it } from 'vitest';
import { direction, moved } from '../../../src/core/geometry/moved';
import { rectangle } from '../cutting/outlines';

describe('direction', () => {
  it('is exact at quarter turns either way', () => {
    expect([0, 90, 180, 270, 360, -90, -450].map((turn) => ({ ...direction(turn) }))).toEqual([
      { cos: 1, sin: 0 },
      { cos: 0, sin: 1 },
      { cos: -1, sin: 0 },
      { cos: 0, sin: -1 },
      { cos: 1, sin: 0 },
      { cos: 0, sin: -1 },
      { cos: 0, sin: -1 },
    ]);
  });

  it('is that of the angle elsewhere (derived)', () => {
    expect(direction(30).sin).toBeCloseTo(0.5, 12);
    expect(direction(60).cos).toBeCloseTo(0.5, 12);
  });
});

describe('moved', () => {
  it('turns counter-clockwise about the origin first, then moves', () => {
    const [, along] = moved(rectangle(10, 4), 90, 100, 200);
    expect(along).toEqual([100, 210]);
  });

  it('turns by any angle: (10, 4) by 30° is (10 cos 30° − 4 / 2, 10 / 2 + 4 cos 30°) (derived)', () => {
    const [x, y] = moved([[10, 4]], 30)[0] ?? [NaN, NaN];
    expect(x).toBeCloseTo(10 * Math.sqrt(0.75) - 2, 12);
    expect(y).toBeCloseTo(5 + 4 * Math.sqrt(0.75), 12);
  });

  it('stays where it is without turn or place', () => {
    const ring = rectangle(10, 4);
    expect(moved(ring, 0)).toBe(ring);
  });
});
