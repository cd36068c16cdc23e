import { describe, expect, it } from 'vitest';
import { cheapestCover } from '../../../../src/core/cutting/buy/cover';
import { highsInNode } from '../../../highs';

const solver = await highsInNode();

describe('the cheapest cover', () => {
  it('of bars of 10 cut into 3 and 5: seven of 3 and three of 5 take 3.83, parts counted (derived)', () => {
    const patterns = [
      { cost: 1, counts: [3, 0] },
      { cost: 1, counts: [1, 1] },
      { cost: 1, counts: [0, 2] },
    ];
    const wanted = [7, 3];
    const { values, prices } = cheapestCover(patterns, wanted, solver)!;
    const cost = values.reduce((sum, value) => sum + value, 0);
    // A third of a bar for each of 3, half of one for each of 5, and no pattern holds more than it costs.
    expect(cost).toBeCloseTo(7 / 3 + 3 / 2, 9);
    // By duality the prices of what is wanted come to as much.
    expect(prices[0]! * wanted[0]! + prices[1]! * wanted[1]!).toBeCloseTo(cost, 9);
    for (const { counts } of patterns) expect(prices[0]! * counts[0]! + prices[1]! * counts[1]!).toBeLessThan(1 + 1e-9);
  });

  it('asks nothing for what is not wanted, and there is none where a piece is in no pattern', () => {
    const patterns = [{ cost: 2, counts: [4, 0] }];
    expect(cheapestCover(patterns, [2, 0], solver)).toEqual({ values: [0.5], prices: [0.5, 0] });
    expect(cheapestCover(patterns, [2, 1], solver)).toBeUndefined();
  });
});
