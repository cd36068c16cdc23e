import { type Cell, readNumber } from '../tables/cell';
import { readAngle, readLength, readThickness } from './arguments';

// Each reads a function's arguments to what core takes, in its order.

type Three = [number, number, number];

export function readSkiveWidth(thickness: Cell, skiveTo: Cell, angle: Cell): Three {
  return [readThickness(thickness), readLength(skiveTo, 'skive_to'), readAngle(angle, 'angle')];
}

export function readSkiveAngle(thickness: Cell, skiveTo: Cell, width: Cell): Three {
  return [readThickness(thickness), readLength(skiveTo, 'skive_to'), readLength(width, 'width', { above: 0 })];
}

export function readLapSkive(thickness: Cell, skiveTo: Cell, ratio: Cell): Three {
  const wide = readNumber(ratio, { above: 0, most: 100 }, { argument: 'ratio' });
  return [readThickness(thickness), readLength(skiveTo, 'skive_to'), wide];
}

export function readTurnedEdge(thickness: Cell, fold: Cell): [number, number] {
  return [readThickness(thickness), readLength(fold, 'fold', { above: 0 })];
}
