import { MOST_MEASURE } from '../core/sizes/grade';
import type { SizeSystem } from '../core/sizes/systems';
import { type Cell, type Cells, isBlank, isLeftOut, type NumberRule, readNumber } from '../tables/cell';
import { readSize, readSystem } from './arguments';

// Each reads a function's arguments to what core takes, in its order.

/** A size and its system, as FOOTLENGTH takes them and LASTLENGTH too. */
export function readSizeOf(size: Cell, system: Cell): [number, SizeSystem] {
  return [readSize(size, 'size'), readSystem(system, 'system')];
}

/** Of SIZECONVERT; the last is the step to round to, 0 for none. */
export function readConversion(
  size: Cell,
  from: Cell,
  to: Cell,
  rounding: Cell,
): [number, SizeSystem, SizeSystem, number] {
  return [
    readSize(size, 'size'),
    readSystem(from, 'from_system'),
    readSystem(to, 'to_system'),
    isBlank(rounding) ? 0 : readNumber(rounding, { least: 0, most: 50 }, { argument: 'rounding' }),
  ];
}

/** Of LASTLENGTH; undefined is what the system's formulas imply. */
export function readToeAllowance(cell: Cell): number | undefined {
  if (isBlank(cell)) return undefined;
  return readNumber(cell, { unit: 'mm', least: -20, most: 60 }, { argument: 'toe_allowance' });
}

export function readGrading(value: Cell, from: Cell, to: Cell, perSize: Cell): [number, number, number, number] {
  return [
    readNumber(value, { least: -MOST_MEASURE, most: MOST_MEASURE }, { argument: 'value' }),
    readSize(from, 'from_size'),
    readSize(to, 'to_size'),
    readNumber(perSize, { least: -MOST_MEASURE, most: MOST_MEASURE }, { argument: 'per_size' }),
  ];
}

/** From size to size. */
const STEP: NumberRule = { above: 0, most: 100 };

export function readSizeRun(smallest: Cell, largest: Cell, every: Cell): [number, number, number] {
  return [
    readSize(smallest, 'smallest'),
    readSize(largest, 'largest'),
    isLeftOut(every, STEP) ? 1 : readNumber(every, STEP, { argument: 'step' }),
  ];
}

/** Pairs in all, and the weights as they are laid out; blank is none. */
export function readSizeCurve(total: Cell, curve: Cells): { readonly total: number; readonly weights: number[][] } {
  const place = { argument: 'size_curve' };
  // A whole column is blank below its weights.
  const end = curve.findLastIndex((row) => row.some((cell) => !isBlank(cell))) + 1;
  const weights = curve
    .slice(0, Math.max(1, end))
    .map((row) => row.map((cell) => (isBlank(cell) ? 0 : readNumber(cell, { least: 0, most: 1e6 }, place))));
  return { total: readNumber(total, { least: 0, most: 1e6, whole: true }, { argument: 'total' }), weights };
}
