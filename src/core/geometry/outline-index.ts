import { derived } from '../derived';
import type { Ring } from './ring';
import { sameRing } from './same-ring';

/** Which outline a ring is of those met so far, and whether it is the other foot's. */
export interface KnownOutline {
  /** Counted from 0 in the order in which outlines were met. */
  readonly number: number;
  /** Whether it is the mirror image of the ring that was met first. */
  readonly mirrored: boolean;
}

/** Tells outlines apart: rings that are equal point for point, or mirrored in the length line, are one outline. */
export class OutlineIndex {
  private readonly met = new Map<number, { readonly number: number; readonly ring: Ring }[]>();
  private count = 0;

  find(ring: Ring): KnownOutline {
    const sum = checksums(ring, [], () => ({ sum: checksum(ring) })).sum;
    const alike = this.met.get(sum) ?? [];
    for (const known of alike) {
      if (sameRing(known.ring, ring)) return { number: known.number, mirrored: false };
      if (mirrors(known.ring, ring)) return { number: known.number, mirrored: true };
    }
    const number = this.count++;
    this.met.set(sum, [...alike, { number, ring }]);
    return { number, mirrored: false };
  }
}

/** Outlines are told apart at every stage of a plan. */
const checksums = derived<Ring, { readonly sum: number }>('checksum of a ring');

const place = new Float64Array(2);
const bits = new Uint32Array(place.buffer);

/** A number that is the same for a ring and its mirror image, whatever point comes first, and seldom for any other. */
function checksum(ring: Ring): number {
  let sum = ring.length;
  for (let k = 0; k < ring.length; k++) {
    const { 0: x, 1: y } = ring[k]!;
    // Adding 0 makes one number of 0 and −0.
    place[0] = x + 0;
    place[1] = Math.abs(y);
    let mixed = Math.imul(bits[0]!, 0x9e3779b1);
    for (let i = 1; i < 4; i++) mixed = Math.imul(mixed ^ bits[i]!, 0x9e3779b1) ^ (mixed >>> 15);
    sum = (sum + mixed) | 0;
  }
  return sum;
}

function mirrors(a: Ring, b: Ring): boolean {
  const last = b.length - 1;
  if (a.length !== b.length) return false;
  for (let i = 0; i <= last; i++) if (a[i]![0] !== b[last - i]![0] || a[i]![1] !== -b[last - i]![1]) return false;
  return true;
}
