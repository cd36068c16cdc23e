import { convertUnit } from '../core/units';

/** Millimetres and grams, or inches, irons, ounces and square feet. */
export const UNIT_SYSTEMS = ['metric', 'imperial'] as const;
export type UnitSystem = (typeof UNIT_SYSTEMS)[number];

/**
 * How measures read outside of the cells: cells carry plain numbers in mm, g and ml whatever is chosen here. Lengths and
 * heights stand without their unit, which is said once; the others bring theirs along.
 */
export interface Figures {
  readonly system: UnitSystem;
  /** The unit of lengths and heights. */
  readonly unit: 'mm' | 'in';
  /** What measures are in, in words. */
  readonly sentence: string;
  /** A length along a piece or a sheet: whole mm, or inches to two decimals. */
  length(mm: number): string;
  /** A height: to 0.1 mm where it is not whole, or inches to two decimals. */
  height(mm: number): string;
  /** A thickness without its unit: mm, irons, or ounces for what covers. */
  thickness(mm: number, covers?: boolean): string;
  /** The unit that thickness leaves out. */
  thicknessUnit(covers?: boolean): string;
  area(mm2: number): string;
  weight(grams: number): string;
}

/** Sums of decimals fall short of a half by less than this. */
const HALF = 1e-9;

/** A number to so many decimals at most, halves up, with a true minus. */
export function decimals(value: number, most: number): string {
  return String(Number(fixed(value, most)) + 0).replace('-', '−');
}

/** A number to so many decimals, halves up, as cells show it: money above all, which is compared with theirs. */
export function fixed(value: number, places: number): string {
  return (value + Math.sign(value) * HALF).toFixed(places);
}

const metric: Figures = {
  system: 'metric',
  unit: 'mm',
  sentence: 'Millimetres and grams',
  length: (mm) => decimals(mm, 0),
  height: (mm) => decimals(mm, 1),
  thickness: (mm) => decimals(mm, 1),
  thicknessUnit: () => 'mm',
  area: (mm2) => `${decimals(mm2 / 100, 1)} cm²`,
  weight: (grams) => `${decimals(grams, 0)} g`,
};

const inches = (mm: number) => convertUnit(mm, 'mm', 'in').toFixed(2).replace('-', '−');
/** Leather that covers is told in ounces, sole leather and all else that is built up in irons (common practice). */
const unitOf = (covers = false) => (covers ? 'ounce' : 'iron');

const imperial: Figures = {
  system: 'imperial',
  unit: 'in',
  sentence: 'Inches; thicknesses in irons, of covers in ounces',
  length: inches,
  height: inches,
  thickness: (mm, covers) => decimals(convertUnit(mm, 'mm', unitOf(covers)), 1),
  thicknessUnit: (covers) => (covers ? 'oz' : 'iron'),
  area: (mm2) => `${decimals(convertUnit(mm2, 'mm2', 'ft2'), 2)} ft²`,
  weight: (grams) => `${decimals(convertUnit(grams, 'g', 'oz'), 1)} oz`,
};

export function figuresOf(system: UnitSystem): Figures {
  return system === 'imperial' ? imperial : metric;
}

/** A length or height within a sentence, where mm needs no unit and inches do. */
export function inSentence({ unit }: Figures, figure: string): string {
  return unit === 'mm' ? figure : `${figure} in`;
}
