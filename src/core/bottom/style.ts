import type { Quality } from '../cutting/sheet/natural-sheet';
import type { Part } from './layer';

/** What raises the heel: a wedge to the tread, a heel up to its breast, or nothing. */
export const RAISES = ['wedge', 'heel', 'none'] as const;
export type Raise = (typeof RAISES)[number];

/**
 * How lifts are laid: flat and skived to the last; bent round it; or glued up flat as a block that is sawn and rasped
 * to it.
 */
export const LAYINGS = ['flat', 'bent', 'block'] as const;
export type Laying = (typeof LAYINGS)[number];

/** Where a full sole goes over a heel: at the back, between last and heel, or down the heel's breast. */
export const SOLE_ENDS = ['at the back', 'down the breast'] as const;
export type SoleEnds = (typeof SOLE_ENDS)[number];

/** What a cover goes round under a heel on a platform. */
export const COVERED = ['heel and platform', 'heel', 'platform'] as const;

/** What a block of cork, foam or board has in it for nails and screws to hold in. */
export const HEEL_CORES = ['none', 'wood', 'leather'] as const;
export type HeelCore = (typeof HEEL_CORES)[number];

/** Kinds of adhesive, which differ in how they are used. */
export const ADHESIVES = ['polychloroprene', 'polyurethane', 'water-based', 'hot melt'] as const;
export type Adhesive = (typeof ADHESIVES)[number];

/** Where a welt strip ends. */
export const WELT_ENDS = ['at the seat', 'all round'] as const;
export type WeltEnds = (typeof WELT_ENDS)[number];

/** What the bottom of a style is built from. Stock is named by its code; lengths in mm, angles in degrees. */
export interface Style {
  readonly row: number;
  readonly code: string;
  readonly last: string;
  /** Against the last, from the foot downward. */
  readonly insole?: string | undefined;
  readonly welt?: string | undefined;
  readonly midsole?: string | undefined;
  readonly sole?: string | undefined;
  /** The least quality of stock for the pieces of a part; a part without one needs the best. */
  readonly quality: Readonly<Partial<Record<Part, Quality>>>;
  readonly soleEnds: SoleEnds;
  readonly raise: Raise;
  /** Stock of the lifts, one or more thicknesses to mix. */
  readonly lifts: readonly string[];
  readonly laying: Laying;
  /** Stock of the platform: each once, from the last downward; with a finished heel, thicknesses to mix. */
  readonly platform: readonly string[];
  /** Wanted height at the back: decides the platform. */
  readonly finishedHeel?: number | undefined;
  /** On the ground: full length, or the forepart before a heel. */
  readonly outsole?: string | undefined;
  /** On the ground, under a heel. */
  readonly topPiece?: string | undefined;
  readonly cover?: string | undefined;
  /** Of a heel on a platform: which of them is covered; a wedge and its platform are covered as one. */
  readonly covered: (typeof COVERED)[number];
  readonly shank: boolean;
  /** Upper, lining and stiffener, a side. */
  readonly lastedSubstance: number;
  /** Of sole, platform and outsole beyond the upper; by zone where that differs. */
  readonly projection: number;
  readonly projectionToe?: number | undefined;
  readonly projectionTread?: number | undefined;
  readonly projectionWaist?: number | undefined;
  readonly projectionSeat?: number | undefined;
  /** Left for rasping or rounding, a side. */
  readonly roundingAllowance: number;
  /** What fronts are skived to. */
  readonly skiveTo: number;
  /** The most that may be rasped off a height. */
  readonly rasping: number;
  /** Slant of the wedge's front with the foot's joints, inside forward. */
  readonly frontSlant: number;
  /** How much a heel narrows a side from the last to the ground. */
  readonly heelTaper: number;
  /** Skive of the edge of a leather sole, degrees, and what it is skived to; blank for a square edge. */
  readonly soleSkive?: number | undefined;
  readonly soleSkiveTo: number;
  readonly turnOver: number;
  readonly turnUnder: number;
  /** How far each end of a cover goes past its seam: in a heel's breast, or at the back of what it goes all round. */
  readonly coverLap: number;
  readonly weltEnds: WeltEnds;
  readonly weltWidth: number;
  readonly weltLap: number;
  /** Of a finished unit that could be bought instead: price of a pair, tooling per size, fewest pairs sold, in all and of one size. */
  readonly boughtPrice?: number | undefined;
  readonly boughtTooling: number;
  readonly boughtMinimum: number;
  readonly boughtSizeMinimum: number;
  /** Minutes to glue and fit a pair of them; without it, those of one joint. */
  readonly boughtFitting?: number | undefined;
  readonly heelCore: HeelCore;
  /** Of a sole down the breast: what its bend takes, and the tab that lies on the heel's ground face. */
  readonly breastAllowance: number;
  readonly tabLength: number;
  readonly tabWidth: number;
  /** Without it, times and coats are those of polychloroprene. */
  readonly adhesive?: Adhesive | undefined;
}
