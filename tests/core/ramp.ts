import type { Ring } from '../../src/core/geometry/ring';
import type { LastInSize } from '../../src/core/last/last-in-size';
import { type Gap, measuredProfile } from '../../src/core/last/measured-profile';
import type { Profile } from '../../src/core/last/profile';

/**
 * A last that is worked by hand, so that every figure is school arithmetic: gap 40 up to x 60, from there straight to 0
 * at x 160, 60 wide, square.
 */
export const rampGaps: readonly Gap[] = [
  { x: 0, z: 40 },
  { x: 60, z: 40 },
  { x: 60, z: 40 },
  { x: 160, z: 0 },
];

/** Its bottom is 60 + √(100² + 40²) = 167.70 long to the tread, which lies at two thirds of its length. */
export const RAMP_TO_TREAD = 60 + Math.hypot(100, 40);
export const RAMP_LENGTH = 1.5 * RAMP_TO_TREAD;
export const RAMP_ANGLE = (Math.atan(0.4) * 180) / Math.PI;

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
  heelHeight: 40,
  toeSpring: 0,
  profile: rampProfile,
  outline: rampOutline,
};
