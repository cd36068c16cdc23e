import { describe, expect, it } from 'vitest';
import { Plan } from '../../../../src/core/plan/plan';
import { checkInWords } from '../../../../src/tables/check-in-words';
import { placeOfCheck } from '../../../../src/tables/check-place';
import { inputOf, type Named, ROUND } from '../../samples';

const RATES: readonly Named[] = [
  { Item: 'Flash-off', Value: 20, Unit: 'minutes waited' },
  { Item: 'Cure', Value: 40, Unit: 'minutes waited' },
];
const HOURS = { Item: 'Bench', Value: 5, Unit: 'hours a day' };

function told(days: number, ...rates: readonly Named[]) {
  const plan = new Plan(
    inputOf({
      styles: [{ Style: 'Betony', Last: 'Round', Insole: 'Bend 4', Sole: 'Bend 4' }],
      lasts: [{ ...ROUND, 'Heel height': 20, 'Days on last': days }],
      rates: [...RATES, ...rates],
      pairage: [{ Style: 'Betony', 38: 1 }],
    }),
  );
  return plan.checks.filter(({ kind }) => kind === 'daysOnLast');
}

describe('days on the last', () => {
  it('are told where the steps need more: a night for the insole, one for the sole, 2 × 20 and 40 of 300 minutes (derived)', () => {
    const [check] = told(1, HOURS);
    expect(check).toMatchObject({ subject: 'Round', verdict: 'lookAt', found: 1, style: 'Betony', nights: 2 });
    expect(check && 'wanted' in check ? check.wanted : NaN).toBeCloseTo(2 + 80 / 300, 9);
    expect(told(3, HOURS)).toEqual([]);
  });

  it('are held against the nights alone where no hours of a day are given', () => {
    expect(told(1)).toMatchObject([{ found: 1, wanted: 2 }]);
    expect(told(2)).toEqual([]);
  });

  it('are put right in Lasts', () => {
    const [check] = told(1, HOURS);
    if (!check) throw new Error('Nothing is told.');
    expect(placeOfCheck(check, () => undefined)).toEqual({ table: 'Lasts', code: 'Round', heading: 'Days on last' });
    expect(checkInWords(check).say).toMatch(/^Betony, .*2 nights of drying or curing/);
  });
});
