/**
 * How a piece may lie on its sheet, by the direction of its heel-to-toe axis from the sheet's length:
 * any direction; along the length either way round (end for end); along the length one way; within some degrees of the
 * length, end for end.
 */
export type Way =
  | { readonly kind: 'any' }
  | { readonly kind: 'endForEnd' }
  | { readonly kind: 'oneWay' }
  | { readonly kind: 'within'; readonly degrees: number };

/** Turns closer together than this are one turn, degrees: far below what a hand or a knife holds. */
const SAME_TURN = 1e-6;

/** Degrees brought into 0 ≤ turn < 360. */
export function wholeTurn(degrees: number): number {
  const turn = ((degrees % 360) + 360) % 360;
  return turn > 360 - 1e-12 ? 0 : turn;
}

/** Whether a piece that may lie this `way` may be turned by so many degrees, counter-clockwise. */
export function allows(way: Way, degrees: number): boolean {
  const turn = wholeTurn(degrees);
  const off = Math.min(turn, 360 - turn);
  switch (way.kind) {
    case 'any':
      return true;
    case 'oneWay':
      return off <= SAME_TURN;
    case 'endForEnd':
      return Math.min(off, 180 - off) <= SAME_TURN;
    case 'within':
      return Math.min(off, 180 - off) <= way.degrees + SAME_TURN;
  }
}

/** Whether a piece may be turned round by 180° from any place that it may take. */
export function endsMaySwap(way: Way): boolean {
  return way.kind !== 'oneWay';
}
