import type { Ring } from '../geometry/ring';

/**
 * How far something reaches to one side, as a function of the place along that side. Stretch i runs from at[i] to
 * at[i + 1] and reaches straight from `from[i]` to `to[i]`. The arrays may be longer than the `stretches` in use.
 */
export interface Profile {
  readonly stretches: number;
  readonly at: Float64Array;
  readonly from: Float64Array;
  readonly to: Float64Array;
}

/** Overlaps along a side that are shorter than this are none, mm: pieces that pass side by side do not meet. */
const NO_OVERLAP = 1e-9;

/**
 * How far apart, across, two things must be where `b` lies `shift` along: the greatest sum of both reaches where they
 * overlap, −Infinity where they pass each other.
 */
export function clearance(a: Profile, b: Profile, shift: number): number {
  const { at: aAt, from: aFrom, to: aTo } = a;
  const { at: bAt, from: bFrom, to: bTo } = b;
  const lo = Math.max(aAt[0], bAt[0] + shift);
  const hi = Math.min(aAt[a.stretches], bAt[b.stretches] + shift);
  if (hi - lo <= NO_OVERLAP) return -Infinity;
  let i = stretchAt(a, lo);
  let j = stretchAt(b, lo - shift);
  let x = lo;
  let most = -Infinity;
  for (;;) {
    const aEnd = aAt[i + 1];
    const bEnd = bAt[j + 1] + shift;
    const next = aEnd < bEnd ? (aEnd < hi ? aEnd : hi) : bEnd < hi ? bEnd : hi;
    const aSlope = (aTo[i] - aFrom[i]) / (aEnd - aAt[i]);
    const bSlope = (bTo[j] - bFrom[j]) / (bEnd - shift - bAt[j]);
    const start = aFrom[i] + aSlope * (x - aAt[i]) + bFrom[j] + bSlope * (x - shift - bAt[j]);
    if (start > most) most = start;
    const end = start + (aSlope + bSlope) * (next - x);
    if (end > most) most = end;
    if (next >= hi) return most;
    if (aEnd <= next) i++;
    if (bEnd <= next) j++;
    x = next;
  }
}

/** The stretch in which a place lies; the last that begins at or before it. */
export function stretchAt({ at, stretches }: Profile, place: number): number {
  let low = 0;
  let high = stretches - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (at[middle] <= place) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** The same thing seen by one who runs along the side the other way. */
export function reversed({ at, from, to, stretches: n }: Profile): Profile {
  const back = { stretches: n, at: new Float64Array(n + 1), from: new Float64Array(n), to: new Float64Array(n) };
  for (let i = 0; i <= n; i++) back.at[i] = -at[n - i];
  for (let i = 0; i < n; i++) {
    back.from[i] = to[n - 1 - i];
    back.to[i] = from[n - 1 - i];
  }
  return back;
}

/** How far a piece reaches up and right and, as positive numbers, down and left of its origin. */
export interface Sides {
  readonly top: Profile;
  readonly right: Profile;
  readonly bottom: Profile;
  readonly left: Profile;
}

/** The four sides of a ring. Its edges may cross; then a side may be given up to a stretch's rise too far out. */
export function sidesOf(ring: Ring): Sides {
  const xs = Float64Array.from(ring, ([x]) => x);
  const ys = Float64Array.from(ring, ([, y]) => y);
  const [top, bottom] = bothReaches(xs, ys);
  const [right, left] = bothReaches(ys, xs);
  return { top, right, bottom, left };
}

/** The sides of the same piece turned counter-clockwise by a quarter. */
export function quarterTurned({ top, right, bottom, left }: Sides): Sides {
  return { top: reversed(right), left: top, bottom: reversed(left), right: bottom };
}

/** How far a closed line reaches over and under the axis, at each place along it. */
function bothReaches(along: Float64Array, across: Float64Array): [Profile, Profile] {
  const at = along.slice().sort();
  let count = 1;
  for (let i = 1; i < at.length; i++) if (at[i] > at[count - 1]) at[count++] = at[i];
  const n = count - 1;
  const over = new Reach(n, at);
  const under = new Reach(n, at);
  for (let i = 0, j = along.length - 1; i < along.length; j = i++) {
    const [p, q] = along[j] < along[i] ? [j, i] : [i, j];
    const x0 = along[p];
    const x1 = along[q];
    if (x0 === x1) continue;
    const slope = (across[q] - across[p]) / (x1 - x0);
    let y = across[p];
    for (let k = stretchAt(over, x0); k < n && at[k] < x1; k++) {
      const next = at[k + 1] === x1 ? across[q] : across[p] + slope * (at[k + 1] - x0);
      over.raise(k, y, next, i);
      under.raise(k, -y, -next, i);
      y = next;
    }
  }
  return [over.joined(), under.joined()];
}

/** A profile in the making: the farthest reach on each stretch, and the edge that it is of. */
class Reach implements Profile {
  readonly from: Float64Array;
  readonly to: Float64Array;
  private readonly edge: Int32Array;

  constructor(
    readonly stretches: number,
    readonly at: Float64Array,
  ) {
    this.from = new Float64Array(stretches).fill(-Infinity);
    this.to = new Float64Array(stretches).fill(-Infinity);
    this.edge = new Int32Array(stretches);
  }

  raise(stretch: number, from: number, to: number, edge: number): void {
    const higher = from >= this.from[stretch] && to >= this.to[stretch];
    if (higher) this.edge[stretch] = edge;
    // Where edges cross within a stretch neither is higher throughout, and the stretch belongs to no single edge.
    else if (from > this.from[stretch] || to > this.to[stretch]) this.edge[stretch] = -1;
    if (from > this.from[stretch]) this.from[stretch] = from;
    if (to > this.to[stretch]) this.to[stretch] = to;
  }

  /** Joins neighbouring stretches that are parts of one edge. */
  joined(): Profile {
    const { at, from, to, edge, stretches } = this;
    const n = {
      at: new Float64Array(stretches + 1),
      from: new Float64Array(stretches),
      to: new Float64Array(stretches),
    };
    let count = 0;
    for (let k = 0; k < stretches; k++) {
      if (count > 0 && edge[k] >= 0 && edge[k] === edge[k - 1]) {
        n.to[count - 1] = to[k];
      } else {
        n.at[count] = at[k];
        n.from[count] = from[k];
        n.to[count++] = to[k];
      }
    }
    n.at[count] = at[stretches];
    return { stretches: count, ...n };
  }
}
