import { itemRound } from '../item-at';
import type { Ring } from './ring';

/** Whether a point lies inside a ring (crossing number; a point on the edge may count either way). */
export function inside(ring: Ring, x: number, y: number): boolean {
  let odd = false;
  let [px, py] = itemRound(ring, -1);
  for (const [qx, qy] of ring) {
    if (qy > y !== py > y && x < ((px - qx) * (y - qy)) / (py - qy) + qx) odd = !odd;
    px = qx;
    py = qy;
  }
  return odd;
}
