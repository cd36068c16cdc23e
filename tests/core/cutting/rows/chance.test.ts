import { describe, expect, it } from 'vitest';
import { chance, laterBy } from '../../../../src/core/cutting/rows/chance';

describe('chance', () => {
  it('draws shares that are spread evenly, the same every time', () => {
    const [one, other] = [chance(), chance()];
    const tenths = Array<number>(10).fill(0);
    for (let i = 0; i < 10_000; i++) {
      const share = one();
      expect(other()).toBe(share);
      tenths[Math.floor(10 * share)]!++;
    }
    // Of 10,000 a tenth each: six standard deviations are 180 (binomial).
    for (const count of tenths) expect(Math.abs(count - 1000)).toBeLessThan(180);
  });

  it('has rows begin within what is left', () => {
    const drawn = chance();
    for (let i = 0; i < 1000; i++) {
      const share = laterBy(drawn)();
      expect(share).toBeGreaterThanOrEqual(0);
      expect(share).toBeLessThan(1);
    }
  });
});
