import { Problem } from '../core/problem';
import { bare, type Cell, isBlank, readNumber, readText } from '../tables/cell';
import { readThickness } from './arguments';

// Each reads a function's arguments to what core takes, in its order.

/**
 * A number below this is likelier cm², as Pieces has it: no piece has 500 cm² (the largest sole lies in 330 × 120 mm), and
 * few faces have less than 500 mm² (derived). Some do, as the top piece of a slender heel: so it is asked for the unit.
 */
const LEAST_LIKELY = 500;

/** An area in mm², or in another unit where that stands beside it. @throws Problem where nothing says which of the two it is */
function area(cell: Cell): number {
  const value = readNumber(cell, { unit: 'mm2', least: 0 }, { argument: 'area' });
  if (value === 0 || value >= LEAST_LIKELY || /[a-z²]/i.test(String(bare(cell)))) return value;
  const why = `${value} mm² is seldom a face, and ${value} cm² often; give the unit too: "${value} cm2", or "${value} mm2" if it is so small`;
  throw new Problem('invalid', { argument: 'area' }, why);
}

const money = (cell: Cell, argument: string) => readNumber(cell, { least: 0, most: 1e9 }, { argument });

export function readAdhesive(faces: Cell, coats: Cell, coverage: Cell): [number, number, number] {
  return [
    area(faces),
    readNumber(coats, { least: 0, most: 20 }, { argument: 'coats' }),
    readNumber(coverage, { least: 0.1, most: 1000 }, { argument: 'coverage' }),
  ];
}

/** Lighter than this, in kg/m³, is no sheet (as Bottom stock has it): what is given is in g/cm³, a thousandth of it. */
const LIGHTEST = 5;

function readDensity(cell: Cell): number {
  const density = readNumber(cell, { above: 0, most: 20_000 }, { argument: 'density' });
  if (density >= LIGHTEST) return density;
  const why = `no sheet is as light as ${density} kg/m³; in g/cm³, take it times 1000: ${Number((density * 1000).toPrecision(12))}`;
  throw new Problem('invalid', { argument: 'density' }, why);
}

export function readWeight(face: Cell, thickness: Cell, density: Cell): [number, number, number] {
  return [area(face), readThickness(thickness), readDensity(density)];
}

export function readBreakEven(tooling: Cell, make: Cell, buy: Cell, minimum: Cell): [number, number, number, number] {
  return [
    money(tooling, 'tooling'),
    money(make, 'make'),
    money(buy, 'buy'),
    isBlank(minimum) ? 0 : readNumber(minimum, { least: 0, most: 1e6, whole: true }, { argument: 'minimum' }),
  ];
}

export function readUnits(value: Cell, from: Cell, to: Cell): [number, string, string] {
  return [
    readNumber(value, {}, { argument: 'value' }),
    readText(from, { argument: 'from_unit' }),
    readText(to, { argument: 'to_unit' }),
  ];
}
