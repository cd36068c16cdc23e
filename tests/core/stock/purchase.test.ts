import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inPacks, paid, purchase } from '../../../src/core/stock/purchase';
import type { Stock } from '../../../src/core/stock/stock';
import { stockOf } from '../samples';

const offer = (named: Partial<Stock>): Stock => ({ ...stockOf(), ...named });

/** The least cost, by trying every number of every offer. */
function leastByTrial(offers: readonly Stock[], sheets: number): number {
  const lack = Math.max(
    0,
    offers.reduce((rest, { onHand }) => rest - onHand, sheets),
  );
  const most = offers.map((one) => inPacks(one, lack));
  let least = Infinity;
  const attempt = (i: number, bought: number, cost: number): void => {
    if (i === offers.length) {
      if (bought >= lack) least = Math.min(least, cost);
      return;
    }
    const { pack, minimum, price } = offers[i]!;
    for (let n = 0; n <= Math.max(most[i]!, lack); n++) {
      if (n > 0 && (n % pack !== 0 || n < minimum)) continue;
      attempt(i + 1, bought + n, cost + n * (price ?? Infinity));
    }
  };
  attempt(0, 0, 0);
  return least;
}

const offerArbitrary = fc
  .record({
    price: fc.integer({ min: 1, max: 30 }),
    pack: fc.integer({ min: 1, max: 4 }),
    minimum: fc.integer({ min: 0, max: 6 }),
    onHand: fc.integer({ min: 0, max: 2 }),
  })
  .map(offer);
const offersArbitrary = fc.array(offerArbitrary, { minLength: 1, maxLength: 3 });
const sheetsArbitrary = fc.integer({ min: 0, max: 9 });

describe('a purchase', () => {
  it('costs the least of all numbers of all offers, tried one by one (derived)', () => {
    fc.assert(
      fc.property(offersArbitrary, sheetsArbitrary, (offers, sheets) => {
        const taken = purchase(offers, sheets);
        expect(paid(taken)).toBeCloseTo(leastByTrial(offers, sheets), 9);
        expect(taken.reduce((sum, { need }) => sum + need, 0)).toBe(sheets);
        for (const { offer: of, need, buy } of taken) {
          expect(need).toBeLessThanOrEqual(of.onHand + buy);
          expect(buy % of.pack).toBe(0);
          if (buy > 0) expect(buy).toBeGreaterThanOrEqual(of.minimum);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('never costs more for more on hand or another offer, nor less at a dearer price', () => {
    fc.assert(
      fc.property(offersArbitrary, offerArbitrary, sheetsArbitrary, fc.nat(2), (offers, another, sheets, at) => {
        const cost = (list: readonly Stock[]) => paid(purchase(list, sheets))!;
        const changed = (change: (one: Stock) => Stock) =>
          offers.map((one, i) => (i === at % offers.length ? change(one) : one));
        const before = cost(offers);
        expect(cost(changed((one) => ({ ...one, onHand: one.onHand + 1 })))).toBeLessThanOrEqual(before + 1e-9);
        expect(cost(changed((one) => ({ ...one, price: one.price! + 1 })))).toBeGreaterThanOrEqual(before - 1e-9);
        expect(cost([...offers, another])).toBeLessThanOrEqual(before + 1e-9);
      }),
      { numRuns: 300 },
    );
  });

  it('takes packs where they are cheaper, and fills up by single sheets (derived)', () => {
    const single = offer({ price: 10 });
    const packed = offer({ price: 7, pack: 5, supplier: 'Quay Cork' });
    // 7 sheets: a pack of 5 at 35 and 2 at 20 are 55; two packs are 70, seven singles 70.
    expect(purchase([single, packed], 7).map(({ buy }) => buy)).toEqual([2, 5]);
    expect(paid(purchase([single, packed], 7))).toBe(55);
    // 4 sheets: a pack, 35, is cheaper than 40.
    expect(purchase([single, packed], 4).map(({ buy }) => buy)).toEqual([0, 5]);
  });

  it('buys of the first where nothing has a price, and nothing of an offer that has none', () => {
    const [first, other] = [offer({ price: undefined }), offer({ price: undefined, onHand: 1 })];
    expect(purchase([first, other], 3).map(({ buy, need }) => [buy, need])).toEqual([
      [2, 2],
      [0, 1],
    ]);
    expect(paid(purchase([first, other], 3))).toBeUndefined();
    expect(purchase([first, offer({ price: 9 })], 3).map(({ buy }) => buy)).toEqual([0, 3]);
  });
});
