import { describe, expect, it } from 'vitest';
import { coverStrip } from '../../../src/core/bottom/cover-strip';
import { area } from '../../../src/core/geometry/area';
import { box } from '../../../src/core/geometry/box';
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

describe('the ends of a strip', () => {
  /** All round a box of 100 × 60, 20 mm high, from the middle of its back. */
  const round: readonly Point[] = [
    [0, 0],
    [0, -30],
    [100, -30],
    [100, 30],
    [0, 30],
    [0, 0],
  ];

  it('go past a seam that they meet in, turns and all: 320 + 2 × 5 long, 20 + 12 + 15 wide (derived)', () => {
    const [flush, lapped] = [0, 5].map((lap) => coverStrip(round, () => 20, 12, 15, lap));
    expect(lapped?.area).toBeCloseTo(330 * 47, 9);
    expect(area(lapped?.ring ?? [])).toBeCloseTo(330 * 47, 9);
    expect(area(flush?.ring ?? [])).toBeCloseTo(320 * 47, 9);
    expect(box(lapped?.ring ?? [])).toEqual({ left: -5, right: 325, bottom: -15, top: 32 });
    // Wall, fold lines and the length of what is turned stay as they were: the seam stands where the wall ends.
    expect([lapped?.wall, lapped?.unturned, lapped?.length, lapped?.over]).toEqual([
      flush?.wall,
      flush?.unturned,
      flush?.length,
      flush?.over,
    ]);
    expect([flush?.lap, lapped?.lap]).toEqual([0, 5]);
  });

  it('end with the wall where it is open in front', () => {
    const strip = (lap: number) => coverStrip(BACK_AND_SIDES, (x) => atGround(rampProfile, x).z, 12, 15, lap);
    expect(strip(5)).toEqual(strip(0));
    expect(strip(5).lap).toBe(0);
  });
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
