import { letOutSmooth } from '../geometry/let-out-smooth';
import type { Point, Ring } from '../geometry/ring';
import type { LastInSize } from '../last/last-in-size';
import type { Style } from './style';

/** Shares of the length at which each zone's projection holds in full; in between it goes over smoothly. */
const ZONES = [
  ['projectionSeat', 0.2],
  ['projectionWaist', 0.42],
  ['projectionTread', 2 / 3],
  ['projectionToe', 0.95],
] as const;

/** Projection beyond the upper at a share of the length, mm. */
export function projectionAt(style: Style, share: number): number {
  const at = ZONES.map(([zone, place]) => ({ place, value: style[zone] ?? style.projection }));
  const next = at.findIndex(({ place }) => place >= share);
  const [before, after] = [at[next - 1], at[next]];
  if (!after) return at.at(-1)?.value ?? style.projection;
  if (!before) return after.value;
  const t = (share - before.place) / (after.place - before.place);
  return before.value + ((after.value - before.value) * (1 - Math.cos(Math.PI * t))) / 2;
}

/**
 * Lets the last's outline out to the edge of a piece: lasted substance, projection by zone, what is left for rasping,
 * less what a cover takes.
 * @param rounding what is left for rasping, mm a side
 * @param ring the last's outline, developed or as it stands on the ground: point for point that of `last`
 * @param taken mm a side taken off again
 */
export function letOutToEdge(
  ring: Ring,
  style: Style,
  last: LastInSize,
  taken = 0,
  rounding = style.roundingAllowance,
): Ring {
  const out = style.lastedSubstance + rounding - taken;
  return letOutSmooth(ring, (_point, i) => {
    const [s] = last.outline[i] as Point;
    return out + projectionAt(style, s / last.length);
  });
}
