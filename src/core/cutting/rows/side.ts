import type { Ring } from '../../geometry/ring';
import { CELL, cellsBetween, type Peaked, SAME_PLACE, STRETCH } from './reach';

/** One side of a piece. */
export class Side implements Peaked {
  readonly stretches: number;
  readonly crests: Float64Array;
  readonly begins: Int32Array;
  readonly peak: number;
  readonly height: number;
  private back: Side | undefined;

  constructor(readonly line: Float64Array) {
    const start = line[0]!;
    const last = line.length - 1;
    const cells = cellsBetween(start, line[last]!);
    this.stretches = last / STRETCH;
    const crests = new Float64Array(cells + 3).fill(-Infinity);
    const begins = new Int32Array(cells + 1);
    for (let i = 0; i < last; i += STRETCH) {
      const from = line[i]!;
      const begin = line[i + 1]!;
      const rise = line[i + 2]!;
      const end = line[i + STRETCH]!;
      let cell = Math.floor((from - start) / CELL);
      let reach = begin;
      for (;;) {
        const edge = start + (cell + 1) * CELL;
        const next = begin + rise * ((end < edge ? end : edge) - from);
        const most = next > reach ? next : reach;
        if (most > crests[cell + 1]!) crests[cell + 1] = most;
        if (edge > end) break;
        cell++;
        begins[cell] = i;
        reach = next;
      }
    }
    this.crests = crests;
    this.begins = begins;
    const { peak, height } = peakOf(line);
    this.peak = peak;
    this.height = height;
  }

  /** The same side seen by one who runs along it the other way. */
  get reversed(): Side {
    if (!this.back) {
      const { line } = this;
      const last = line.length - 1;
      const back = new Float64Array(line.length);
      back[last] = -line[0]!;
      for (let i = 0, k = last - STRETCH; i < last; i += STRETCH, k -= STRETCH) {
        back[i] = -line[k + STRETCH]!;
        back[i + 1] = line[k + 1]! + line[k + 2]! * (line[k + STRETCH]! - line[k]!);
        back[i + 2] = -line[k + 2]!;
      }
      this.back = new Side(back);
      this.back.back = this;
    }
    return this.back;
  }
}

/** A place within a stretch, near the end at which the side reaches farthest: at the end itself it may begin anew elsewhere. */
function peakOf(line: Float64Array): { readonly peak: number; readonly height: number } {
  let peak = line[0]!;
  let height = -Infinity;
  for (let i = 0; i + STRETCH < line.length; i += STRETCH) {
    const length = line[i + STRETCH]! - line[i]!;
    const slope = line[i + 2]!;
    const within = length * (slope > 0 ? 1 - WITHIN : WITHIN);
    const reach = line[i + 1]! + slope * within;
    if (reach > height) {
      peak = line[i]! + within;
      height = reach;
    }
  }
  return { peak, height };
}

/** How far from a stretch's end its peak is taken, as a share of its length. */
const WITHIN = 0.01;

/** How far a piece reaches up and right and, as positive numbers, down and left of its origin. */
export interface Sides {
  readonly top: Side;
  readonly right: Side;
  readonly bottom: Side;
  readonly left: Side;
}

/** The four sides of a ring. Its edges may cross; then a side may be given up to a stretch's rise too far out. */
export function sidesOf(ring: Ring): Sides {
  const xs = new Float64Array(ring.length);
  const ys = new Float64Array(ring.length);
  for (let i = 0; i < ring.length; i++) {
    const point = ring[i]!;
    xs[i] = point[0];
    ys[i] = point[1];
  }
  const [top, bottom] = bothSides(xs, ys);
  const [right, left] = bothSides(ys, xs);
  return { top, right, bottom, left };
}

/** The sides of the same piece turned counter-clockwise by a quarter. */
export function quarterTurned({ top, right, bottom, left }: Sides): Sides {
  return { top: right.reversed, left: top, bottom: left.reversed, right: bottom };
}

/** The sides of the other foot's piece: mirrored in the length line. */
export function mirroredSides({ top, right, bottom, left }: Sides): Sides {
  return { top: bottom, right: right.reversed, bottom: top, left: left.reversed };
}

/** How far a closed line reaches over and under the axis, at each place along it. */
function bothSides(along: Float64Array, across: Float64Array): [Side, Side] {
  const at = along.slice().sort();
  let count = 1;
  for (let i = 1; i < at.length; i++) if (at[i]! - at[count - 1]! > SAME_PLACE) at[count++] = at[i]!;
  const stretches = count - 1;
  over.start(stretches);
  under.start(stretches);
  for (let i = 0, j = along.length - 1; i < along.length; j = i++) {
    const forward = along[j]! < along[i]!;
    const x0 = forward ? along[j]! : along[i]!;
    const x1 = forward ? along[i]! : along[j]!;
    if (x1 - x0 <= SAME_PLACE) continue;
    const end = forward ? across[i]! : across[j]!;
    let y = forward ? across[j]! : across[i]!;
    const slope = (end - y) / (x1 - x0);
    for (let k = lastUpTo(at, stretches, x0); k < stretches && x1 - at[k]! > SAME_PLACE; k++) {
      const next = x1 - at[k + 1]! <= SAME_PLACE ? end : y + slope * (at[k + 1]! - Math.max(x0, at[k]!));
      over.raise(k, y, next, i);
      under.raise(k, -y, -next, i);
      y = next;
    }
  }
  return [over.side(at), under.side(at)];
}

/** Which of the first `count` places, in order, is the last that is not beyond another. */
function lastUpTo(at: Float64Array, count: number, place: number): number {
  let low = 0;
  let high = count - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (at[middle]! <= place) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** A side in the making: the farthest reach at both ends of each stretch, and the edge that it is of. */
class Farthest {
  private stretches = 0;
  private from = new Float64Array(256);
  private to = new Float64Array(256);
  private edge = new Int32Array(256);

  start(stretches: number): void {
    this.stretches = stretches;
    if (stretches > this.from.length) {
      this.from = new Float64Array(2 * stretches);
      this.to = new Float64Array(2 * stretches);
      this.edge = new Int32Array(2 * stretches);
    }
    this.from.fill(-Infinity, 0, stretches);
    this.to.fill(-Infinity, 0, stretches);
    this.edge.fill(-1, 0, stretches);
  }

  raise(stretch: number, from: number, to: number, edge: number): void {
    const starts = this.from[stretch]!;
    const ends = this.to[stretch]!;
    if (from >= starts && to >= ends) this.edge[stretch] = edge;
    // Where edges cross within a stretch neither is higher throughout, and the stretch belongs to no single edge.
    else if (from > starts || to > ends) this.edge[stretch] = -1;
    if (from > starts) this.from[stretch] = from;
    if (to > ends) this.to[stretch] = to;
  }

  /** The side, with neighbouring stretches joined that are parts of one edge. */
  side(at: Float64Array): Side {
    const { from, to, edge, stretches: n } = this;
    const begins = (k: number) => k === 0 || edge[k]! < 0 || edge[k] !== edge[k - 1];
    let stretches = 0;
    for (let k = 0; k < n; k++) if (begins(k)) stretches++;
    const line = new Float64Array(STRETCH * stretches + 1);
    let last = -STRETCH;
    for (let k = 0; k < n; k++) {
      if (begins(k)) {
        last += STRETCH;
        line[last] = at[k]!;
        line[last + 1] = from[k]!;
      }
      line[last + 2] = (to[k]! - line[last + 1]!) / (at[k + 1]! - line[last]!);
    }
    line[STRETCH * stretches] = at[n]!;
    return new Side(line);
  }
}

/** Used again for every side: making thousands of them is then no work for the memory. */
const over = new Farthest();
const under = new Farthest();
