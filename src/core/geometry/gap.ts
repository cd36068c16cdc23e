import { pointToEdge } from './point-to-edge';
import { box } from './box';
import type { Box, Ring } from './ring';

/** An outline as it lies: its corners x, y, x, y, …, all moved by (x, y), and the box about it there. */
export interface LaidOutline {
  readonly corners: Float64Array;
  readonly x: number;
  readonly y: number;
  readonly box: Box;
}

/** The corners of a ring one after the other. */
export function cornersOf(ring: Ring): Float64Array {
  const corners = new Float64Array(2 * ring.length);
  for (let i = 0; i < ring.length; i++) {
    corners[2 * i] = ring[i]![0];
    corners[2 * i + 1] = ring[i]![1];
  }
  return corners;
}

/**
 * The least distance between two outlines, mm; 0 where they touch, cross or one lies within the other.
 * @param enough distances above this are not told apart: the answer is then `enough` (Infinity measures exactly)
 */
export function gap(a: Ring, b: Ring, enough = Infinity, boxA = box(a), boxB = box(b)): number {
  return laidGap(laid(a, boxA), laid(b, boxB), enough);
}

/** The same for outlines as they lie. */
export function laidGap(a: LaidOutline, b: LaidOutline, enough = Infinity): number {
  const least = laidEdgesGap(a, b, enough);
  if (least === 0 || boxesApart(a.box, b.box) >= enough) return least;
  return beginsWithin(a, b) || beginsWithin(b, a) ? 0 : least;
}

/** The least distance between the edges of two outlines, mm, even where one lies within the other. */
export function edgesGap(a: Ring, b: Ring, enough = Infinity, boxA = box(a), boxB = box(b)): number {
  return laidEdgesGap(laid(a, boxA), laid(b, boxB), enough);
}

function laid(ring: Ring, about: Box): LaidOutline {
  return { corners: cornersOf(ring), x: 0, y: 0, box: about };
}

function laidEdgesGap(a: LaidOutline, b: LaidOutline, enough: number): number {
  if (boxesApart(a.box, b.box) >= enough) return enough;
  near.take(a, b.box, enough);
  far.take(b, near, enough);
  let least = enough;
  const { edges, count } = near;
  const { edges: others, count: otherCount } = far;
  for (let i = 0; i < count; i += 4) {
    const ax = edges[i]!;
    const ay = edges[i + 1]!;
    const bx = edges[i + 2]!;
    const by = edges[i + 3]!;
    const left = Math.min(ax, bx) - least;
    const right = Math.max(ax, bx) + least;
    const bottom = Math.min(ay, by) - least;
    const top = Math.max(ay, by) + least;
    for (let j = 0; j < otherCount; j += 4) {
      const cx = others[j]!;
      const dx = others[j + 2]!;
      if ((cx > right && dx > right) || (cx < left && dx < left)) continue;
      const cy = others[j + 1]!;
      const dy = others[j + 3]!;
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

/** Whether the first corner of an outline lies within another. */
function beginsWithin({ corners, x, y }: LaidOutline, { box: about, ...other }: LaidOutline): boolean {
  const [px, py] = [corners[0]! + x, corners[1]! + y];
  if (px < about.left || px > about.right || py < about.bottom || py > about.top) return false;
  return inside(other.corners, px - other.x, py - other.y);
}

/** Whether a point lies inside an outline (crossing number). */
function inside(corners: Float64Array, x: number, y: number): boolean {
  let odd = false;
  const n = corners.length;
  let px = corners[n - 2]!;
  let py = corners[n - 1]!;
  for (let i = 0; i < n; i += 2) {
    const qx = corners[i]!;
    const qy = corners[i + 1]!;
    if (qy > y !== py > y && x < ((px - qx) * (y - qy)) / (py - qy) + qx) odd = !odd;
    px = qx;
    py = qy;
  }
  return odd;
}

/** The edges of an outline that come near something, as x, y, x, y, and the box about them. */
class EdgesNear {
  edges = new Float64Array(1024);
  count = 0;
  left = 0;
  bottom = 0;
  right = 0;
  top = 0;

  /** Takes the edges of an outline that come within `reach` of a box. */
  take({ corners, x, y }: LaidOutline, about: Box, reach: number): void {
    const n = corners.length;
    if (2 * n > this.edges.length) this.edges = new Float64Array(4 * n);
    const { edges } = this;
    const left = about.left - reach - x;
    const right = about.right + reach - x;
    const bottom = about.bottom - reach - y;
    const top = about.top + reach - y;
    let count = 0;
    let [farLeft, farBottom, farRight, farTop] = [Infinity, Infinity, -Infinity, -Infinity];
    let px = corners[n - 2]!;
    let py = corners[n - 1]!;
    for (let i = 0; i < n; i += 2) {
      const qx = corners[i]!;
      const qy = corners[i + 1]!;
      const beside = (qx < left && px < left) || (qx > right && px > right);
      if (!beside && !((qy < bottom && py < bottom) || (qy > top && py > top))) {
        edges[count] = px + x;
        edges[count + 1] = py + y;
        edges[count + 2] = qx + x;
        edges[count + 3] = qy + y;
        count += 4;
        farLeft = Math.min(farLeft, px, qx);
        farRight = Math.max(farRight, px, qx);
        farBottom = Math.min(farBottom, py, qy);
        farTop = Math.max(farTop, py, qy);
      }
      px = qx;
      py = qy;
    }
    this.count = count;
    this.left = farLeft + x;
    this.right = farRight + x;
    this.bottom = farBottom + y;
    this.top = farTop + y;
  }
}

/** Used again for every two outlines. */
const near = new EdgesNear();
const far = new EdgesNear();

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
