import type { Point, Ring } from './ring';

/** The smallest convex ring about points, counter-clockwise (Andrew 1979). */
export function convexHull(points: readonly Point[]): Ring {
  const sorted = [...points].sort(([ax, ay], [bx, by]) => ax - bx || ay - by);
  const half = (list: readonly Point[]) => {
    const chain: Point[] = [];
    const hollowAt = (p: Point) => {
      const [before, last] = chain.slice(-2);
      return before && last && !leftTurn(before, last, p);
    };
    for (const p of list) {
      while (hollowAt(p)) chain.pop();
      chain.push(p);
    }
    return chain.slice(0, -1);
  };
  return [...half(sorted), ...half([...sorted].reverse())];
}

function leftTurn([ax, ay]: Point, [bx, by]: Point, [cx, cy]: Point): boolean {
  return (bx - ax) * (cy - ay) - (by - ay) * (cx - ax) > 0;
}
