import { PAIRS } from '../../../src/core/cutting/sheet/matching-pairs';
import { describe, expect, it } from 'vitest';
import { Plan } from '../../../src/core/plan/plan';
import { savedTogether, savingOf, searchChances } from '../../../src/core/plan/search-chances';
import type { StockCutting } from '../../../src/core/plan/cutting';
import { inputOf, type Named, STOCKS } from '../samples';

const { stocks } = new Plan(inputOf()).cutting;

/** A stock of the sample run as if it took so many sheets, with what its row says. */
function cutting(i: number, sheets: number, least: number, named: Partial<StockCutting['stock']> = {}): StockCutting {
  const one = stocks[i]!;
  const stock = { ...one.stock, ...named };
  return { ...one, sheets, least, stock, offers: [stock] };
}

describe('what there is to be saved', () => {
  it('comes with the most money first, then what has no price, then what is proven hopeless', () => {
    const list = [
      cutting(0, 3, 3, { code: 'least', price: 99 }),
      cutting(1, 9, 4, { code: 'unpriced' }),
      cutting(0, 4, 3, { code: 'ten', price: 10 }),
      cutting(1, 5, 2, { code: 'thirty-six', price: 12 }),
    ];
    const chances = searchChances(list);
    expect(chances.map(({ cutting: { stock } }) => stock.code)).toEqual(['thirty-six', 'ten', 'unpriced', 'least']);
    expect(chances.map(({ most }) => most)).toEqual([
      { sheets: 3, money: 36 },
      { sheets: 1, money: 10 },
      { sheets: 5, money: undefined },
      { sheets: 0, money: 0 },
    ]);
    expect(chances.map(({ hopeless }) => hopeless)).toEqual([undefined, undefined, undefined, 'least']);
  });

  it('is the same however pairs are to match', () => {
    const matched = cutting(0, 5, 2, { price: 10 });
    for (const pairs of PAIRS) {
      const chances = searchChances([{ ...matched, format: { ...matched.format, pairs } }]);
      expect(chances).toMatchObject([{ hopeless: undefined, most: { sheets: 3, money: 30 } }]);
    }
  });

  it('is money that need not be paid: packs, least quantities and the shelf count (derived)', () => {
    const paid = (named: Partial<StockCutting['stock']>) => savingOf(cutting(0, 5, 2, { price: 10, ...named }), 3);
    expect(paid({})).toEqual({ sheets: 2, money: 20 });
    // 5 and 3 of packs of 5 are one pack.
    expect(paid({ pack: 5 })).toEqual({ sheets: 2, money: 0 });
    // 4 on the shelf: one to buy, or none.
    expect(paid({ onHand: 4 })).toEqual({ sheets: 2, money: 10 });
    expect(paid({ minimum: 5 })).toEqual({ sheets: 2, money: 0 });
  });

  it('has no money where a price cannot be told', () => {
    expect(savingOf(cutting(0, 5, 2, { price: 4, soldBy: 'kg', density: undefined }), 3)).toEqual({
      sheets: 2,
      money: undefined,
    });
    expect(savedTogether([{ sheets: 2, money: undefined }])).toEqual({ sheets: 2, money: undefined });
    expect(
      savedTogether([
        { sheets: 2, money: undefined },
        { sheets: 1, money: 7 },
        { sheets: 3, money: 5 },
      ]),
    ).toEqual({ sheets: 6, money: 12 });
  });

  it('is proven: what an offcut holds and what no sheet can hold are in the least (derived)', () => {
    // Six pairs of outsoles of one sheet: none could take less than their area over the sheet's.
    const wide: readonly Named[] = STOCKS.map((one) => ({ ...one, Price: 5 }));
    for (const { cutting: one, most, hopeless } of searchChances(new Plan(inputOf({ stock: wide })).cutting.stocks)) {
      const area = one.net / (one.stock.length * one.stock.width);
      expect(one.least).toBeGreaterThanOrEqual(Math.ceil(area - 1e-9));
      expect(most).toEqual(
        hopeless ? { sheets: 0, money: 0 } : { sheets: one.sheets - one.least, money: 5 * (one.sheets - one.least) },
      );
    }
  });
});
