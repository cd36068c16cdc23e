import { INCH } from '../units';

/** Codes of the size systems. */
export const SIZE_SYSTEMS = [
  'EU',
  'UK',
  'UKCHILD',
  'USMEN',
  'USWOMEN',
  'USWOMENDEVICE',
  'USCHILD',
  'MONDO',
  'JP',
  'CN',
  'KR',
] as const;

export type SizeSystem = (typeof SIZE_SYSTEMS)[number];

/**
 * A size system as a straight line: foot length in mm = (size − zero) × step.
 * The last's length adds the toe allowance that the system's own formulas imply.
 */
export interface SystemRule {
  /** Length of one size, mm. */
  readonly step: number;
  /** The size (perhaps below the scale) at which a foot would have no length. */
  readonly zero: number;
  /** Last − foot implied by the system's formulas, mm. */
  readonly toeAllowance: number;
  /** The interval in which sizes are marked. */
  readonly marked: number;
}

/** Two Paris points: what EU = 1.5 · foot + 2 against 1.5 · last implies. */
const PARIS_ALLOWANCE = (2 * 20) / 3;
/** Two sizes of 1/3 in: what the English formulas by foot and by last imply. */
const ENGLISH_ALLOWANCE = (2 * INCH) / 3;

const english = (zero: number): SystemRule => ({
  step: INCH / 3,
  zero: -zero,
  toeAllowance: ENGLISH_ALLOWANCE,
  marked: 0.5,
});

const byFoot = (millimetresPerSize: number, marked: number): SystemRule => ({
  step: millimetresPerSize,
  zero: 0,
  // These systems mark the foot and imply no last; the continental allowance stands in.
  toeAllowance: PARIS_ALLOWANCE,
  marked,
});

/**
 * Rules by foot length. EU = 1.5 · foot(cm) + 2; UK = 3 · foot(in) − 23; UK child − 10; US men − 22; US women, common
 * − 20.5; US women, device − 21; US child − 9 2/3 (Wikipedia, "Shoe size"). Mondopoint: foot in mm (ISO 9407:2019);
 * Japan: foot in cm (JIS S 5037); China and Korea: foot in mm (common practice).
 */
export const SYSTEM_RULES: Readonly<Record<SizeSystem, SystemRule>> = {
  EU: { step: 20 / 3, zero: 2, toeAllowance: PARIS_ALLOWANCE, marked: 0.5 },
  UK: english(23),
  UKCHILD: english(10),
  USMEN: english(22),
  USWOMEN: english(20.5),
  USWOMENDEVICE: english(21),
  USCHILD: english(29 / 3),
  MONDO: byFoot(1, 5),
  JP: byFoot(10, 0.5),
  CN: byFoot(1, 5),
  KR: byFoot(1, 5),
};
