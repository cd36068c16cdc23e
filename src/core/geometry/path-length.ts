import type { Point } from './ring';

/** Length of an open path, mm. */
export function pathLength(path: readonly Point[]): number {
  return path.slice(1).reduce((sum, [x, y], i) => sum + Math.hypot(x - path[i]![0], y - path[i]![1]), 0);
}
