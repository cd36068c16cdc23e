import { describe, expect, it } from 'vitest';
import { helpsFor, lateOrders } from '../../../../src/core/plan/bench-days/late-orders';
import { Plan } from '../../../../src/core/plan/plan';
import { finished } from '../../../../src/core/stepwise';
import { inputOf, type Named, ROUND } from '../../samples';

const START = { Item: 'Start', Value: 46531, Unit: 'day of start' };
const helped = (pairage: readonly Named[], last: Named, rates: readonly Named[]) => {
  const plan = new Plan(inputOf({ pairage, lasts: [{ ...ROUND, ...last }], rates: [START, ...rates] }));
  const days = finished(plan.benchDays());
  const late = lateOrders(days);
  return { late, helps: late.map((one) => finished(helpsFor(one, days, plan.runs, plan.input))) };
};

describe('late orders', () => {
  it('that wait for lasts are helped by another pair of these, or days sooner; more hours do not help (worked by hand)', () => {
    const { late, helps } = helped(
      [{ Style: 'Betony', Due: 46535, 38: 4 }],
      { 'Pairs on hand': 1, 'Days on last': 2 },
      [{ Item: 'Bench', Value: 5, Unit: 'hours a day' }],
    );
    // One pair of lasts is taken four times for two days: made on the ninth day. With two pairs, on the fifth.
    expect(late).toMatchObject([{ style: 'Betony', due: 46535, made: 46539, days: 4 }]);
    expect(helps).toEqual([
      [
        { change: { moreLasts: { last: 'Round', sizes: [38], pairs: 1 } }, days: 0 },
        // Lines stand on five of the days between, since the last is taken all the while.
        { change: { sooner: 4 }, days: 0 },
      ],
    ]);
  });

  it('that wait for the bench are helped by longer days (worked by hand)', () => {
    const rates = [
      { Item: 'Bench', Value: 4, Unit: 'hours a day' },
      { Item: 'Making', Value: 500, Unit: 'minutes a pair' },
      { Item: 'Flash-off', Value: 0, Unit: 'minutes waited' },
      { Item: 'Cure', Value: 0, Unit: 'minutes waited' },
    ];
    const { late, helps } = helped([{ Style: 'Betony', Due: 46532, 38: 1 }], { 'Days on last': 0.1 }, rates);
    expect(late).toMatchObject([{ days: 1 }]);
    // 500 minutes are more than twice four hours, and less than twice five.
    expect(helps[0]?.[0]).toEqual({ change: { moreHours: 1 }, days: 0 });
  });

  it('are none where all is on time', () => {
    const { late } = helped([{ Style: 'Betony', Due: 46600, 38: 1 }], {}, [
      { Item: 'Bench', Value: 5, Unit: 'hours a day' },
    ]);
    expect(late).toEqual([]);
  });
});
