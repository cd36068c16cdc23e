import type { LastInSize } from '../last/last-in-size';
import { Problem } from '../problem';
import { type BentLayer, bentLayers, squareToSeat } from './bent-layers';
import { type FlatLift, flatLifts } from './flat-lifts';
import { coursesOfMix, type LayerMix, layerMix } from './layer-mix';

/** What a wedge is built from. */
export interface WedgeRule {
  /** On offer, as measured, mm. */
  readonly thicknesses: readonly number[];
  /** What lies under it, mm. */
  readonly platform: number;
  readonly laying: 'flat' | 'bent';
  /** Thickness kept at skived fronts, mm. */
  readonly skiveTo: number;
  /** The most that may be rasped off its height, mm. */
  readonly rasping: number;
}

/** A flat lift of a wedge, with the heights of its faces over the ground, mm. */
export interface WedgeLift extends FlatLift {
  readonly from: number;
  readonly to: number;
}

/** A wedge under a last: its lifts flat or bent on, one of both. */
export interface Wedge {
  /** Height that the lifts are to reach, mm: of bent ones square to the seat. */
  readonly height: number;
  readonly mix: LayerMix;
  /** From the ground up. */
  readonly flat: readonly WedgeLift[];
  /** From the last downward; undefined where they lie flat. */
  readonly bent: readonly BentLayer[] | undefined;
}

/** The lifts of a wedge under a last (derived). @throws Problem where there is nothing to raise or no mix comes out. */
export function wedge({ profile, heelHeight }: LastInSize, rule: WedgeRule): Wedge {
  if (heelHeight <= 0) {
    throw new Problem('unavailable', { argument: 'last' }, 'its heel height is 0, so there is nothing to raise');
  }
  const { platform, laying, skiveTo, rasping } = rule;
  const offers = rule.thicknesses.map((thickness) => ({ thickness }));
  const height = laying === 'bent' ? squareToSeat(profile, heelHeight) : heelHeight;
  const mix = layerMix(height, offers, rasping);
  const courses = coursesOfMix(mix, offers).map(({ thickness }) => thickness);
  if (laying === 'bent') {
    return { height, mix, flat: [], bent: bentLayers(profile, [...courses].reverse(), skiveTo) };
  }
  const lifts = flatLifts(profile, courses, { skiveTo });
  const overGround = lifts.map((lift) => ({ ...lift, from: platform + lift.lower, to: platform + lift.upper }));
  return { height, mix, flat: overGround, bent: undefined };
}
