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
  const levels = levelsOf(ring);
  const slabs = Math.max(0, levels.length - 1);
  const from = new Float64Array(slabs).fill(more);
  const to = from.slice();
  for (let k = 0; k < ring.length; k++) {
    const { 0: px, 1: py } = ring[k === 0 ? ring.length - 1 : k - 1]!;
    const { 0: x, 1: y } = ring[k]!;
    if (y === py) continue;
    // An outline goes up on the right and down on the left: what lies between is one less the other.
    const sign = y > py ? 1 : -1;
    const slope = (x - px) / (y - py);
    const low = Math.min(y, py);
    const high = Math.max(y, py);
    for (let i = levelAt(levels, low); levels[i]! < high; i++) {
      from[i]! += sign * (px + slope * (levels[i]! - py));
      to[i]! += sign * (px + slope * (levels[i + 1]! - py));
    }
  }
  return { heights: levels.subarray(0, slabs).map((level, i) => levels[i + 1]! - level), from, to };
}

/** The heights of all corners, each once, the lowest first. */
function levelsOf(ring: Ring): Float64Array {
  const levels = new Float64Array(ring.length);
  for (let i = 0; i < ring.length; i++) levels[i] = ring[i]![1];
  levels.sort();
  let count = 0;
  for (let i = 0; i < levels.length; i++) {
    if (count === 0 || levels[i] !== levels[count - 1]) levels[count++] = levels[i]!;
  }
  return levels.subarray(0, count);
}

/** Which of the heights one of them is. */
function levelAt(levels: Float64Array, level: number): number {
  let low = 0;
  let high = levels.length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (levels[middle]! < level) low = middle + 1;
    else high = middle;
  }
  return low;
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
    const low = Math.max(less, least);
    const high = Math.min(more, most);
    if (low > high) continue;
    const share = more - less < SAME ? 1 : (high - low) / (more - less);
    sum += (heights[i]! * share * (low + high)) / 2;
  }
  return sum;
}
