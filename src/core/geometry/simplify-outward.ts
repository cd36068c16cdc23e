import { itemAt } from '../item-at';
import { inside } from './inside';
import type { Point, Ring } from './ring';

/** A corner, and how far the edge that begins at it may lie beyond the original. */
interface Corner {
  readonly at: Point;
  readonly beyond: number;
}

/**
 * A counter-clockwise ring with fewer corners that holds the whole of the original and reaches nowhere more than
 * `tolerance` mm beyond it: hollow corners are cut off, and edges between two full corners give way to those beside them.
 */
export function simplifyOutward(ring: Ring, tolerance: number): Ring {
  let corners: readonly Corner[] = ring.map((at) => ({ at, beyond: 0 }));
  for (;;) {
    const next = pass(corners, tolerance);
    if (next.length === corners.length) return corners.map(({ at }) => at);
    corners = next;
  }
}

/** Simplifies wherever it may, at places that have no corner in common. */
function pass(corners: readonly Corner[], tolerance: number): readonly Corner[] {
  const n = corners.length;
  const ring = corners.map(({ at }) => at);
  const touched = new Uint8Array(n);
  const changed = new Map<number, Corner | undefined>();
  let left = n;
  for (let i = 0; i < n && left > 4; i++) {
    const [before, next, last] = [(i + n - 1) % n, (i + 1) % n, (i + 2) % n];
    if (touched[before] || touched[i] || touched[next] || touched[last]) continue;
    const { at: a, beyond: first } = itemAt(corners, before);
    const { at: b, beyond: second } = itemAt(corners, i);
    const { at: c, beyond: third } = itemAt(corners, next);
    const { at: d } = itemAt(corners, last);
    if (bend(a, b, c) <= 0) {
      const beyond = Math.max(first, second) + offLine(b, a, c);
      if (beyond > tolerance || !clear(ring, [a, b, c])) continue;
      changed.set(i, undefined);
      changed.set(before, { at: a, beyond });
    } else {
      const blunt = ahead(a, b, c) && ahead(b, c, d);
      const corner = blunt && bend(b, c, d) > 0 ? meeting(a, b, d, c) : undefined;
      if (!corner) continue;
      const beyond = Math.max(first, second, third) + offLine(corner, b, c);
      if (beyond > tolerance || !clear(ring, [b, corner, c])) continue;
      changed.set(before, { at: a, beyond });
      changed.set(i, { at: corner, beyond });
      changed.set(next, undefined);
    }
    touched[before] = touched[i] = touched[next] = touched[last] = 1;
    left--;
  }
  return corners.flatMap((corner, i) => {
    if (!changed.has(i)) return [corner];
    const other = changed.get(i);
    return other ? [other] : [];
  });
}

/** Whether no corner of the ring lies in the triangle that is to be added. */
function clear(ring: Ring, triangle: Ring): boolean {
  return !ring.some((corner) => !triangle.includes(corner) && inside(triangle, corner[0], corner[1]));
}

/** Positive where the way from a by b to c bends left. */
function bend([ax, ay]: Point, [bx, by]: Point, [cx, cy]: Point): number {
  return (bx - ax) * (cy - by) - (by - ay) * (cx - bx);
}

/** Whether the way from a by b to c goes on rather than back. */
function ahead([ax, ay]: Point, [bx, by]: Point, [cx, cy]: Point): boolean {
  return (bx - ax) * (cx - bx) + (by - ay) * (cy - by) > 0;
}

function offLine(p: Point, a: Point, b: Point): number {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  if (length === 0) return Math.hypot(p[0] - a[0], p[1] - a[1]);
  return Math.abs((b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0])) / length;
}

/** Where the line from a by b, carried on, meets the line from d by c, carried on; undefined where they part. */
function meeting(a: Point, b: Point, d: Point, c: Point): Point | undefined {
  const [ux, uy] = [b[0] - a[0], b[1] - a[1]];
  const [vx, vy] = [c[0] - d[0], c[1] - d[1]];
  const across = ux * vy - uy * vx;
  if (Math.abs(across) < 1e-12) return undefined;
  const s = ((c[0] - b[0]) * vy - (c[1] - b[1]) * vx) / across;
  const t = ((c[0] - b[0]) * uy - (c[1] - b[1]) * ux) / across;
  return s > 0 && t > 0 ? [b[0] + s * ux, b[1] + s * uy] : undefined;
}
