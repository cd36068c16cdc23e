import { area } from '../geometry/area';
import { box } from '../geometry/box';
import { cut } from '../geometry/cut';
import type { Ring } from '../geometry/ring';
import { atLength, seatLine } from '../last/profile';
import type { Bottom } from './bottom';
import { breastLine } from './raise';

/** What a heel stands on, once its edge is rasped: of a wedge or platform what lies under the back quarter. */
export interface HeelBase {
  /** mm */
  readonly width: number;
  /** mm² */
  readonly area: number;
  /** How far its middle lies before the seat line, along the ground, mm; behind it where negative. */
  readonly ahead: number;
  /** mm */
  readonly length: number;
  /** Lean at which the heel tips over the edge of its base, degrees: atan(w / 2H) for a base w wide under a seat H high (derived). */
  readonly tipAngle: number;
}

export function heelBase(bottom: Bottom): HeelBase | undefined {
  const { layers, last, seatStack } = bottom;
  const lowest = layers.findLast(({ underSeat, part }) => underSeat && part !== 'welt' && part !== 'cover');
  if (!lowest || seatStack <= 0) return undefined;
  const breast = atLength(last.profile, breastLine(last)).x;
  const ring = cut(lowest.ring, ({ 0: x }) => breast - x);
  const { left, right, top, bottom: low } = box(ring);
  const edge = lowest.rounding;
  // The front is no edge that is rasped.
  const [width, length] = [top - low - 2 * edge, right - left - edge];
  if (width <= 0 || length <= 0) return undefined;
  const [across, along] = [width / (top - low), length / (right - left)];
  const middle = right - (right - middleOf(ring)) * along;
  return {
    width,
    length,
    area: area(ring) * across * along,
    ahead: middle - atLength(last.profile, seatLine(last.length)).x,
    tipAngle: (Math.atan(width / (2 * seatStack)) * 180) / Math.PI,
  };
}

/** The x of a ring's centroid. */
function middleOf(ring: Ring): number {
  let sum = 0;
  for (let i = 0; i < ring.length; i++) {
    const { 0: x, 1: y } = ring[i]!;
    const { 0: nextX, 1: nextY } = ring[i + 1 < ring.length ? i + 1 : 0]!;
    sum += (x + nextX) * (x * nextY - nextX * y);
  }
  return sum / (6 * area(ring));
}
