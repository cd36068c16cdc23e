import { type Cell, isBlank, readNumber, readText } from '../tables/cell';
import { readThickness } from './arguments';

// Each reads a function's arguments to what core takes, in its order.

const area = (cell: Cell) => readNumber(cell, { unit: 'mm2', least: 0 }, { argument: 'area' });
const money = (cell: Cell, argument: string) => readNumber(cell, { least: 0, most: 1e9 }, { argument });

export function readAdhesive(faces: Cell, coats: Cell, coverage: Cell): [number, number, number] {
  return [
    area(faces),
    readNumber(coats, { least: 0, most: 20 }, { argument: 'coats' }),
    readNumber(coverage, { least: 0.1, most: 1000 }, { argument: 'coverage' }),
  ];
}

export function readWeight(face: Cell, thickness: Cell, density: Cell): [number, number, number] {
  return [
    area(face),
    readThickness(thickness),
    readNumber(density, { above: 0, most: 25_000 }, { argument: 'density' }),
  ];
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
