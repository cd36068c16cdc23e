import type { Ring } from './ring';

/**
 * The lengths of all lines along x across an outline, all its parts together, mm: between two heights the length goes evenly
 * from one value to another.
 */
export interface Chords {
  /** Height of each slab, from the lowest up. */
  readonly heights: Float64Array;
  /** Length of the chord at its foot and at its head. */
  readonly from: Float64Array;
  readonly to: Float64Array;
}

/** Heights closer than this to the next are one, mm. */
const SAME = 1e-9;

/**
 * The chords of an outline from its lowest point to its highest; exact for straight edges.
 * @param more by how much each is longer, mm
 */
export function chords(ring: Ring, more = 0): Chords {
  const levels = Float64Array.from(new Set(ring.map(([, y]) => y))).sort();
  const at = new Map<number, number>();
  for (const [i, level] of levels.entries()) at.set(level, i);
  const slabs = Math.max(0, levels.length - 1);
  const [from, to] = [new Float64Array(slabs).fill(more), new Float64Array(slabs).fill(more)];
  let [px, py] = ring[ring.length - 1] ?? [0, 0];
  for (const [x, y] of ring) {
    // Going up the outline is on the left, and going down on the right: what lies between is to the right less to the left.
    const [start, end] = [at.get(py)!, at.get(y)!];
    const slope = (x - px) / (y - py);
    for (let i = Math.min(start, end); i < Math.max(start, end); i++) {
      const [foot, head] = [px + slope * (levels[i]! - py), px + slope * (levels[i + 1]! - py)];
      from[i] = from[i]! + (y > py ? foot : -foot);
      to[i] = to[i]! + (y > py ? head : -head);
    }
    [px, py] = [x, y];
  }
  return { heights: levels.subarray(0, slabs).map((level, i) => levels[i + 1]! - level), from, to };
}

/** The longest chord, mm. */
export function longestChord({ from, to }: Chords): number {
  let longest = 0;
  for (let i = 0; i < from.length; i++) longest = Math.max(longest, from[i]!, to[i]!);
  return longest;
}

/** Height over which the chord is longer than a length, mm. */
export function heightAbove({ heights, from, to }: Chords, length: number): number {
  let sum = 0;
  for (let i = 0; i < heights.length; i++) {
    const less = Math.min(from[i]!, to[i]!);
    const more = Math.max(from[i]!, to[i]!);
    if (more > length) sum += less > length ? heights[i]! : (heights[i]! * (more - length)) / (more - less);
  }
  return sum;
}

/** Area where the chord is between two lengths, both included, mm². */
export function areaBetween({ heights, from, to }: Chords, least: number, most: number): number {
  let sum = 0;
  for (let i = 0; i < heights.length; i++) {
    const less = Math.min(from[i]!, to[i]!);
    const more = Math.max(from[i]!, to[i]!);
    const [low, high] = [Math.max(less, least), Math.min(more, most)];
    if (low > high) continue;
    const share = more - less < SAME ? 1 : (high - low) / (more - less);
    sum += (heights[i]! * share * (low + high)) / 2;
  }
  return sum;
}
