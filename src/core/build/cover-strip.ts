import type { Point, Ring } from '../geometry/ring';

/** A strip that covers the edge of a build, unrolled: the plan edge is its straight baseline. */
export interface CoverStrip {
  /** Length of the baseline, mm. */
  readonly length: number;
  /** Places along the baseline with the height of the edge there, mm. */
  readonly stations: readonly { readonly at: number; readonly height: number }[];
  /** Greatest width to cut, turns included, mm. */
  readonly width: number;
  /** Area of the covered wall, and of the strip with its turns, mm². */
  readonly wall: number;
  readonly area: number;
  /** The strip's outline: baseline along x, turn-under below it, wall and turn-over above. */
  readonly ring: Ring;
}

/**
 * The strip for an edge whose height is known all along the plan edge (derived). The baseline is the plan edge, not the
 * slope: a wall that falls toward the front is cut with a falling upper edge.
 * @param path the plan edge in order, mm (open for a wedge's back and sides, closed by repeating the first point)
 * @param heightAt height of the edge over a point of the path, mm
 * @param turnOver mm over the upper edge, turnUnder mm under the lower one
 */
export function coverStrip(
  path: readonly Point[],
  heightAt: (x: number, y: number) => number,
  turnOver: number,
  turnUnder: number,
): CoverStrip {
  const stations: { at: number; height: number }[] = [];
  let at = 0;
  let wall = 0;
  path.forEach(([x, y], i) => {
    const before = path[i - 1];
    const height = Math.max(0, heightAt(x, y));
    if (before) {
      const step = Math.hypot(x - before[0], y - before[1]);
      at += step;
      wall += (step * (height + (stations[i - 1]?.height ?? height))) / 2;
    }
    stations.push({ at, height });
  });
  const upper = stations.map(({ at, height }): Point => [at, height + turnOver]).reverse();
  return {
    length: at,
    stations,
    width: Math.max(...stations.map(({ height }) => height)) + turnOver + turnUnder,
    wall,
    area: wall + at * (turnOver + turnUnder),
    ring: [[0, -turnUnder], [at, -turnUnder], ...upper],
  };
}
