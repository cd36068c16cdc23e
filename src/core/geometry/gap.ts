import { itemAt, itemRound } from '../item-at';
import { pointToEdge } from './point-to-edge';
import { box } from './box';
import { inside } from './inside';
import type { Box, Ring } from './ring';

/**
 * The least distance between two outlines, mm; 0 where they touch, cross or one lies within the other.
 * @param enough distances above this are not told apart: the answer is then `enough` (Infinity measures exactly)
 */
export function gap(a: Ring, b: Ring, enough = Infinity, boxA = box(a), boxB = box(b)): number {
  const least = edgesGap(a, b, enough, boxA, boxB);
  if (least === 0 || boxesApart(boxA, boxB) >= enough) return least;
  const [x, y] = itemAt(a, 0);
  const [u, v] = itemAt(b, 0);
  return inside(b, x, y) || inside(a, u, v) ? 0 : least;
}

/** The least distance between the edges of two outlines, mm, even where one lies within the other. */
export function edgesGap(a: Ring, b: Ring, enough = Infinity, boxA = box(a), boxB = box(b)): number {
  if (boxesApart(boxA, boxB) >= enough) return enough;
  const near = edgesNear(a, boxB, enough);
  const far = edgesNear(b, boxA, enough);
  let least = enough;
  for (let i = 0; i < near.length; i += 4) {
    const ax = near[i]!;
    const ay = near[i + 1]!;
    const bx = near[i + 2]!;
    const by = near[i + 3]!;
    const left = Math.min(ax, bx) - least;
    const right = Math.max(ax, bx) + least;
    const bottom = Math.min(ay, by) - least;
    const top = Math.max(ay, by) + least;
    for (let j = 0; j < far.length; j += 4) {
      const cx = far[j]!;
      const cy = far[j + 1]!;
      const dx = far[j + 2]!;
      const dy = far[j + 3]!;
      if ((cx > right && dx > right) || (cx < left && dx < left)) continue;
      if ((cy > top && dy > top) || (cy < bottom && dy < bottom)) continue;
      const between = edgeGap(ax, ay, bx, by, cx, cy, dx, dy);
      if (between === 0) return 0;
      if (between < least) least = between;
    }
  }
  return least;
}

function boxesApart(a: Box, b: Box): number {
  return Math.max(a.left - b.right, b.left - a.right, a.bottom - b.top, b.bottom - a.top);
}

/** The edges of a ring that come within `reach` of a box, as x, y, x, y. */
function edgesNear(ring: Ring, { left, bottom, right, top }: Box, reach: number): number[] {
  const edges: number[] = [];
  let [px, py] = itemRound(ring, -1);
  for (const [x, y] of ring) {
    const beside = (x < left - reach && px < left - reach) || (x > right + reach && px > right + reach);
    const above = (y < bottom - reach && py < bottom - reach) || (y > top + reach && py > top + reach);
    if (!beside && !above) edges.push(px, py, x, y);
    px = x;
    py = y;
  }
  return edges;
}

/** Distance between the edges ab and cd; 0 where they cross or touch. */
function edgeGap(
  ax: number,
  ay: number,
  bx: number,
  by: number,
  cx: number,
  cy: number,
  dx: number,
  dy: number,
): number {
  const c = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
  const d = (bx - ax) * (dy - ay) - (by - ay) * (dx - ax);
  const a = (dx - cx) * (ay - cy) - (dy - cy) * (ax - cx);
  const b = (dx - cx) * (by - cy) - (dy - cy) * (bx - cx);
  if (((c < 0 && d > 0) || (c > 0 && d < 0)) && ((a < 0 && b > 0) || (a > 0 && b < 0))) return 0;
  return Math.sqrt(
    Math.min(
      pointToEdge(ax, ay, cx, cy, dx, dy),
      pointToEdge(bx, by, cx, cy, dx, dy),
      pointToEdge(cx, cy, ax, ay, bx, by),
      pointToEdge(dx, dy, ax, ay, bx, by),
    ),
  );
}
