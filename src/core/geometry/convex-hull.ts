import type { Point, Ring } from './ring';

/** The smallest convex ring about points, counter-clockwise (Andrew 1979). */
export function convexHull(points: readonly Point[]): Ring {
  const sorted = [...points].sort(([ax, ay], [bx, by]) => ax - bx || ay - by);
  const half = (list: readonly Point[]) => {
    const chain: Point[] = [];
    for (const p of list) {
      while (chain.length > 1 && !leftTurn(chain[chain.length - 2], chain[chain.length - 1], p)) chain.pop();
      chain.push(p);
    }
    return chain.slice(0, -1);
  };
  return [...half(sorted), ...half([...sorted].reverse())];
}

function leftTurn([ax, ay]: Point, [bx, by]: Point, [cx, cy]: Point): boolean {
  return (bx - ax) * (cy - ay) - (by - ay) * (cx - ax) > 0;
}
