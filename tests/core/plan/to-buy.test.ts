import { describe, expect, it } from 'vitest';
import { Plan } from '../../../src/core/plan/plan';
import { purchaseLines, purchaseRows, toBuy } from '../../../src/core/plan/to-buy';
import { inputOf, STOCKS } from '../samples';

const planOf = (price: number | '') => new Plan(inputOf({ stock: STOCKS.map((one) => ({ ...one, Price: price })) }));
const sum = (list: readonly number[]) => list.reduce((all, one) => all + one, 0);

describe('what is to be bought', () => {
  it('is every stock that is cut and has a price, none without', () => {
    const plan = planOf(10);
    const cut = plan.cutting.stocks.map(({ stock }) => stock.code);
    expect(cut.length).toBeGreaterThan(1);
    expect(toBuy(plan, 0).map(({ stock }) => stock.code)).toEqual(
      plan.input.stock.map(({ code }) => code).filter((code) => cut.includes(code)),
    );
    expect(toBuy(planOf(''), 0)).toEqual([]);
  });

  it('begins with what the quick rows take, and lays each piece of the run once, not those that are cut again', () => {
    const plan = planOf(10);
    for (const spoiled of [0, 0.2]) {
      for (const one of toBuy(plan, spoiled)) {
        const pieces = sum(one.counts);
        const laid = sum(one.job.plain.flatMap(({ layout }) => layout.sheets.map(({ length }) => length)));
        expect(laid).toBe(sum(one.job.pieces.map(({ count }) => count)));
        if (spoiled === 0) expect(laid).toBe(pieces);
        else expect(laid).toBeGreaterThan(pieces);
        expect(purchaseRows(one, { shares: one.job.plain })).toHaveLength(pieces);
      }
    }
  });

  it('has the figures of the stock on its first line alone, and as many sheets as are laid', () => {
    for (const one of toBuy(planOf(10), 0)) {
      const sheets = sum(one.job.plain.map(({ layout }) => layout.sheets.length));
      const lines = purchaseLines(one, { shares: one.job.plain, cost: 10 * sheets, least: 10, known: 0 }, 10 * sheets);
      expect(sum(lines.map(({ need }) => need))).toBe(sheets);
      expect(lines.map(({ whole }) => whole?.cost)).toEqual([10 * sheets, ...lines.slice(1).map(() => undefined)]);
    }
  });
});
