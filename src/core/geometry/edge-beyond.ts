import { itemRound } from '../item-at';
import type { Ring } from './ring';

/** Length of a ring's edge that lies at or beyond a place along x, mm. */
export function edgeBeyond(ring: Ring, from: number): number {
  return ring.reduce((length, [ax, ay], i) => {
    const [bx, by] = itemRound(ring, i + 1);
    const step = Math.hypot(bx - ax, by - ay);
    if (ax >= from && bx >= from) return length + step;
    if (ax < from && bx < from) return length;
    return length + step * Math.abs((Math.max(ax, bx) - from) / (bx - ax));
  }, 0);
}
