/** What raises the heel: a wedge to the tread, a heel up to its breast, or nothing. */
export const RAISES = ['wedge', 'heel', 'none'] as const;
export type Raise = (typeof RAISES)[number];

/** Lifts lie flat, or are bent on along the last. */
export const LAYINGS = ['flat', 'bent'] as const;
export type Laying = (typeof LAYINGS)[number];

/** What the bottom of a style is built from. Stock is named by its code; lengths in mm, angles in degrees. */
export interface Style {
  readonly row: number;
  readonly code: string;
  readonly last: string;
  /** Against the last, next to the foot. */
  readonly insole?: string | undefined;
  /** Against the last, over the lifts. */
  readonly sole?: string | undefined;
  readonly raise: Raise;
  /** Stock of the lifts, one or more thicknesses. */
  readonly lifts: readonly string[];
  readonly laying: Laying;
  /** Flat under the lifts. */
  readonly platform?: string | undefined;
  /** On the ground, full length. */
  readonly outsole?: string | undefined;
  /** On the ground, under a heel. */
  readonly topPiece?: string | undefined;
  readonly cover?: string | undefined;
  /** Upper, lining and stiffener, a side. */
  readonly lastedSubstance: number;
  /** Of sole, platform and outsole beyond the upper. */
  readonly projection: number;
  /** Left for rasping or rounding, a side. */
  readonly roughEdge: number;
  /** Left at skived fronts. */
  readonly edgeLeft: number;
  /** The most that may be rasped off the height. */
  readonly rasping: number;
  /** Slant of the wedge's front with the joints, inside forward. */
  readonly frontSlant: number;
  /** Bevel of the edge of a leather sole, with the edge left there; blank for a square edge. */
  readonly soleBevel?: number | undefined;
  readonly soleEdge: number;
  readonly turnOver: number;
  readonly turnUnder: number;
}
