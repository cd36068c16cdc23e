import { area } from '../../src/core/geometry/area';
import { edgeLength } from '../../src/core/geometry/edge-length';
import type { Point, Ring } from '../../src/core/geometry/ring';

/** An ellipse of so many corners. */
export function ellipse(a: number, b: number, corners = 720): Ring {
  return Array.from({ length: corners }, (_, i): Point => {
    const angle = (2 * Math.PI * i) / corners;
    return [a * Math.cos(angle), b * Math.sin(angle)];
  });
}

/** The ellipse that has the given area and edge, found by halving on its slenderness. */
export function oval(wantedArea: number, wantedEdge: number): Ring {
  const scaled = (slenderness: number): Ring => {
    const ring = ellipse(slenderness, 1);
    const scale = Math.sqrt(wantedArea / area(ring));
    return ring.map(([x, y]): Point => [x * scale, y * scale]);
  };
  let [low, high] = [1, 20];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (edgeLength(scaled(middle)) < wantedEdge) low = middle;
    else high = middle;
  }
  return scaled(low);
}
