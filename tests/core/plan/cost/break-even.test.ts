import { describe, expect, it } from 'vitest';
import { breakEven } from '../../../../src/core/plan/cost/break-even';

describe('breakEven', () => {
  it('of 6 sizes at 1000, making at 18 and buying at 6, is 500 pairs (derived)', () => {
    expect(breakEven(6 * 1000, 18, 6).pairs).toBe(500);
  });

  it('comes of what a bought pair saves: 18 less 6 (derived)', () => {
    expect(breakEven(6 * 1000, 18, 6).saving).toBe(12);
  });

  it('is the first whole number of pairs for which buying costs no more, tried one by one', () => {
    for (const [tooling, make, buy] of [
      [0, 2, 1],
      [100, 3.7, 1.2],
      [999, 12.1, 11.9],
    ] as const) {
      let pairs = 0;
      while (tooling + buy * pairs > make * pairs + 1e-9) pairs += 1;
      expect(breakEven(tooling, make, buy).pairs).toBe(pairs);
    }
  });

  it('is no less than the least order', () => {
    expect(breakEven(100, 18, 6, 60).pairs).toBe(60);
    expect(breakEven(6000, 18, 6, 60).pairs).toBe(500);
  });

  it('refuses a bought pair that is no cheaper', () => {
    expect(() => breakEven(100, 6, 6)).toThrow('no cheaper than a built one at 6, so buying never pays');
  });
});
