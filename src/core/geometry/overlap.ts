import { areaPaths, FillRule, intersect } from 'clipper2-ts';
import { edgeLength } from './edge-length';
import type { Ring } from './ring';

/** Polygon arithmetic is done in whole steps of 0.01 µm here: overlaps are told apart down to that depth. */
const STEPS_PER_MM = 1e5;

/**
 * How deep two pieces lie in each other, mm: twice the area that they share over its edge length, which is the width
 * of a long thin overlap. 0 where they only touch.
 */
export function overlap(a: Ring, b: Ring): number {
  const shared = intersect([path(a)], [path(b)], FillRule.NonZero);
  const size = Math.abs(areaPaths(shared)) / STEPS_PER_MM ** 2;
  if (size === 0) return 0;
  const edge = shared.reduce((sum, one) => sum + edgeLength(one.map(({ x, y }) => [x, y] as const)), 0) / STEPS_PER_MM;
  return (2 * size) / edge;
}

function path(ring: Ring): { x: number; y: number }[] {
  return ring.map(([x, y]) => ({ x: Math.round(x * STEPS_PER_MM), y: Math.round(y * STEPS_PER_MM) }));
}
