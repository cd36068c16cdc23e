import type { Ring } from './ring';

/** Whether two rings have the same points in the same order. */
export function sameRing(a: Ring, b: Ring): boolean {
  return a === b || (a.length === b.length && a.every(({ 0: x, 1: y }, i) => x === b[i]![0] && y === b[i]![1]));
}
