import { convertUnit, unitNames } from '../core/units';
import type { Column } from './schema';

/** How makers spell units, each with its name in `units.ts` or among the densities. */
const SPELT: Readonly<Record<string, string>> = {
  millimetre: 'mm',
  millimeter: 'mm',
  centimetre: 'cm',
  centimeter: 'cm',
  metre: 'm',
  meter: 'm',
  inch: 'in',
  inche: 'in',
  '"': 'in',
  '″': 'in',
  '”': 'in',
  foot: 'ft',
  feet: 'ft',
  oz: 'ounce',
  '°': 'deg',
  degree: 'deg',
  minute: 'min',
  hr: 'h',
  hour: 'h',
  'kg/m3': 'kg/m³',
};

/** Densities in kg/m³. The pound per cubic foot from the exact pound and foot. */
const DENSITIES: Readonly<Record<string, number>> = {
  'kg/m³': 1,
  'g/cm3': 1000,
  'g/cc': 1000,
  'g/ml': 1000,
  'kg/dm3': 1000,
  'kg/l': 1000,
  'g/l': 1,
  'lb/ft3': 0.45359237 / 0.3048 ** 3,
};

/** A unit under a heading that is not the column's. */
export interface ForeignUnit {
  readonly unit: string;
  /** What a number in it is multiplied by; undefined where it measures something else. */
  readonly factor: number | undefined;
}

/**
 * The unit that a heading names where it is another than its column's: the numbers below it mean something else.
 * @param own what is written after the heading; undefined where it is a note or the column's own unit
 */
export function foreignUnit(
  { kind, unit }: Pick<Column, 'kind' | 'unit'>,
  own: string | undefined,
): ForeignUnit | undefined {
  if (kind !== 'number' || unit === undefined || own === undefined) return undefined;
  const [given, wanted] = [nameOf(own.replace(/^in\s+(?=\S)/i, '')), nameOf(unit)];
  if (given === undefined || given === wanted) return undefined;
  return { unit: own, factor: wanted === undefined ? undefined : factorOf(given, wanted) };
}

function nameOf(written: string): string | undefined {
  const plain = written.trim().toLowerCase().replace(/\.$/, '').replace('²', '2').replace('³', '3');
  const known = (name: string) => unitNames.includes(name) || name in DENSITIES || name === '%';
  return [plain, plain.replace(/s$/, '')].map((name) => SPELT[name] ?? name).find(known);
}

function factorOf(given: string, wanted: string): number | undefined {
  const [from, to] = [DENSITIES[given], DENSITIES[wanted]];
  if (from !== undefined && to !== undefined) return from / to;
  if (!unitNames.includes(given) || !unitNames.includes(wanted)) return undefined;
  try {
    return convertUnit(1, given, wanted);
  } catch {
    // Of another kind, such as kg over a length.
    return undefined;
  }
}
