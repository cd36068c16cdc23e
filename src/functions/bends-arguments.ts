import type { BendSide } from '../core/last/tightest-curve';
import { type Cell, readNumber } from '../tables/cell';
import { readLength, readSide, readThickness } from './arguments';

// Each reads a function's arguments to what core takes, in its order.

const readRadius = (cell: Cell) => readLength(cell, 'radius', { above: 0, most: 1e5 });

export function readBendStrain(thickness: Cell, radius: Cell, side: Cell): [number, number, BendSide] {
  return [readThickness(thickness), readRadius(radius), readSide(side)];
}

export function readMaxThickness(radius: Cell, tube: Cell, side: Cell): [number, number, BendSide] {
  const perThickness = readNumber(tube, { least: 0.01, most: 1000 }, { argument: 'tube_per_thickness' });
  return [readRadius(radius), perThickness, readSide(side)];
}
