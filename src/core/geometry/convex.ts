import { itemRound } from '../item-at';
import type { Ring } from './ring';

/** Whether a counter-clockwise ring turns right at no corner. */
export function convex(ring: Ring): boolean {
  return ring.every(([x, y], i) => {
    const [px, py] = itemRound(ring, i - 1);
    const [qx, qy] = itemRound(ring, i + 1);
    const turn = (x - px) * (qy - y) - (y - py) * (qx - x);
    return turn >= -1e-9 * (Math.hypot(x - px, y - py) * Math.hypot(qx - x, qy - y));
  });
}
