import { direction } from './moved';
import type { Box, Ring } from './ring';

/** The smallest upright rectangle about a ring. */
export function box(ring: Ring): Box {
  let left = Infinity;
  let bottom = Infinity;
  let right = -Infinity;
  let top = -Infinity;
  for (let i = 0; i < ring.length; i++) {
    const { 0: x, 1: y } = ring[i]!;
    if (x < left) left = x;
    if (y < bottom) bottom = y;
    if (x > right) right = x;
    if (y > top) top = y;
  }
  return { left, bottom, right, top };
}

/** The same about a ring that is turned counter-clockwise about the origin by `degrees`, then moved by (x, y). */
export function boxMoved(ring: Ring, degrees: number, x = 0, y = 0): Box {
  const { sin, cos } = direction(degrees);
  let left = Infinity;
  let bottom = Infinity;
  let right = -Infinity;
  let top = -Infinity;
  for (let i = 0; i < ring.length; i++) {
    const { 0: px, 1: py } = ring[i]!;
    const along = px * cos - py * sin;
    const across = px * sin + py * cos;
    if (along < left) left = along;
    if (across < bottom) bottom = across;
    if (along > right) right = along;
    if (across > top) top = across;
  }
  return { left: left + x, bottom: bottom + y, right: right + x, top: top + y };
}

/** The smallest upright rectangle about others. */
export function boxAbout(boxes: Iterable<Box>): Box {
  let left = Infinity;
  let bottom = Infinity;
  let right = -Infinity;
  let top = -Infinity;
  for (const one of boxes) {
    left = Math.min(left, one.left);
    bottom = Math.min(bottom, one.bottom);
    right = Math.max(right, one.right);
    top = Math.max(top, one.top);
  }
  return { left, bottom, right, top };
}
