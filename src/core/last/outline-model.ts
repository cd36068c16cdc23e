import type { Point, Ring } from '../geometry/ring';
import { closedCurve, type Corners, cornersOfCurve } from './closed-curve';

/** What the model makes the bottom's outline from, mm. */
export interface OutlineMeasures {
  readonly length: number;
  /** Greatest width of the forepart, across the joints and square to the length; at the tread line it is as wide. */
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
 * Boots and Shoes, 1902), and nothing is wider than the tread: the outside joint stands a little behind its line, the
 * inside joint before it (of feet at 0.70 of a last's length: regressions of ANSUR II). The rest is the usual shape of a
 * round toe (common practice).
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
  [0.55, 'tread', 0.475, 0.38, 0.5],
  [0.61, 'tread', 0.501, 0.45, 0.8],
  [2 / 3, 'tread', 0.507, 0.4905, 1],
  [0.715, 'tread', 0.495, 0.495, 1],
  [0.76, 'tread', 0.469, 0.4875, 1],
  [0.81, 'tread', 0.425, 0.47, 0.9],
  [0.88, 'tread', 0.345, 0.425, 0.8],
  [0.94, 'tread', 0.24, 0.34, 0.7],
  [0.98, 'tread', 0.125, 0.225, 0.6],
];

/** Both joints stand before this share of the length from the back. */
const FORE = 0.58;

/** Stations of the back, where the outline is half a rounded oval as wide as the seat. */
const BACK = [0.007, 0.028, 0.065, 0.11];
const OVAL = 2.15;

/**
 * The outline of a last's bottom (left foot) drawn from five measures: a smooth closed curve through half-widths at
 * stations along it. x is the length along the bottom. Between stations the curve bulges, so that they are set where the
 * widest of the forepart comes out as the tread.
 */
export function outlineModel(measures: OutlineMeasures): Ring {
  const { tread } = measures;
  const widthAt = (set: number) => foreWidth(cornersOfCurve(through(measures, set)), measures);
  const first = widthAt(tread);
  const set = (tread * tread) / first;
  const second = widthAt(set);
  const rise = (first - second) / (tread - set);
  // By less than a rounding the second is the first.
  const flat = !Number.isFinite(rise) || rise <= 0;
  return closedCurve(through(measures, flat ? set : set + (tread - second) / rise));
}

/** The points that the curve goes through. @param set what the shares of the tread are taken of, mm */
function through({ length, swing, seat, waist, tread }: OutlineMeasures, set: number): readonly Point[] {
  const widths = { seat, waist, tread: set };
  const back = (u: number) => (seat / 2) * (1 - (1 - 6 * u) ** OVAL) ** (1 / OVAL);
  const outside: Point[] = BACK.map((u) => [u * length, back(u)]);
  const inside: Point[] = BACK.map((u) => [u * length, -back(u)]);
  for (const { 0: at, 1: of, 2: out, 3: within, 4: share } of STATIONS) {
    outside.push([at * length, out * widths[of] + share * swing]);
    inside.push([at * length, -within * widths[of] + share * swing]);
  }
  const toe: Point = [length, -0.05 * tread + 0.5 * swing];
  return [[0, 0], ...inside, toe, ...outside.reverse()];
}

/** From joint to joint, mm. */
function foreWidth({ xs, ys, count }: Corners, { length }: OutlineMeasures): number {
  let least = Infinity;
  let most = -Infinity;
  for (let i = 0; i < count; i++) {
    if (xs[i]! < FORE * length) continue;
    least = Math.min(least, ys[i]!);
    most = Math.max(most, ys[i]!);
  }
  return most - least;
}
