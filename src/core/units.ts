import { Problem } from './problem';

/** One inch in millimetres (exact). */
export const INCH = 25.4;

type Dimension = 'length' | 'area' | 'mass' | 'volume' | 'angle' | 'time';

/**
 * Units that the trade uses, each with its size in the unit used inside (mm, mm², g, ml, degrees, minutes).
 * Iron: US Federal Test Method Standard 311, 3.2.114. Ounce as a thickness of leather is 1/64 in, as a mass `oz`.
 */
const UNITS: Readonly<Record<string, readonly [Dimension, number]>> = {
  mm: ['length', 1],
  cm: ['length', 10],
  m: ['length', 1000],
  in: ['length', INCH],
  ft: ['length', 12 * INCH],
  iron: ['length', INCH / 48],
  ounce: ['length', INCH / 64],
  mm2: ['area', 1],
  cm2: ['area', 100],
  dm2: ['area', 1e4],
  m2: ['area', 1e6],
  in2: ['area', INCH ** 2],
  ft2: ['area', (12 * INCH) ** 2],
  g: ['mass', 1],
  kg: ['mass', 1000],
  oz: ['mass', 28.349523125],
  lb: ['mass', 453.59237],
  ml: ['volume', 1],
  l: ['volume', 1000],
  usgal: ['volume', 3785.411784],
  deg: ['angle', 1],
  rad: ['angle', 180 / Math.PI],
  min: ['time', 1],
  h: ['time', 60],
};

/** Names of all units, for messages and lists. */
export const unitNames: readonly string[] = Object.keys(UNITS);

function unit(name: string, argument: string): readonly [Dimension, number] {
  const key = name.trim().toLowerCase().replace('²', '2');
  const found = Object.hasOwn(UNITS, key) ? UNITS[key] : undefined;
  if (!found) throw new Problem('invalid', { argument }, `"${name}" is not a unit; use one of ${unitNames.join(', ')}`);
  return found;
}

/**
 * Converts a value between two units of the same kind.
 * @throws Problem for an unknown unit or two units of different kinds.
 */
export function convertUnit(value: number, from: string, to: string): number {
  const [fromKind, fromSize] = unit(from, 'from_unit');
  const [toKind, toSize] = unit(to, 'to_unit');
  if (fromKind !== toKind) {
    throw new Problem('invalid', { argument: 'to_unit' }, `${to} measures ${toKind}, ${from} measures ${fromKind}`);
  }
  return (value * fromSize) / toSize;
}
