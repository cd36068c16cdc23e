import { itemRound } from '../item-at';
import type { Point, Ring } from './ring';

/** Sine and cosine of an angle in degrees, exact at quarter turns so that turned pieces stay on their sheet's edge. */
export function direction(degrees: number): { readonly sin: number; readonly cos: number } {
  const quarters = degrees / 90;
  if (Number.isInteger(quarters)) {
    return { cos: itemRound([1, 0, -1, 0], quarters), sin: itemRound([0, 1, 0, -1], quarters) };
  }
  const radians = (degrees * Math.PI) / 180;
  return { sin: Math.sin(radians), cos: Math.cos(radians) };
}

/** A ring turned counter-clockwise about the origin by `degrees`, then moved by (x, y). */
export function moved(ring: Ring, degrees: number, x = 0, y = 0): Ring {
  if (degrees === 0 && x === 0 && y === 0) return ring;
  const { sin, cos } = direction(degrees);
  return ring.map(({ 0: px, 1: py }): Point => [px * cos - py * sin + x, px * sin + py * cos + y]);
}
