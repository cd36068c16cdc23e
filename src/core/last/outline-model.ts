import type { Point, Ring } from '../geometry/ring';
import { closedCurve } from './closed-curve';

/** What the model makes the bottom's outline from, mm. */
export interface OutlineMeasures {
  readonly length: number;
  /** Width across the tread line, square to the length. */
  readonly tread: number;
  /** Least width between seat and tread. */
  readonly waist: number;
  /** Width across the seat line. */
  readonly seat: number;
  /** How far the forepart is shifted outward against the seat. */
  readonly swing: number;
}

/**
 * Half-widths at stations of the length: where (share of the length), of which width, how much of it lies outside and
 * inside of the length line, and how much of the swing applies. Seat and tread stand at their lines (The Manufacture of
 * Boots and Shoes, 1902); the rest is the usual shape of a round toe (common practice).
 */
const STATIONS: readonly (readonly [
  at: number,
  of: 'seat' | 'waist' | 'tread',
  out: number,
  inside: number,
  swing: number,
])[] = [
  [1 / 6, 'seat', 0.5, 0.5, 0],
  [0.3, 'seat', 0.535, 0.445, 0],
  [0.43, 'waist', 0.6, 0.4, 0.1],
  [0.55, 'tread', 0.475, 0.375, 0.5],
  [0.61, 'tread', 0.503, 0.44, 0.8],
  [2 / 3, 'tread', 0.507, 0.493, 1],
  [0.73, 'tread', 0.485, 0.515, 1],
  [0.81, 'tread', 0.425, 0.5, 0.9],
  [0.88, 'tread', 0.345, 0.44, 0.8],
  [0.94, 'tread', 0.24, 0.345, 0.7],
  [0.98, 'tread', 0.125, 0.225, 0.6],
];

/** Stations of the back, where the outline is half a rounded oval as wide as the seat. */
const BACK = [0.007, 0.028, 0.065, 0.11];
const OVAL = 2.15;

/**
 * The outline of a last's bottom (left foot) drawn from five measures: a smooth closed curve through half-widths at
 * stations along it. x is the length along the bottom.
 */
export function outlineModel(measures: OutlineMeasures): Ring {
  const { length, swing, seat, tread } = measures;
  const back = (u: number) => (seat / 2) * (1 - (1 - 6 * u) ** OVAL) ** (1 / OVAL);
  const outside: Point[] = BACK.map((u) => [u * length, back(u)]);
  const inside: Point[] = BACK.map((u) => [u * length, -back(u)]);
  for (const { 0: at, 1: of, 2: out, 3: within, 4: share } of STATIONS) {
    outside.push([at * length, out * measures[of] + share * swing]);
    inside.push([at * length, -within * measures[of] + share * swing]);
  }
  const toe: Point = [length, -0.05 * tread + 0.5 * swing];
  return closedCurve([[0, 0], ...inside, toe, ...outside.reverse()]);
}
