import type { Box, Ring } from './ring';

/** The smallest upright rectangle about a ring. */
export function box(ring: Ring): Box {
  let left = Infinity;
  let bottom = Infinity;
  let right = -Infinity;
  let top = -Infinity;
  for (const [x, y] of ring) {
    left = Math.min(left, x);
    bottom = Math.min(bottom, y);
    right = Math.max(right, x);
    top = Math.max(top, y);
  }
  return { left, bottom, right, top };
}
