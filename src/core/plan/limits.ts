import { LEAST_SIDE } from '../cutting/sheet/leftover';
import { Problem } from '../problem';
import { fold } from './codes';
import type { Rate } from './inputs';

/** Limits that the checks hold against. The maker changes one by a row of Costs and times whose unit is limit. */
export interface Limits {
  /** |seat stack − tread stack − heel height|, mm. */
  readonly heelControl: number;
  /** How far a flat skive may stand proud of the last before it is worth a warning, mm. */
  readonly proud: number;
  /** Built heel from which stability and heel attachment ask for a second look, mm. */
  readonly highBuild: number;
  /** Heel of a last up to which the plain model serves, mm. */
  readonly plainModel: number;
  /** Heel of a last from which the waist wants a shank, mm. */
  readonly shank: number;
  /** How far a fitted model may miss its third measurement, mm. */
  readonly misfit: number;
  /** Difference of the gaps at the two edges that is worth a look, mm. */
  readonly twist: number;
  /** Difference in substance between the leather soles of a pair, mm. */
  readonly pairSubstance: number;
  /** Heel from which more than adhesive fixes it, and above which more than nails does, mm. */
  readonly heelFixing: number;
  readonly screwedHeel: number;
  /** Lean at which a heel tips over the edge of its base, degrees: less is worth a second look. */
  readonly tipAngle: number;
  /** Thickness under the tread from which a forepart does not bend with the foot, mm. */
  readonly stiffForepart: number;
  /** Shorter side from which what is left of a sheet is kept as an offcut, mm. */
  readonly offcutSide: number;
}

/** The usual limits (common practice). */
export const USUAL_LIMITS: Limits = {
  heelControl: 1,
  proud: 1,
  highBuild: 50,
  plainModel: 50,
  shank: 30,
  misfit: 1,
  twist: 4,
  pairSubstance: 0.3,
  heelFixing: 30,
  screwedHeel: 50,
  tipAngle: 15,
  stiffForepart: 20,
  offcutSide: LEAST_SIDE,
};

/** Names of the limits as they stand in the column Item. */
export const LIMIT_ITEMS: Readonly<Record<keyof Limits, string>> = {
  heelControl: 'Heel control',
  proud: 'Proud of last',
  highBuild: 'High build',
  plainModel: 'Plain model',
  shank: 'Heel without shank',
  misfit: 'Misfit of model',
  twist: 'Twist of last',
  pairSubstance: 'Pair substance',
  heelFixing: 'Heel fixing',
  screwedHeel: 'Screwed heel',
  tipAngle: 'Tip angle',
  stiffForepart: 'Stiff forepart',
  offcutSide: 'Offcut side',
};

const NAMES = Object.entries(LIMIT_ITEMS) as readonly [keyof Limits, string][];

/** The limits in force: the usual ones where the maker has said nothing else that a check knows. */
export function limitsOf(rates: readonly Rate[]): Limits {
  const limits: Record<keyof Limits, number> = { ...USUAL_LIMITS };
  for (const rate of rates) {
    const limit = limitIn(rate);
    if (limit) limits[limit] = rate.value;
  }
  return limits;
}

/** Limits that no check knows. */
export function unknownLimits(rates: readonly Rate[]): readonly Problem[] {
  return rates
    .filter((rate) => rate.unit === 'limit' && !limitIn(rate))
    .map(
      ({ row, item }) =>
        new Problem(
          'invalid',
          { argument: 'rates', table: 'Costs and times', row, column: 'Item' },
          `"${item}" is no limit that a check knows; use one of ${NAMES.map(([, name]) => name).join(', ')}`,
        ),
    );
}

function limitIn({ unit, item }: Rate): keyof Limits | undefined {
  return unit === 'limit' ? NAMES.find(([, name]) => fold(name) === fold(item))?.[0] : undefined;
}
