import { describe, expect, it } from 'vitest';
import { area } from '../../../src/core/geometry/area';
import { areaBetween, chords, heightAbove } from '../../../src/core/geometry/chords';
import type { Ring } from '../../../src/core/geometry/ring';

const TRIANGLE: Ring = [
  [0, 0],
  [60, 0],
  [0, 30],
];
/** A U: 10 high, 40 long, with a gap of 20 in its upper half. */
const FORK: Ring = [
  [0, 0],
  [40, 0],
  [40, 10],
  [30, 10],
  [30, 5],
  [10, 5],
  [10, 10],
  [0, 10],
];

describe('chords', () => {
  it('of a triangle go evenly from its base to its tip (derived)', () => {
    const [slab, ...none] = chords(TRIANGLE);
    expect(none).toEqual([]);
    expect(slab!.height).toBe(30);
    expect([slab!.from, slab!.to].map((length) => length.toFixed(6))).toEqual(['60.000000', '0.000000']);
    // Longer than 40 over the lower third, and between 20 and 40 over the middle one: (40 + 20) / 2 · 10.
    expect(heightAbove(slab!, 40)).toBeCloseTo(10, 9);
    expect(areaBetween(slab!, 20, 40)).toBeCloseTo(300, 9);
  });

  it('of an outline with a gap count what lies in it, and all of them are its area', () => {
    expect(chords(FORK).map(({ height, from, to }) => [height, from, to])).toEqual([
      [5, 40, 40],
      [5, 20, 20],
    ]);
    for (const ring of [TRIANGLE, FORK]) {
      const sum = chords(ring).reduce((all, slab) => all + areaBetween(slab, 0, Infinity), 0);
      expect(sum).toBeCloseTo(area(ring), 9);
    }
  });
});
