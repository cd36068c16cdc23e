import type { Point, Ring } from './ring';

/** Length of a ring's edge that lies at or beyond a place along x, mm. */
export function edgeBeyond(ring: Ring, from: number): number {
  return ring.reduce((length, [ax, ay], i) => {
    const [bx, by] = ring[(i + 1) % ring.length] as Point;
    const step = Math.hypot(bx - ax, by - ay);
    if (ax >= from && bx >= from) return length + step;
    if (ax < from && bx < from) return length;
    return length + step * Math.abs((Math.max(ax, bx) - from) / (bx - ax));
  }, 0);
}
