import { describe, expect, it } from 'vitest';
import { SAMPLES } from '../../../../../src/core/cutting/search/separate';
import { rectangle, soleLike } from '../../outlines';
import { heaped } from '../heaped';

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

  it('counts every place that it weighs', () => {
    const { arrangement, effort, random } = heaped([rectangle(60, 40), rectangle(50, 50)], 100, 90);
    const before = effort.spent;
    arrangement.findPlace(0, random, { near: 0, anywhere: 0 });
    // Its own place, and two for every step.
    expect((effort.spent - before) % 2).toBe(1);
    expect(effort.spent - before).toBeGreaterThan(20);
  });
});
