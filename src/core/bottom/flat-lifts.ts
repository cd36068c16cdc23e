import {
  atGround,
  atLength,
  bottomLength,
  firstBeyond,
  integrateOver,
  type Profile,
  whereStands,
} from '../last/profile';
import { Problem } from '../problem';
import { angleOver } from './skive';

/** One flat lift of a wedge or heel: a level layer whose upper face is skived to the last's bottom. */
export interface FlatLift {
  /** Counted from the ground up, from 1. */
  readonly number: number;
  readonly thickness: number;
  /** Heights of its faces over the ground face of the stack, mm. */
  readonly lower: number;
  readonly upper: number;
  /** Where it ends, along the ground from the back, mm. */
  readonly front: number;
  /** Where its skive begins, along the ground from the back, mm. */
  readonly skiveFrom: number;
  /** front − skiveFrom, mm; 0 where it is not skived. */
  readonly skiveWidth: number;
  /** degrees; 0 where it is not skived. */
  readonly skiveAngle: number;
  /** Thickness left at its front, mm. */
  readonly edge: number;
  /** How far the flat skive stands proud of the curved bottom at most, mm: to be rasped before gluing. */
  readonly proud: number;
  /** Whether it is as long as the last: of a block that goes on under the tread. */
  readonly whole?: boolean;
  /** Seen from the side, what is taken off its front once it follows the bottom's curve, mm². */
  readonly removed: number;
}

export interface FlatLiftRule {
  /** Thickness that a front is skived to, mm: 0.5 leather, 1 cork and foam (common practice). */
  readonly skiveTo: number;
  /** The wedge ends this far behind the tread line, mm: at least, at most. A heel ends at its breast instead. */
  readonly setback?: { readonly least: number; readonly most: number };
  /** Where a heel's breast stands, along the ground from the back, mm. */
  readonly breast?: number;
  /** What of them goes on under the tread, to the toe, mm; without it nothing. */
  readonly through?: number;
}

/** A wedge stops 5 to 15 mm behind the tread line (common practice). */
export const USUAL_SETBACK = { least: 5, most: 15 } as const;

/**
 * The flat lifts that fill the space between the last's bottom and the ground (derived). Lift k fills the heights
 * between the sums of the lifts below it; it ends where the bottom stands at its lower face plus what it is skived to, and is
 * skived from where the bottom stands at its upper face.
 * @param thicknesses from the ground up, mm; their sum reaches the heel height
 * @throws Problem where a lift is to be skived to its own thickness or more.
 */
export function flatLifts(profile: Profile, thicknesses: readonly number[], rule: FlatLiftRule): readonly FlatLift[] {
  const { skiveTo, setback = USUAL_SETBACK, breast, through = 0 } = rule;
  const toe = atLength(profile, bottomLength(profile));
  // Before the tread the bottom rises by its toe spring.
  const highest = through > 0 ? Math.max(through, toe.z) : 0;
  let upper = 0;
  return thicknesses.map((thickness, i) => {
    if (skiveTo >= thickness) {
      throw new Problem(
        'invalid',
        { argument: 'skive_to' },
        `lift ${i + 1} is ${Number(thickness.toFixed(2))} mm thick and cannot be skived to ${skiveTo} mm; give less, or other thicknesses`,
      );
    }
    const lower = upper;
    upper += thickness;
    // The saw takes off what stands over the last's bottom.
    if (lower < highest) {
      return { ...liftBetween(profile, { number: i + 1, thickness, lower, upper, front: toe.x }), whole: true };
    }
    const limit = breast ?? wedgeFront(profile, through + skiveTo, setback);
    const front = i === 0 ? limit : Math.min(limit, whereStands(profile, lower + skiveTo).x);
    if (front <= 0) {
      throw new Problem(
        'unavailable',
        { argument: 'thicknesses' },
        `lift ${i + 1} would lie above the back of the last; take fewer or thinner lifts`,
      );
    }
    return liftBetween(profile, { number: i + 1, thickness, lower, upper, front });
  });
}

/** Where a wedge ends, along the ground from the back: where what it is skived to fits under the bottom, within the setback. */
export function wedgeFront(
  profile: Profile,
  skiveTo: number,
  setback: { readonly least: number; readonly most: number } = USUAL_SETBACK,
): number {
  const tread = atLength(profile, profile.tread).x;
  return Math.min(Math.max(whereStands(profile, skiveTo).x, tread - setback.most), tread - setback.least);
}

function liftBetween(
  profile: Profile,
  lift: Pick<FlatLift, 'number' | 'thickness' | 'lower' | 'upper' | 'front'>,
): FlatLift {
  const { lower, upper, front, thickness } = lift;
  const tread = atLength(profile, profile.tread);
  const skiveFrom = upper <= tread.z ? front : Math.min(front, whereStands(profile, upper).x);
  const skiveWidth = front - skiveFrom;
  if (skiveWidth <= 0)
    return { ...lift, skiveFrom: front, skiveWidth: 0, skiveAngle: 0, edge: thickness, proud: 0, removed: 0 };
  const edge = Math.min(thickness, Math.max(0, atGround(profile, front).z - lower));
  const rise = thickness - edge;
  const faceAt = (x: number) => lower + edge + (rise * (front - x)) / skiveWidth;
  let proud = 0;
  const { x: xs, z: zs } = profile;
  // Behind the skive's beginning by a hair: it may begin on a sample.
  for (let i = firstBeyond(xs, skiveFrom - 1e-9); i < xs.length && xs[i]! <= front; i++) {
    // Above the back of the stack the surplus is the height's rasping, not the skive's.
    const x = xs[i]!;
    const bottom = zs[i]!;
    if (x >= skiveFrom && bottom <= upper) proud = Math.max(proud, Math.min(upper, faceAt(x)) - bottom);
  }
  const removed = integrateOver(profile, 'x', skiveFrom, front, ({ z }) => Math.min(thickness, Math.max(0, upper - z)));
  return { ...lift, skiveFrom, skiveWidth, skiveAngle: angleOver(rise, skiveWidth), edge, proud, removed };
}
