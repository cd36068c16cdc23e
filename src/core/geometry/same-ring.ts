import type { Ring } from './ring';

/** Whether two rings have the same points in the same order. */
export function sameRing(a: Ring, b: Ring): boolean {
  if (a === b) return true;
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i++) if (a[i]![0] !== b[i]![0] || a[i]![1] !== b[i]![1]) return false;
  return true;
}
