import type { Ring } from './ring';

/** Whether a counter-clockwise ring turns right at no corner. */
export function convex(ring: Ring): boolean {
  return ring.every(([x, y], i) => {
    const [px, py] = ring[(i + ring.length - 1) % ring.length];
    const [qx, qy] = ring[(i + 1) % ring.length];
    const turn = (x - px) * (qy - y) - (y - py) * (qx - x);
    return turn >= -1e-9 * (Math.hypot(x - px, y - py) * Math.hypot(qx - x, qy - y));
  });
}
