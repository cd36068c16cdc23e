import type { Ring } from './ring';

/** Area that a ring encloses, mm²; negative for a clockwise ring. Shoelace formula (derived). */
export function area(ring: Ring): number {
  let twice = 0;
  let [px, py] = ring[ring.length - 1] ?? [0, 0];
  for (const [x, y] of ring) {
    twice += px * y - x * py;
    px = x;
    py = y;
  }
  return twice / 2;
}
