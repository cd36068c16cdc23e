import { itemAt } from '../item-at';
import { convolutionOf, type Curve, type Tracing, tracing } from './convolution';
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

  /** @param most bands: fewer take less memory, more are looked up faster */
  constructor(curves: readonly Curve[], most = MOST_BANDS) {
    this.box = boxOf(curves);
    const { bottom, top } = this.box;
    const count = curves.reduce((sum, { length }) => sum + length, 0);
    this.bands = Math.max(LEAST_BANDS, Math.min(most, count));
    // Twice round: first to count the edges of each band, then to put them there.
    const starts = new Int32Array(this.bands + 1);
    for (const curve of curves) {
      let ay = curve[curve.length - 1]!;
      for (let i = 1; i < curve.length; i += 2) {
        const by = curve[i]!;
        if (ay !== by) {
          const last = this.bandOf(Math.max(ay, by));
          for (let k = this.bandOf(Math.min(ay, by)); k <= last; k++) starts[k + 1]! += EDGE;
        }
        ay = by;
      }
    }
    for (let k = 0; k < this.bands; k++) starts[k + 1]! += starts[k]!;
    const edges = new Float64Array(itemAt(starts, this.bands));
    const ends = starts.slice();
    for (const curve of curves) {
      let ax = curve[curve.length - 2]!;
      let ay = curve[curve.length - 1]!;
      for (let i = 0; i < curve.length; i += 2) {
        const bx = curve[i]!;
        const by = curve[i + 1]!;
        const upward = ay < by;
        const slope = (bx - ax) / (by - ay);
        const last = ay === by ? -1 : this.bandOf(Math.max(ay, by));
        for (let k = this.bandOf(Math.min(ay, by)); k <= last; k++) {
          const at = ends[k]!;
          edges[at] = upward ? ax : bx;
          edges[at + 1] = upward ? ay : by;
          edges[at + 2] = upward ? by : ay;
          edges[at + 3] = slope;
          edges[at + 4] = upward ? 1 : -1;
          ends[k] = at + EDGE;
        }
        ax = bx;
        ay = by;
      }
    }
    this.starts = starts;
    this.edges = edges;
    if (!(top > bottom)) throw new Error('A no-fit region has no height.');
  }

  /** Bytes that it takes. */
  get bytes(): number {
    return this.starts.byteLength + this.edges.byteLength;
  }

  /** Whether the pieces overlap when the second's origin lies at this point. */
  has(x: number, y: number): boolean {
    const { left, bottom, right, top } = this.box;
    if (x <= left || x >= right || y <= bottom || y >= top) return false;
    const band = this.bandOf(y);
    return windRound(this.edges, this.starts[band]!, this.starts[band + 1]!, x, y);
  }

  /** The band at this height, which is the first below the region and the last above it. */
  bandOf(y: number): number {
    const { bottom, top } = this.box;
    const band = Math.floor(((y - bottom) * this.bands) / (top - bottom));
    return band < 0 ? 0 : band < this.bands ? band : this.bands - 1;
  }
}

/**
 * Whether edges wind round a point: those that the level line to its right meets go up more often than down, or less.
 * @param from where the edges of the point's band begin, and `to` where they end
 */
function windRound(edges: Float64Array, from: number, to: number, x: number, y: number): boolean {
  let winding = 0;
  for (let e = from; e < to; e += EDGE) {
    const low = edges[e + 1]!;
    if (y >= low && y < edges[e + 2]! && x < edges[e]! + (y - low) * edges[e + 3]!) winding += edges[e + 4]!;
  }
  return winding !== 0;
}

/** The box about curves. */
export function boxOf(curves: readonly Curve[]): Box {
  let left = Infinity;
  let bottom = Infinity;
  let right = -Infinity;
  let top = -Infinity;
  for (const curve of curves) {
    for (let i = 0; i < curve.length; i += 2) {
      left = Math.min(left, curve[i]!);
      bottom = Math.min(bottom, curve[i + 1]!);
      right = Math.max(right, curve[i]!);
      top = Math.max(top, curve[i + 1]!);
    }
  }
  return { left, bottom, right, top };
}

/** The no-fit region of two outlines that do not cross themselves. */
export function noFitRegion(first: Ring, second: Ring, mostBands?: number): NoFitRegion {
  return noFitRegionOf(tracing(first), turnedRound(second), mostBands);
}

/** The same of a first outline that is traced already, and of a second that is traced turned round. */
export function noFitRegionOf(first: Tracing, second: Tracing, mostBands?: number): NoFitRegion {
  return new NoFitRegion(convolutionOf(first, second), mostBands);
}

/** An outline turned end for end about the origin, traced. */
export function turnedRound(ring: Ring): Tracing {
  return tracing(ring.map(({ 0: x, 1: y }): Point => [-x, -y]));
}
