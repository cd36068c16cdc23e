import { describe, expect, it } from 'vitest';
import { area } from '../../../src/core/geometry/area';
import { areaBetween, chords, heightAbove, longestChord } from '../../../src/core/geometry/chords';
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
    const own = chords(TRIANGLE);
    expect([own.heights, own.from, own.to].map((list) => [...list])).toEqual([[30], [60], [0]]);
    // Longer than 40 over the lower third, and between 20 and 40 over the middle one: (40 + 20) / 2 · 10.
    expect(heightAbove(own, 40)).toBeCloseTo(10, 9);
    expect(areaBetween(own, 20, 40)).toBeCloseTo(300, 9);
  });

  it('of an outline with a gap count what lies in it, and all of them are its area', () => {
    const { heights, from, to } = chords(FORK);
    expect([heights, from, to].map((list) => [...list])).toEqual([
      [5, 5],
      [40, 20],
      [40, 20],
    ]);
    for (const ring of [TRIANGLE, FORK]) expect(areaBetween(chords(ring), 0, Infinity)).toBeCloseTo(area(ring), 9);
  });

  it('are each longer by what is asked, and tell the longest (derived)', () => {
    expect(longestChord(chords(FORK))).toBe(40);
    expect(longestChord(chords(FORK, 3))).toBe(43);
    expect(areaBetween(chords(FORK, 3), 0, Infinity)).toBeCloseTo(area(FORK) + 3 * 10, 9);
    expect(longestChord(chords([]))).toBe(0);
  });
});
