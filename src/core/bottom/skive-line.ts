import { itemRound } from '../item-at';
import { area } from '../geometry/area';
import { cut } from '../geometry/cut';
import { grown } from '../geometry/regions';
import type { Point, Ring } from '../geometry/ring';
import { frontEdge } from './front-edge';
import type { Layer } from './layer';

/** Where a skive begins on the face of a piece, from end to end of the line; a ring where it runs all round. */
export interface SkiveLine {
  readonly points: readonly Point[];
  readonly closed: boolean;
}

/**
 * The line from which a piece is skived: a front's, the skive's width behind it and slanted as it is; an edge's, its width
 * within the outline. None where the piece is not skived.
 */
export function skiveLine({ ring, skive }: Pick<Layer, 'ring' | 'skive'>): SkiveLine | undefined {
  if (!skive) return undefined;
  if (skive.at === 'front') {
    const points = acrossBehind(ring, skive.width);
    return points.length > 1 ? { points, closed: false } : undefined;
  }
  const taken = grown([ring], -skive.width).reduce<Ring>((best, one) => (area(one) > area(best) ? one : best), []);
  if (taken.length === 0) return undefined;
  const { from } = skive;
  if (from === undefined) return { points: taken, closed: true };
  const forward = cut(taken, ({ 0: x }) => x - from);
  // Behind lies the closing edge of the cut, which is no skive.
  const last = forward.findIndex(([x], i) => onLine(x) && onLine(itemRound(forward, i + 1)[0]));
  return { points: [...forward.slice(last + 1), ...forward.slice(0, last + 1)], closed: false };
  function onLine(x: number): boolean {
    return from !== undefined && Math.abs(x - from) < 1e-6;
  }
}

/** The ends of a line across a ring, parallel to its front and so far behind it, the inside end first. */
function acrossBehind(ring: Ring, width: number): readonly Point[] {
  const at = (i: number) => itemRound(ring, i);
  const front = frontEdge(ring);
  const [[px, py], [qx, qy]] = [at(front), at(front + 1)];
  const side = ([x, y]: Point) => (qx - px) * (y - py) - (qy - py) * (x - px + width);
  return ring
    .flatMap((a, i): readonly Point[] => {
      const b = at(i + 1);
      const [sa, sb] = [side(a), side(b)];
      if (sa < 0 === sb < 0) return [];
      const t = sa / (sa - sb);
      return [[a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])]];
    })
    .sort((a, b) => a[1] - b[1]);
}
