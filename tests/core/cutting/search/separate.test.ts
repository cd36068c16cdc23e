import { describe, expect, it } from 'vitest';
import type { Arrangement } from '../../../../src/core/cutting/search/arrangement';
import { disrupt } from '../../../../src/core/cutting/search/disrupt';
import { separate } from '../../../../src/core/cutting/search/separate';
import { shorten } from '../../../../src/core/cutting/search/strip';
import { moved } from '../../../../src/core/geometry/moved';
import { sharedArea } from '../oracle';
import { rectangle, soleLike } from '../outlines';
import { heaped } from './heaped';

function shared(arrangement: Arrangement): number {
  const rings = Array.from({ length: arrangement.movable }, (_, piece) => {
    const { x, y } = arrangement.placeOf(piece);
    return moved(arrangement.shapeOf(piece).ring, 0, x, y);
  });
  return rings.reduce(
    (sum, ring, i) => rings.slice(0, i).reduce((rest, other) => rest + sharedArea(ring, other), sum),
    0,
  );
}

const PATIENCE = { idle: 60, strikes: 2 };

describe('separate', () => {
  it('parts pieces that lie in a heap where there is room for them', () => {
    const { arrangement, effort, random } = heaped([soleLike(80, 20), soleLike(70, 20), rectangle(30, 30)], 120, 90);
    const { reached } = separate(arrangement, random, effort, PATIENCE);
    expect(reached.loss).toBe(0);
    arrangement.restore(reached);
    expect(arrangement.loss).toBe(0);
    expect(shared(arrangement)).toBeLessThan(1e-3);
  });

  it('gives up where there is none, with less overlap than at first', () => {
    // Derived: two squares of 60 in 100 × 100.
    const { arrangement, effort, random } = heaped([rectangle(60, 60), rectangle(60, 60)], 100, 100);
    const before = arrangement.loss;
    const { reached, passes } = separate(arrangement, random, effort, PATIENCE);
    expect(passes).toBeGreaterThanOrEqual(PATIENCE.idle);
    expect(reached.loss).toBeGreaterThan(0);
    expect(reached.loss).toBeLessThan(before);
    expect(arrangement.loss).toBe(reached.loss);
  });
});

describe('disrupt', () => {
  it('lets two large pieces of different kinds change places, and small ones that they cover go along', () => {
    const rings = [rectangle(60, 50), rectangle(50, 60), rectangle(4, 4)];
    const { arrangement, random } = heaped(rings, 300, 100);
    arrangement.put(0, { shape: 0, x: 50, y: 50 });
    arrangement.put(1, { shape: 1, x: 200, y: 50 });
    // Where the second has come to cover it.
    arrangement.put(2, { shape: 2, x: 50, y: 76 });
    disrupt(arrangement, random);
    expect(arrangement.placeOf(0)).toMatchObject({ x: 200, y: 50 });
    expect(arrangement.placeOf(1)).toMatchObject({ x: 50, y: 50 });
    expect(arrangement.placeOf(2)).toMatchObject({ x: 200, y: 76 });
  });
});

describe('shorten', () => {
  it('tells of ever shorter strips and ends with the shortest: six squares of 20 on a width of 44 take 60', () => {
    const { arrangement, effort, random } = heaped(
      Array.from({ length: 6 }, () => rectangle(20, 20)),
      160,
      44,
    );
    for (let piece = 0; piece < 6; piece++) arrangement.put(piece, { shape: piece, x: 10 + 25 * piece, y: 10 });
    arrangement.updateAllLosses();
    const lengths: number[] = [];
    const best = shorten(arrangement, arrangement.save(), random, effort, ({ lengths: [length] }) =>
      lengths.push(length!),
    );
    expect(lengths).toEqual([...lengths].sort((a, b) => b - a));
    expect(best.lengths).toEqual([lengths.at(-1)]);
    // Derived.
    expect(best.lengths[0]).toBeGreaterThanOrEqual(60 - 1e-6);
    expect(best.lengths[0]).toBeLessThan(61);
    expect(shared(arrangement)).toBeLessThan(1e-3);
  });
});
