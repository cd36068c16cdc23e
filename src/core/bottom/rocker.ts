import { bottomLength, type Profile } from '../last/profile';

/**
 * What a forepart that does not bend is to rise at its toe, rolled from the tread line on, mm: (L − tread) · tan α
 * (derived). Rockers of 15° and 20° with their apex at 52 to 67 % of the length were tried (Journal of Foot and Ankle
 * Research 7, supplement 1, A66, 2014); the tread line lies at two thirds.
 */
export function rockerRise(profile: Profile, angle = ROCKER_ANGLE): number {
  return (bottomLength(profile) - profile.tread) * Math.tan((angle * Math.PI) / 180);
}

/** The smaller of the two that were tried, degrees. */
export const ROCKER_ANGLE = 15;
