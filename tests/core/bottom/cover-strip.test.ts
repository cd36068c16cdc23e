import { describe, expect, it } from 'vitest';
import { coverStrip } from '../../../src/core/bottom/cover-strip';
import { area } from '../../../src/core/geometry/area';
import type { Point } from '../../../src/core/geometry/ring';
import { atGround } from '../../../src/core/last/profile';
import { rampProfile } from '../ramp';

/** Back and sides of the ramp wedge: from one end of its front round the back to the other. */
const BACK_AND_SIDES: readonly Point[] = [
  [168, 30],
  [60, 30],
  [0, 30],
  [0, -30],
  [60, -30],
  [168, -30],
];

describe('coverStrip of a ramp wedge worked by hand (derived)', () => {
  const strip = coverStrip(BACK_AND_SIDES, (x) => atGround(rampProfile, x).z, 12, 15);

  it('is as long as back and sides: 60 + 2 × 168 = 396', () => {
    expect(strip.length).toBeCloseTo(396, 9);
  });

  it('covers a wall of 2 × (60 × 45 + ½ × 108 × 45) + 60 × 45 = 12,960 mm², and with turns of 12 and 15 takes 236.52 cm²', () => {
    expect(strip.wall).toBeCloseTo(12_960, 6);
    expect(strip.area / 100).toBeCloseTo((12_960 + 396 * 27) / 100, 9);
  });

  it('has an outline that encloses its area', () => {
    expect(area(strip.ring)).toBeCloseTo(strip.area, 6);
    expect(strip.width).toBe(45 + 12 + 15);
  });

  it('takes the plan edge, not the slope, for its baseline', () => {
    expect(strip.stations.map(({ at }) => at)).toEqual([0, 108, 168, 228, 288, 396]);
  });
});

it('follows the height between the corners of a path: sides of one straight edge each cover as much', () => {
  const corners: readonly Point[] = [
    [168, 30],
    [0, 30],
    [0, -30],
    [168, -30],
  ];
  const strip = coverStrip(corners, (x) => atGround(rampProfile, x).z, 12, 15);
  expect(strip.wall).toBeCloseTo(12_960, 0);
  // A station where the upper edge bends, on either side, and none where it runs straight.
  expect(strip.stations).toHaveLength(6);
});

describe('coverStrip', () => {
  it('never goes below the ground', () => {
    expect(
      coverStrip(
        [
          [0, 0],
          [10, 0],
        ],
        () => -3,
        0,
        0,
      ).wall,
    ).toBe(0);
  });
});
