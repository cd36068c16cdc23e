import { cut } from '../geometry/cut';
import type { Ring } from '../geometry/ring';
import { itemAt, itemRound } from '../item-at';

/** The straight front of a lift, by the place of its inside end: of all edges the one that leads furthest to the outside. */
export function frontEdge(ring: Ring): number {
  const across = (i: number) => itemRound(ring, i + 1)[1] - itemAt(ring, i)[1];
  return ring.reduce((best, _, i) => (across(i) > across(best) ? i : best), 0);
}

/** An outline cut off along the front of a lift, square or slanted as that is. */
export function cutAlongFront(ring: Ring, lift: Ring): Ring {
  const front = frontEdge(lift);
  const [[px, py], [qx, qy]] = [itemAt(lift, front), itemRound(lift, front + 1)];
  return cut(ring, ({ 0: x, 1: y }) => (qx - px) * (y - py) - (qy - py) * (x - px));
}
