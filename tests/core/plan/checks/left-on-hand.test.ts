import { describe, expect, it } from 'vitest';
import { Plan } from '../../../../src/core/plan/plan';
import { checkInWords } from '../../../../src/tables/check-in-words';
import { placeOfCheck } from '../../../../src/tables/check-place';
import { inputOf, type Named, STOCKS } from '../../samples';

/** A run whose platform may be cut from its own row in Bottom stock, or as it is offered. */
function told(own: Named, offer: Named) {
  const stock = STOCKS.map((one) => ({ ...one, Price: 10, ...(one.Stock === 'Foam 10' && own) }));
  const offers = [{ Stock: 'Foam 10', ...offer }];
  const pairage = [{ Style: 'Betony', 36: 6, 37: 8, 38: 9, 39: 7, 40: 4 }];
  return new Plan(inputOf({ pairage, stock, offers })).checks.filter(({ kind }) => kind === 'leftOnHand');
}

describe('sheets on hand that stay whole', () => {
  it('are told where others of their stock are bought, of the stock’s own row', () => {
    // No platform lies on so small a sheet.
    const found = told({ Width: 100, Length: 100, 'On hand': 1 }, { Width: 1000, Length: 1200, Price: 12 });
    expect(found).toMatchObject([{ verdict: 'lookAt', subject: 'Foam 10', sheets: 1, width: 100, length: 100 }]);
    expect(found.map((check) => checkInWords(check).say)).toEqual([
      expect.stringMatching(
        /^1 on hand of 100 × 100 stays uncut while \d+ of another format (is|are) bought: no layout with it that was tried costs less$/,
      ),
    ]);
    expect(found.map((check) => placeOfCheck(check, () => undefined))).toEqual([
      { table: 'Bottom stock', code: 'Foam 10', heading: 'On hand' },
    ]);
  });

  it('are told by their row in Offers where they are one’s', () => {
    const [check] = told({}, { Width: 100, Length: 100, 'On hand': 2 });
    expect(placeOfCheck(check!, () => undefined)).toEqual({ table: 'Offers', row: 1, heading: 'On hand' });
    expect(checkInWords(check!).say).toMatch(
      /^2 on hand of 100 × 100 stay uncut .* no layout with them that was tried/,
    );
  });

  it('are not told where they are cut first, or where they are of the format that is bought', () => {
    expect(told({}, { Width: 700, Length: 900, 'On hand': 2 })).toEqual([]);
    expect(told({ 'On hand': 1 }, { Price: 7 })).toEqual([]);
    expect(told({ 'On hand': 99 }, { Width: 1000, Length: 1200, Price: 12 })).toEqual([]);
  });
});
