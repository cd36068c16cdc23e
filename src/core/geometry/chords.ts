import type { Point, Ring } from './ring';

/** Between two heights an outline's chord, all its parts together, goes evenly from one length to another, mm. */
export interface Slab {
  readonly height: number;
  readonly from: number;
  readonly to: number;
}

/** Heights closer than this to the next are one, mm. */
const SAME = 1e-9;

/** The lengths of all lines along x across an outline, from its lowest point to its highest; exact for straight edges. */
export function chords(ring: Ring): readonly Slab[] {
  const heights = [...new Set(ring.map(([, y]) => y))].sort((a, b) => a - b);
  return heights.slice(1).flatMap((top, i): readonly Slab[] => {
    const bottom = heights[i]!;
    const height = top - bottom;
    if (height < SAME) return [];
    // Lines a third and two thirds up meet no corner, and tell the length at both ends.
    const [low, high] = [lengthAt(ring, bottom + height / 3), lengthAt(ring, top - height / 3)];
    return [{ height, from: Math.max(0, 2 * low - high), to: Math.max(0, 2 * high - low) }];
  });
}

function lengthAt(ring: Ring, height: number): number {
  const crossings: number[] = [];
  for (let i = 0; i < ring.length; i++) {
    const [p, q] = [ring[i]!, ring[(i + 1) % ring.length]!] as readonly [Point, Point];
    if (p[1] <= height === q[1] <= height) continue;
    crossings.push(p[0] + ((q[0] - p[0]) * (height - p[1])) / (q[1] - p[1]));
  }
  crossings.sort((a, b) => a - b);
  let sum = 0;
  for (let i = 0; i + 1 < crossings.length; i += 2) sum += crossings[i + 1]! - crossings[i]!;
  return sum;
}

/** Height over which a slab's chord is longer than a length, mm. */
export function heightAbove({ height, from, to }: Slab, length: number): number {
  const [less, more] = from < to ? [from, to] : [to, from];
  if (more <= length) return 0;
  return less > length ? height : (height * (more - length)) / (more - less);
}

/** Area of a slab where its chord is between two lengths, both included, mm². */
export function areaBetween(slab: Slab, least: number, most: number): number {
  const [less, more] = slab.from < slab.to ? [slab.from, slab.to] : [slab.to, slab.from];
  const [low, high] = [Math.max(less, least), Math.min(more, most)];
  if (low > high) return 0;
  const share = more - less < SAME ? 1 : (high - low) / (more - less);
  return (slab.height * share * (low + high)) / 2;
}
