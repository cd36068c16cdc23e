import type { Ring } from '../../src/core/geometry/ring';
import type { LastInSize } from '../../src/core/last/last-in-size';
import { type Gap, measuredProfile } from '../../src/core/last/measured-profile';
import type { Profile } from '../../src/core/last/profile';

/**
 * A last that is worked by hand, so that every figure is school arithmetic: gap 45 up to x 60, from there straight to 0
 * at x 168, 60 wide, square. Its slope is 5 in 12, so that 13 of it are 5 high and 12 along the ground.
 */
export const rampGaps: readonly Gap[] = [
  { x: 0, z: 45 },
  { x: 60, z: 45 },
  { x: 60, z: 45 },
  { x: 168, z: 0 },
];

/** Its bottom is 60 + 13 / 12 × 108 = 177 long to the tread, which lies at two thirds of its length of 265.5. */
export const RAMP_TO_TREAD = 177;
export const RAMP_LENGTH = 1.5 * RAMP_TO_TREAD;
export const RAMP_ANGLE = (Math.atan(5 / 12) * 180) / Math.PI;

export const rampProfile: Profile = measuredProfile(rampGaps, RAMP_LENGTH);

export const rampOutline: Ring = [
  [0, -30],
  [RAMP_LENGTH, -30],
  [RAMP_LENGTH, 30],
  [0, 30],
];

export const rampLast: LastInSize = {
  length: RAMP_LENGTH,
  tread: 60,
  waist: 60,
  seat: 60,
  swing: 0,
  heelHeight: 45,
  toeSpring: 0,
  profile: rampProfile,
  outline: rampOutline,
};
