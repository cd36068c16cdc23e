import type { Point, Ring } from '../geometry/ring';
import { itemAt } from '../item-at';
import { frontEdge } from './front-edge';

/** The edge of a wedge, heel or platform that a strip covers. */
export interface WedgeEdge {
  /** Along the plan edge, mm. */
  readonly path: readonly Point[];
  /** Height of the edge over a point of the path, mm. */
  heightAt(x: number, y: number): number;
}

export interface WedgeEdgeRule {
  /** Where the wedge ends, and how high it stands behind that, mm. */
  readonly front: number;
  readonly wedgeHeight: (x: number) => number;
  /** Thickness of a platform under it, 0 for none, mm. */
  readonly platform: number;
}

/**
 * The plan edge to cover and its height. Of a wedge alone it runs from one end of its front round the back to the other;
 * with a platform it runs all round from the back, where the seam stands.
 * @param ring outline of the platform, or of the wedge with its front cut off by one straight edge, square or slanted
 */
export function wedgeEdge(ring: Ring, { front, wedgeHeight, platform }: WedgeEdgeRule): WedgeEdge {
  return {
    path: platform > 0 ? closedFromBack(ring) : backAndSides(ring),
    heightAt: (x) => platform + (x <= front ? wedgeHeight(x) : 0),
  };
}

/** The ring from its rearmost point all the way round, that point again at the end. */
function closedFromBack(ring: Ring): readonly Point[] {
  const back = ring.reduce((best, [x], i) => (x < itemAt(ring, best)[0] ? i : best), 0);
  return [...ring.slice(back), ...ring.slice(0, back), itemAt(ring, back)];
}

/** The ring without its front. */
function backAndSides(ring: Ring): readonly Point[] {
  const front = frontEdge(ring);
  return [...ring.slice(front + 1), ...ring.slice(0, front + 1)];
}
