import type { Ring } from './ring';

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
    const sum = checksum(ring);
    const alike = this.met.get(sum) ?? [];
    for (const known of alike) {
      if (equal(known.ring, ring)) return { number: known.number, mirrored: false };
      if (mirrors(known.ring, ring)) return { number: known.number, mirrored: true };
    }
    const number = this.count++;
    this.met.set(sum, [...alike, { number, ring }]);
    return { number, mirrored: false };
  }
}

const place = new Float64Array(2);
const bits = new Uint32Array(place.buffer);

/** A number that is the same for a ring and its mirror image, whatever point comes first, and seldom for any other. */
function checksum(ring: Ring): number {
  let sum = ring.length;
  for (const [x, y] of ring) {
    // Adding 0 makes one number of 0 and −0.
    place[0] = x + 0;
    place[1] = Math.abs(y);
    let mixed = 0;
    for (const part of bits) mixed = Math.imul(mixed ^ part, 0x9e3779b1) ^ (mixed >>> 15);
    sum = (sum + mixed) | 0;
  }
  return sum;
}

function equal(a: Ring, b: Ring): boolean {
  return a.length === b.length && a.every(([x, y], i) => x === b[i]![0] && y === b[i]![1]);
}

function mirrors(a: Ring, b: Ring): boolean {
  const last = b.length - 1;
  return a.length === b.length && a.every(([x, y], i) => x === b[last - i]![0] && y === -b[last - i]![1]);
}
