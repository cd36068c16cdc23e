import { describe, expect, it } from 'vitest';
import { Plan } from '../../../../src/core/plan/plan';
import { checkInWords } from '../../../../src/tables/check-in-words';
import { inputOf, type Named, USUAL_TABLES } from '../../samples';

const share = (value: number, own: Named = {}): Named => ({
  Item: 'Spoilage',
  Value: value,
  Unit: 'share spoiled',
  ...own,
});
const planOf = (rates: readonly Named[], pairage: readonly Named[] = [{ Style: 'Betony', 38: 10 }]) =>
  new Plan(
    inputOf({
      rates,
      pairage,
      styles: [{ Style: 'Betony', Last: 'Round', Sole: 'Bend 4', Outsole: 'Rubber 4' }],
    }),
  );
const told = (plan: Plan) => plan.checks.filter(({ kind }) => kind === 'spoiled');

describe('a share spoiled', () => {
  it('is told to be in the cost alone, with the pieces that it stands for: 0.1 × 2 × 10 soles and 0.05 × 20 outsoles (derived)', () => {
    const found = told(planOf([share(0.05), share(0.1, { For: 'leather' })]));
    expect(found).toMatchObject([{ verdict: 'holds', subject: 'Costs and times', pieces: 3, of: 40 }]);
    expect(found.map((check) => checkInWords(check).say).join()).toMatch(
      /^some 3 of 40 pieces are in the cost alone, and no spare is cut or bought: /,
    );
  });

  it('buys nothing: the sheets are as many without it', () => {
    const need = (plan: Plan) => plan.orders.map((order) => order.need);
    expect(need(planOf([share(0.5)]))).toEqual(need(planOf([])));
  });

  it('is not told where none is given, nor where all pairs are cut', () => {
    expect(told(planOf([]))).toEqual([]);
    expect(told(planOf(USUAL_TABLES.rates))).toEqual([]);
    expect(told(planOf([share(0.05)], [{ Style: 'Betony', Cut: 46531, 38: 10 }]))).toEqual([]);
  });
});
