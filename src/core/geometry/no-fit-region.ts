import { itemAt, itemRound } from '../item-at';
import { box } from './box';
import { convolution } from './convolution';
import type { Box, Point, Ring } from './ring';

/** Bands across the region; edges are looked up by the band in which a point lies. */
const MOST_BANDS = 128;
const LEAST_BANDS = 8;

/** Numbers kept for an edge: x and y of its lower end, y of its upper end, run per rise, and +1 upward or −1 downward. */
export const EDGE = 5;

/**
 * Where the second of two pieces may not have its origin, seen from the origin of the first, lest they overlap: the
 * Minkowski sum of the first and the second turned round. On its edge they touch. It is kept as the curves that bound it
 * with the edges that run through it, and a point lies in it when they wind round it.
 */
export class NoFitRegion {
  readonly box: Box;
  readonly bands: number;
  /** Where the edges of each band begin in `edges`, and at last where they end. */
  readonly starts: Int32Array;
  readonly edges: Float64Array;
  /** Edges that run level, which bands leave out: left end, right end, y. */
  readonly levels: Float64Array;

  /** @param most bands: fewer take less memory, more are looked up faster */
  constructor(
    readonly curves: readonly Ring[],
    most = MOST_BANDS,
  ) {
    this.box = box(curves.flat());
    const { bottom, top } = this.box;
    const count = curves.reduce((sum, { length }) => sum + length, 0);
    this.bands = Math.max(LEAST_BANDS, Math.min(most, 2 * count));
    const lists: number[][] = Array.from({ length: this.bands }, () => []);
    const levels: number[] = [];
    const band = (y: number) => Math.max(0, Math.min(this.bands - 1, this.bandOf(y)));
    for (const curve of curves) {
      curve.forEach(([bx, by], i) => {
        const [ax, ay] = itemRound(curve, i - 1);
        if (ay === by) {
          levels.push(Math.min(ax, bx), Math.max(ax, bx), ay);
          return;
        }
        const [x, low, high] = ay < by ? [ax, ay, by] : [bx, by, ay];
        const edge = [x, low, high, (bx - ax) / (by - ay), ay < by ? 1 : -1];
        for (const list of lists.slice(band(low), band(high) + 1)) list.push(...edge);
      });
    }
    this.starts = new Int32Array(this.bands + 1);
    let end = 0;
    lists.forEach((list, k) => (this.starts[k + 1] = end += list.length));
    this.edges = new Float64Array(end);
    lists.forEach((list, k) => this.edges.set(list, itemAt(this.starts, k)));
    this.levels = Float64Array.from(levels);
    if (!(top > bottom)) throw new Error('A no-fit region has no height.');
  }

  /** Whether the pieces overlap when the second's origin lies at this point. */
  has(x: number, y: number): boolean {
    const { left, bottom, right, top } = this.box;
    if (x <= left || x >= right || y <= bottom || y >= top) return false;
    const { edges, starts } = this;
    const band = Math.min(this.bands - 1, this.bandOf(y));
    let winding = 0;
    for (let e = starts[band]!, end = starts[band + 1]!; e < end; e += EDGE) {
      const low = edges[e + 1]!;
      if (y >= low && y < edges[e + 2]! && x < edges[e]! + (y - low) * edges[e + 3]!) winding += edges[e + 4]!;
    }
    return winding !== 0;
  }

  private bandOf(y: number): number {
    const { bottom, top } = this.box;
    return Math.floor(((y - bottom) * this.bands) / (top - bottom));
  }
}

/** The no-fit region of two outlines that do not cross themselves. */
export function noFitRegion(first: Ring, second: Ring, mostBands?: number): NoFitRegion {
  return new NoFitRegion(
    convolution(
      first,
      second.map(([x, y]): Point => [-x, -y]),
    ),
    mostBands,
  );
}
