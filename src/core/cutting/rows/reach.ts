import type { Ring } from '../../geometry/ring';

/**
 * How far something reaches to one side, as a function of the place along that side. Stretch i runs from at[i] to
 * at[i + 1], starts at a reach of `from[i]` (−Infinity where nothing is) and rises by `slope[i]`. The arrays may be longer
 * than the `stretches` in use.
 */
export interface Profile {
  readonly stretches: number;
  readonly at: Float64Array;
  readonly from: Float64Array;
  readonly slope: Float64Array;
}

/**
 * Places along a side that lie closer together than this are one, mm: edges that run straight across are then no
 * stretch, and no slope is so steep that rounding matters.
 */
export const SAME_PLACE = 1e-7;

/**
 * How far apart, across, two things must be where `b` lies `shift` along: the greatest sum of both reaches where they
 * overlap, −Infinity where they pass each other.
 * @param limit once the sum is found to be above this the answer is Infinity
 */
export function clearance(a: Profile, b: Profile, shift: number, limit = Infinity): number {
  const { at: aAt, from: aFrom, slope: aSlope } = a;
  const { at: bAt, from: bFrom, slope: bSlope } = b;
  const lo = Math.max(aAt[0], bAt[0] + shift);
  const hi = Math.min(aAt[a.stretches], bAt[b.stretches] + shift);
  if (hi - lo <= SAME_PLACE) return -Infinity;
  let i = stretchAt(a, lo);
  let j = stretchAt(b, lo - shift);
  let x = lo;
  let most = -Infinity;
  for (;;) {
    const aEnd = aAt[i + 1];
    const bEnd = bAt[j + 1] + shift;
    const next = aEnd < bEnd ? (aEnd < hi ? aEnd : hi) : bEnd < hi ? bEnd : hi;
    const start = aFrom[i] + aSlope[i] * (x - aAt[i]) + bFrom[j] + bSlope[j] * (x - shift - bAt[j]);
    if (start > most) most = start;
    const end = start + (aSlope[i] + bSlope[j]) * (next - x);
    if (end > most) most = end;
    if (most > limit) return Infinity;
    if (next >= hi) return most;
    if (aEnd <= next) i++;
    if (bEnd <= next) j++;
    x = next;
  }
}

/** The stretch in which a place lies; the last that begins at or before it. */
export function stretchAt({ at, stretches }: Pick<Profile, 'at' | 'stretches'>, place: number): number {
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
export function reversed({ at, from, slope, stretches: n }: Profile): Profile {
  const back = { stretches: n, at: new Float64Array(n + 1), from: new Float64Array(n), slope: new Float64Array(n) };
  for (let i = 0; i <= n; i++) back.at[i] = -at[n - i];
  for (let i = 0, k = n - 1; i < n; i++, k--) {
    back.from[i] = from[k] + slope[k] * (at[k + 1] - at[k]);
    back.slope[i] = -slope[k];
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
  const xs = new Float64Array(ring.length);
  const ys = new Float64Array(ring.length);
  for (let i = 0; i < ring.length; i++) {
    xs[i] = ring[i][0];
    ys[i] = ring[i][1];
  }
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
  for (let i = 1; i < at.length; i++) if (at[i] - at[count - 1] > SAME_PLACE) at[count++] = at[i];
  const stretches = count - 1;
  const grid = { at, stretches };
  over.start(stretches);
  under.start(stretches);
  for (let i = 0, j = along.length - 1; i < along.length; j = i++) {
    const forward = along[j] < along[i];
    const x0 = forward ? along[j] : along[i];
    const x1 = forward ? along[i] : along[j];
    if (x1 - x0 <= SAME_PLACE) continue;
    const end = forward ? across[i] : across[j];
    let y = forward ? across[j] : across[i];
    const slope = (end - y) / (x1 - x0);
    for (let k = stretchAt(grid, x0); k < stretches && x1 - at[k] > SAME_PLACE; k++) {
      const next = x1 - at[k + 1] <= SAME_PLACE ? end : y + slope * (at[k + 1] - Math.max(x0, at[k]));
      over.raise(k, y, next, i);
      under.raise(k, -y, -next, i);
      y = next;
    }
  }
  return [over.joined(at), under.joined(at)];
}

/** A profile in the making: the farthest reach at both ends of each stretch, and the edge that it is of. */
class Reach {
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
    const starts = this.from[stretch];
    const ends = this.to[stretch];
    if (from >= starts && to >= ends) this.edge[stretch] = edge;
    // Where edges cross within a stretch neither is higher throughout, and the stretch belongs to no single edge.
    else if (from > starts || to > ends) this.edge[stretch] = -1;
    if (from > starts) this.from[stretch] = from;
    if (to > ends) this.to[stretch] = to;
  }

  /** The profile, with neighbouring stretches joined that are parts of one edge. */
  joined(at: Float64Array): Profile {
    const { from, to, edge, stretches: n } = this;
    const begins = (k: number) => k === 0 || edge[k] < 0 || edge[k] !== edge[k - 1];
    let stretches = 0;
    for (let k = 0; k < n; k++) if (begins(k)) stretches++;
    const profile = {
      stretches,
      at: new Float64Array(stretches + 1),
      from: new Float64Array(stretches),
      slope: new Float64Array(stretches),
    };
    let last = -1;
    for (let k = 0; k < n; k++) {
      if (begins(k)) {
        profile.at[++last] = at[k];
        profile.from[last] = from[k];
      }
      profile.slope[last] = (to[k] - profile.from[last]) / (at[k + 1] - profile.at[last]);
    }
    profile.at[stretches] = at[n];
    return profile;
  }
}

/** Used again for every profile: making thousands of them is then no work for the memory. */
const over = new Reach();
const under = new Reach();
