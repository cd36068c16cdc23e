import { atLength, type Profile } from './profile';

/** Layers bend over a curve at the ball and into the hollow of the waist. */
export type BendSide = 'over' | 'hollow';

/** The tightest curve of one kind. */
export interface Curve {
  /** mm, and one over it: the change of slope, radians for each mm. */
  readonly radius: number;
  readonly curvature: number;
  /** Where, along the bottom, mm. */
  readonly s: number;
}

/** Curves flatter than this count as straight, mm. */
const FLAT = 1e4;

/**
 * The tightest curve of the last's bottom up to its tread line, or from there to the toe: 1 / greatest |dθ/ds|. Corners of a measured profile are
 * edges, not curves, and are left out.
 * @returns undefined where nothing bends that way.
 */
export function tightestCurve(profile: Profile, side: BendSide, reach: 'heel' | 'toe' = 'heel'): Curve | undefined {
  const { s, slope, tread } = profile;
  const sign = side === 'hollow' ? 1 : -1;
  let most = 0;
  let at = 0;
  for (let i = 1; i < s.length; i++) {
    if (s[i]! <= tread + 1e-9 !== (reach === 'heel')) continue;
    const step = s[i]! - s[i - 1]!;
    if (step < 1e-9) continue;
    const curvature = (sign * ((slope[i]! - slope[i - 1]!) * Math.PI)) / 180 / step;
    if (curvature > most) {
      most = curvature;
      at = s[i]! - step / 2;
    }
  }
  return most > 1 / FLAT ? { radius: 1 / most, curvature: most, s: atLength(profile, at).s } : undefined;
}
