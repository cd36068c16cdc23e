import { describe, expect, it } from 'vitest';
import { lateWithHelp } from '../../../../src/core/plan/bench-days/late-orders';
import { Plan } from '../../../../src/core/plan/plan';
import { finished } from '../../../../src/core/stepwise';
import { checkInWords } from '../../../../src/tables/check-in-words';
import { inputOf, type Named, ROUND, USUAL_TABLES } from '../../samples';

const START = { Item: 'Start', Value: 46531, Unit: 'day of start' };
const helped = (pairage: readonly Named[], last: Named, rates: readonly Named[]) => {
  const plan = new Plan(inputOf({ pairage, lasts: [{ ...ROUND, ...last }], rates: [START, ...rates] }));
  const days = finished(plan.benchDays());
  const all = finished(lateWithHelp(days, plan.runs, plan.input));
  return { plan, late: all.map(({ late }) => late), helps: all.map(({ helps }) => helps) };
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

  it('are helped by another order of styles, unless that makes another late (worked by hand)', () => {
    const rates = [
      { Item: 'Bench', Value: 5, Unit: 'hours a day' },
      { Item: 'Making', Value: 300, Unit: 'minutes a pair' },
    ];
    // A pair a day. Teasel's has its last for five days, Betony's three for two: after these it is made on day 9 + 1, before
    // them on day 6 + 1, and these on day 6 + 1 instead of 5 + 1.
    const teasel = { ...USUAL_TABLES.styles[0], Style: 'Teasel', Last: 'Long' };
    const tables = (due: number) => ({
      styles: [...USUAL_TABLES.styles, teasel],
      lasts: [
        { ...ROUND, 'Days on last': 2, 'Pairs on hand': 4 },
        { ...ROUND, Last: 'Long', 'Days on last': 5, 'Pairs on hand': 4 },
      ],
      pairage: [
        { Style: 'Betony', Due: due, 37: 3 },
        { Style: 'Teasel', Due: Math.max(due, 46538), 38: 1 },
      ],
      rates: [START, ...rates],
    });
    const ahead = (due: number) => {
      const plan = new Plan(inputOf(tables(due)));
      const [teasels] = finished(plan.late()).filter(({ late }) => late.style === 'Teasel');
      expect(teasels?.late.days).toBe(2);
      return teasels?.helps?.find(({ change }) => change.ahead !== undefined);
    };
    expect(ahead(46538)).toEqual({ change: { ahead: 2 }, days: 0 });
    // Betony's, due a day sooner than it would be made then, would be late by it.
    expect(ahead(46536)).toBeUndefined();
  });

  it('give one line of Checks an order, with its sizes and what would help (bench hours, not lasts)', () => {
    const rates = [
      { Item: 'Bench', Value: 4, Unit: 'hours a day' },
      { Item: 'Making', Value: 250, Unit: 'minutes a pair' },
      { Item: 'Flash-off', Value: 0, Unit: 'minutes waited' },
      { Item: 'Cure', Value: 0, Unit: 'minutes waited' },
    ];
    const pairage = [{ Style: 'Betony', Customer: 'Mill Street', Due: 46531, 37: 1, 38: 1 }];
    const { plan } = helped(pairage, { 'Days on last': 0.1, 'Pairs on hand': 10 }, rates);
    const late = plan.checks.filter(({ kind }) => kind === 'late');
    expect(late).toMatchObject([{ row: 1, sizes: [37, 38], wanted: 46531 }]);
    const [first] = late;
    // A pair takes a day of four hours and ten minutes: the second is made on the third day.
    expect(first && checkInWords(first).say).toBe(
      'for Mill Street, sizes 37, 38: made 26 May 2027, due 24 May 2027; on time with a start 2 days of work sooner',
    );
  });

  it('are none where all is on time', () => {
    const { late } = helped([{ Style: 'Betony', Due: 46600, 38: 1 }], {}, [
      { Item: 'Bench', Value: 5, Unit: 'hours a day' },
    ]);
    expect(late).toEqual([]);
  });
});
