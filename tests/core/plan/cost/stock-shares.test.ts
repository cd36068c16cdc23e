import { describe, expect, it } from 'vitest';
import { costOfArea, stockShares } from '../../../../src/core/plan/cost/stock-shares';
import { Plan } from '../../../../src/core/plan/plan';
import { inputOf, STOCKS, USUAL_TABLES } from '../../samples';

const run = (price: number | '') =>
  new Plan(
    inputOf({
      stock: STOCKS.map((one) => ({ ...one, Price: price })),
      styles: [...USUAL_TABLES.styles, { ...USUAL_TABLES.styles[0], Style: 'Teasel' }],
      pairage: [...USUAL_TABLES.pairage, { Style: 'Teasel', 38: 5 }],
    }),
  );

describe('what a style has of the sheets', () => {
  it('comes to all of each stock over the styles, in area and in money (derived)', () => {
    const { runs, orders } = run(10);
    for (const order of orders) {
      const { stock, netOfStock } = order.cutting;
      const own = runs.styles.flatMap((one) => stockShares(one, orders)).filter((one) => one.stock === stock);
      expect(own.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
      expect(own.reduce((sum, { money }) => sum + money, 0)).toBeCloseTo(10 * order.need, 9);
      expect(costOfArea(order, netOfStock / 2)).toBeCloseTo(5 * order.need, 9);
    }
    expect(orders.length).toBeGreaterThan(2);
  });

  it('is nothing where sheets have no price', () => {
    const { runs, orders } = run('');
    expect(stockShares(runs.styles[0]!, orders)).toEqual([]);
    expect(costOfArea(orders[0]!, 100)).toBeUndefined();
  });
});
