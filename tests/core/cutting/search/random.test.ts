import { describe, expect, it } from 'vitest';
import { Random } from '../../../../src/core/cutting/search/random';

const MANY = 20_000;
const draw = (random: Random, one: () => number) => Array.from({ length: MANY }, () => one.call(random));
const mean = (list: readonly number[]) => list.reduce((sum, value) => sum + value, 0) / list.length;

describe('Random', () => {
  it('gives the same for the same seed and another for another', () => {
    const of = (seed: number) =>
      Array.from(
        { length: 5 },
        (
          (random) => () =>
            random.share()
        )(new Random(seed)),
      );
    expect(of(7)).toEqual(of(7));
    expect(of(7)).not.toEqual(of(8));
  });

  it('spreads shares evenly: mean a half, variance a twelfth, every tenth alike', () => {
    const random = new Random(1);
    const shares = draw(random, () => random.share());
    expect(Math.min(...shares)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...shares)).toBeLessThan(1);
    expect(Math.abs(mean(shares) - 0.5)).toBeLessThan(0.01);
    expect(Math.abs(mean(shares.map((share) => (share - 0.5) ** 2)) - 1 / 12)).toBeLessThan(0.003);
    for (let tenth = 0; tenth < 10; tenth++) {
      const count = shares.filter((share) => Math.floor(10 * share) === tenth).length;
      // Five standard deviations of a count of 20,000 with chance 0.1.
      expect(Math.abs(count - MANY / 10)).toBeLessThan(5 * Math.sqrt(MANY * 0.09));
    }
  });

  it('spreads errors as errors are spread: mean 0, deviation 1, 68 % within one', () => {
    const random = new Random(2);
    const errors = draw(random, () => random.normal());
    expect(Math.abs(mean(errors))).toBeLessThan(0.04);
    expect(Math.abs(mean(errors.map((error) => error ** 2)) - 1)).toBeLessThan(0.06);
    expect(errors.filter((error) => Math.abs(error) < 1).length / MANY).toBeCloseTo(0.683, 1);
  });

  it('shuffles every entry to every place alike', () => {
    const random = new Random(3);
    const counts = Array.from({ length: 16 }, () => 0);
    for (let i = 0; i < 8000; i++) {
      const list = [0, 1, 2, 3];
      random.shuffle(list);
      list.forEach((entry, place) => counts[4 * entry + place]!++);
    }
    for (const count of counts) expect(Math.abs(count - 2000)).toBeLessThan(200);
  });
});
