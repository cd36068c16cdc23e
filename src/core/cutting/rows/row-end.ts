import type { InRow } from './in-row';
import type { Lay } from './lay';
import { clearance, endOf, type Part, reachAt, SAME_PLACE } from './reach';
import type { Side } from './side';

interface Seen extends Part {
  readonly side: Side;
}

/** Made in one place: what is read millions of times is to look alike to the engine. */
function partOf(side: Side, along: number, by: number, from: number, to: number): Seen {
  return { side, along, by, from, to };
}

/** The end of a row in the making: at each place across the row the piece that came last there, which reaches farthest. */
export class RowEnd {
  /** In no order but that what came last stands last. */
  private readonly seen: Seen[] = [];
  private height = 0;

  /** Nothing laid yet across a row of this height. */
  clear(height: number): void {
    this.height = height;
    this.seen.length = 0;
  }

  add({ lay, u, v }: InRow): void {
    const { seen } = this;
    const side = lay.sides.right;
    const low = Math.max(0, v + side.line[0]!);
    const high = Math.min(this.height, v + endOf(side));
    if (high - low <= SAME_PLACE) return;
    for (let k = seen.length - 1; k >= 0; k--) {
      const one = seen[k]!;
      if (one.to <= low || one.from >= high) continue;
      seen.splice(k, 1);
      if (one.from < low) seen.push(partOf(one.side, one.along, one.by, one.from, low));
      if (one.to > high) seen.push(partOf(one.side, one.along, one.by, high, one.to));
    }
    seen.push(partOf(side, v, u, low, high));
  }

  /**
   * Where along the row the origin of a piece comes to lie that is slid against the end.
   * @param limit once it is found to lie beyond this the answer is Infinity
   * @param least it lies no less far
   */
  place({ sides: { left } }: Lay, v: number, limit: number, least: number): number {
    const { seen } = this;
    const atPeak = this.atPeak(left, v);
    if (atPeak > limit) return Infinity;
    // By a hair less, so that what comes of all of the side counts, to the last digit.
    let place = Math.max(least, atPeak - HAIR);
    // What came last most often stands in the way.
    for (let k = seen.length - 1; k >= 0; k--) {
      const one = seen[k]!;
      place = clearance(one.side, left, v, limit, place, one);
      if (place > limit) return Infinity;
    }
    return place;
  }

  /** Where it comes to lie by the one place of its side that reaches farthest; −Infinity where nothing is across from that. */
  private atPeak({ peak, height }: Side, v: number): number {
    const { seen } = this;
    const place = peak + v;
    for (let k = seen.length - 1; k >= 0; k--) {
      const one = seen[k]!;
      if (place <= one.from + SAME_PLACE || place >= one.to - SAME_PLACE) continue;
      return reachAt(one.side, place - one.along) + one.by + height;
    }
    return -Infinity;
  }
}

/** Far more than rounding, far less than any piece, mm. */
const HAIR = 1e-6;
