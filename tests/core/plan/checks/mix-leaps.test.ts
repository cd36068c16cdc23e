import { describe, expect, it } from 'vitest';
import { Plan } from '../../../../src/core/plan/plan';
import { checkInWords } from '../../../../src/tables/check-in-words';
import { placeOfCheck } from '../../../../src/tables/check-place';
import { CORK_6, inputOf, type Named, STOCKS, USUAL_TABLES } from '../../samples';

const CORK_3: Named = { ...CORK_6, Stock: 'Cork 3', Thick: 3 };

/** 45 mm of lifts from sheets of 6 and 3 mm. */
function leapsWith(sixes: Named, rasping: number, threes: Named = {}) {
  const stock = [...STOCKS, { ...CORK_3, ...threes }].map((one) =>
    one.Stock === 'Cork 6' ? { ...one, ...sixes } : one,
  );
  const styles = [{ ...USUAL_TABLES.styles[0], Lifts: 'Cork 6, Cork 3', 'Most rasping': rasping }];
  return new Plan(inputOf({ stock, styles })).checks.filter(({ kind }) => kind === 'mixLeap');
}

/*
 * Worked by hand. As sold 7 × 6 + 3 = 45. With sheets of 5.9, a of these and b of 3 build 3 × (2a + b) − 0.1a, the least
 * that reaches 45 being 48 − 0.1a: within 1 mm from a = 20 on, which is too high; so 15 × 3 remain. 8 × 5.9 = 47.2, and
 * nothing of fewer than 11 layers lies lower: a = 8 is the most in 48 − 0.1a. That is 2.2 to rasp: 2.5 in halves.
 */
describe('a mix that leaps', () => {
  it('is told with the rasping that keeps it', () => {
    const found = leapsWith({ Measured: 5.9 }, 1);
    expect(found).toMatchObject([
      {
        subject: 'Betony',
        verdict: 'lookAt',
        part: 'lift',
        found: 1,
        wanted: 2.5,
        layers: [{ count: 15, thickness: 3 }],
        asSold: [
          { count: 7, thickness: 6 },
          { count: 1, thickness: 3 },
        ],
        kept: [{ count: 8, thickness: 5.9 }],
      },
    ]);
    expect(found.map((check) => checkInWords(check).say)).toEqual([
      'as the sheets measure, the lifts are 15 of 3; as sold 7 of 6 and 1 of 3: with 2.5 of rasping 8 of 5.9, so enter that under Most rasping',
    ]);
    expect(found.map((check) => placeOfCheck(check, () => 'Round'))).toEqual([
      { table: 'Styles', code: 'Betony', heading: 'Most rasping' },
    ]);
  });

  it('is kept by the rasping told, and none leaps where sheets are as sold', () => {
    expect(leapsWith({ Measured: 5.9 }, 2.5)).toEqual([]);
    expect(leapsWith({ Measured: 6 }, 1)).toEqual([]);
    expect(leapsWith({}, 1)).toEqual([]);
  });

  it('leads to the stock that allows no more', () => {
    const found = leapsWith({ Measured: 5.9 }, 3, { 'Most rasping': 1 });
    expect(found.map((check) => placeOfCheck(check, () => 'Round'))).toEqual([
      { table: 'Bottom stock', code: 'Cork 3', heading: 'Most rasping' },
    ]);
  });
});

/*
 * A heel of 45 from sheets of 6.6 and 4: 7 × 6.6 = 46.2 has 1.2 to rasp. With 1 mm nothing of 7 or fewer layers will do: 6 × 6.6 + 4
 * = 43.6 is too low. Of 8: 4 × 6.6 + 4 × 4 = 42.4, 5 × 6.6 + 3 × 4 = 45 (worked by hand).
 */
describe('a little more rasping than is allowed', () => {
  const found = (rasping: number, own: Named = {}) => {
    const stock = STOCKS.map((one) => (one.Stock === 'Cork 6' ? { ...one, Thick: 6.6, ...own } : one));
    const styles = [{ ...USUAL_TABLES.styles[0], 'Most rasping': rasping }];
    return new Plan(inputOf({ stock, styles })).checks.filter(({ kind }) => kind === 'mixLeap');
  };

  it('is told where it saves a lift, with the lifts that it leaves', () => {
    expect(
      found(1).map((check) => [check.verdict, checkInWords(check).say, placeOfCheck(check, () => 'Round')]),
    ).toEqual([
      [
        'lookAt',
        'the lifts are 5 of 6.6 and 3 of 4: with 1.2 of rasping 7 of 6.6, so enter that under Most rasping',
        { table: 'Styles', code: 'Betony', heading: 'Most rasping' },
      ],
    ]);
    const kept = new Plan(
      inputOf({
        stock: STOCKS.map((one) => (one.Stock === 'Cork 6' ? { ...one, Thick: 6.6 } : one)),
        styles: [{ ...USUAL_TABLES.styles[0], 'Most rasping': 1.2 }],
      }),
    ).runs.styles[0]?.sizes[0]?.bottom.lifts;
    expect(kept?.counts).toEqual([7, 0]);
  });

  it('is not told where it is allowed or far more, and leads to the sheet that allows no more', () => {
    expect(found(1.2)).toEqual([]);
    expect(found(0.6)).toEqual([]);
    expect(found(3, { 'Most rasping': 1 }).map((check) => placeOfCheck(check, () => 'Round'))).toEqual([
      { table: 'Bottom stock', code: 'Cork 6', heading: 'Most rasping' },
    ]);
  });
});
