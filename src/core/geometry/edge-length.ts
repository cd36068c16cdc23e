import type { Ring } from './ring';

/** Length of a ring's edge all the way round, mm. */
export function edgeLength(ring: Ring): number {
  let length = 0;
  let [px, py] = ring[ring.length - 1] ?? [0, 0];
  for (const [x, y] of ring) {
    length += Math.hypot(x - px, y - py);
    px = x;
    py = y;
  }
  return length;
}
