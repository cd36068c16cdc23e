import { describe, expect, it } from 'vitest';
import { Arrangement } from '../../../../src/core/cutting/search/arrangement';
import { disrupt } from '../../../../src/core/cutting/search/disrupt';
import { Effort } from '../../../../src/core/cutting/search/effort';
import { Overlaps } from '../../../../src/core/cutting/search/overlaps';
import { Random } from '../../../../src/core/cutting/search/random';
import { SAMPLES, separate } from '../../../../src/core/cutting/search/separate';
import { Space } from '../../../../src/core/cutting/search/space';
import { shorten } from '../../../../src/core/cutting/search/strip';
import { inTurns } from '../../../../src/core/cutting/search/turned-outline';
import { moved } from '../../../../src/core/geometry/moved';
import type { Ring } from '../../../../src/core/geometry/ring';
import { sharedArea } from '../oracle';
import { rectangle, soleLike } from '../outlines';

/** Pieces, one of each ring, all laid on one spot of a rectangle. */
function heaped(rings: readonly Ring[], length: number, width: number, evaluations = 3e5) {
  const shapes = rings.flatMap((ring, kind) => inTurns(ring, kind, [0], rings.length));
  const effort = new Effort(evaluations, { stopped: false });
  const choices = rings.map((_, i) => [i]);
  const arrangement = new Arrangement(new Overlaps(shapes), new Space([length], [width]), choices, effort);
  rings.forEach((_, piece) => arrangement.put(piece, { shape: piece, x: length / 2, y: width / 2 }));
  arrangement.updateAllLosses();
  return { arrangement, effort, random: new Random(3) };
}

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

describe('findPlace', () => {
  it('never finds a place where the piece loses more than where it lies', () => {
    const { arrangement, random } = heaped(
      [soleLike(90, 20), soleLike(80, 20), rectangle(60, 40), rectangle(50, 50)],
      140,
      90,
    );
    for (let i = 0; i < 40; i++) {
      const piece = i % 4;
      const before = arrangement.lossOf(piece);
      arrangement.put(piece, arrangement.findPlace(piece, random, SAMPLES));
      arrangement.updateLosses(piece);
      expect(arrangement.lossOf(piece)).toBeLessThanOrEqual(before * (1 + 1e-9));
    }
  });

  it('finds the free ground of an empty sheet', () => {
    const { arrangement, random } = heaped([rectangle(30, 30), rectangle(30, 30)], 200, 200);
    const { x, y } = arrangement.findPlace(0, random, SAMPLES);
    expect(arrangement.free(0, 0, x, y)).toBe(true);
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
