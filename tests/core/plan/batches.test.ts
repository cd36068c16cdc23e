import { describe, expect, it } from 'vitest';
import { Plan } from '../../../src/core/plan/plan';
import { inputOf, type Named, ROUND, USUAL_TABLES } from '../samples';

const batches = (pairage: readonly Named[], last: Named = {}, rates: readonly Named[] = []) =>
  new Plan(inputOf({ pairage, lasts: [{ ...ROUND, ...last }], rates })).batches;

describe('batches', () => {
  it('of 9 pairs on 2 pairs of lasts for 2 days are 5, and take 10 days (derived)', () => {
    expect(batches([{ Style: 'Betony', 38: 9 }])).toMatchObject([{ from: 1, to: 5, days: 10, done: undefined }]);
  });

  it('give the lasts to the soonest due first, and let the next order fill up its last batch', () => {
    const list = batches(
      [
        { Style: 'Betony', Customer: 'Later', Due: 200, 38: 3 },
        { Style: 'Betony', Customer: 'Sooner', Due: 100, 38: 3 },
      ],
      {},
      [{ Item: 'Start', Value: 50, Unit: 'day of start' }],
    );
    expect(list).toMatchObject([
      { customer: 'Sooner', from: 1, to: 2, days: 4, done: 54 },
      { customer: 'Later', from: 2, to: 3, days: 6, done: 56 },
    ]);
  });

  it('put sizes of two systems on the same last together', () => {
    // UK 5 is a foot of 237.07 mm, EU 37.56; on lasts of EU 37.5 it has none of its own.
    const list = batches([
      { Style: 'Betony', System: 'MONDO', 240: 1 },
      { Style: 'Betony', 38: 1 },
    ]);
    expect(list.map(({ size, from, to }) => [size, from, to])).toEqual([
      [38, 1, 1],
      [38, 1, 1],
    ]);
  });

  it('take what a size has of its own before what all have', () => {
    expect(batches([{ Style: 'Betony', 38: 4 }], { 38: 4 })).toMatchObject([{ onHand: 4, to: 1 }]);
    expect(batches([{ Style: 'Betony', 38: 4 }], { 'Pairs on hand': '' })).toMatchObject([
      { onHand: undefined, to: undefined },
    ]);
    expect(batches([{ Style: 'Betony', 38: 4 }], { 'Pairs on hand': 0 })).toMatchObject([{ onHand: 0, to: undefined }]);
  });

  it('share a last between two styles', () => {
    const styles = [...USUAL_TABLES.styles, { ...USUAL_TABLES.styles[0], Style: 'Teasel' }];
    const pairage = [
      { Style: 'Betony', 38: 2 },
      { Style: 'Teasel', 38: 2 },
    ];
    expect(new Plan(inputOf({ pairage, styles })).batches.map(({ style, from, to }) => [style, from, to])).toEqual([
      ['Betony', 1, 1],
      ['Teasel', 2, 2],
    ]);
  });

  it('wait for the bench: all that is due no later, at the hours of a day (derived)', () => {
    const pairage = [
      { Style: 'Betony', Customer: 'Later', Due: 200, 38: 1 },
      { Style: 'Betony', Customer: 'Sooner', Due: 100, 38: 2, 39: 2 },
    ];
    const work = { Item: 'Making', Value: 150, Unit: 'minutes a pair' };
    const hours = { Item: 'Bench', Value: 5, Unit: 'hours a day' };
    const list = batches(pairage, {}, [work, hours, { Item: 'Start', Value: 46531, Unit: 'day of start' }]);
    // Four pairs of 2.5 hours are two days of five hours, and the later one half a day more. The first size goes on its
    // lasts after one day, the second after two, each for two days; the later pair goes on when the first comes off.
    expect(
      list.map(({ customer, size, minutes, benchDays, days, done }) => [
        customer,
        size,
        minutes,
        benchDays,
        days,
        done,
      ]),
    ).toEqual([
      ['Sooner', 38, 300, 2, 3, 46534],
      ['Later', 38, 150, 2.5, 5, 46536],
      ['Sooner', 39, 300, 2, 4, 46535],
    ]);
    const one = batches(pairage, {}, [work, { ...hours, Value: 1 }]);
    // At an hour a day they go on after 5, 13 and 10 days: the rest of day 13 is too short to coat and join.
    expect(one.map(({ benchDays }) => benchDays)).toEqual([10, 12.5, 10]);
    expect(one.map(({ days }) => days)).toEqual([7, 15, 12]);
    expect(batches(pairage, {}, [work]).map(({ benchDays, days }) => [benchDays, days])).toEqual([
      [undefined, 2],
      [undefined, 4],
      [undefined, 2],
    ]);
  });

  it('are in the making as long as one pair is: a night for the insole, one for what is bent, and its other waits (derived)', () => {
    const styles = [{ Style: 'Betony', Last: 'Round', Insole: 'Bend 4', Sole: 'Bend 4' }];
    const rates = [
      { Item: 'Bench', Value: 5, Unit: 'hours a day' },
      { Item: 'Cutting', Value: 15, Unit: 'minutes a piece' },
      { Item: 'Flash-off', Value: 20, Unit: 'minutes waited' },
      { Item: 'Cure', Value: 40, Unit: 'minutes waited' },
    ];
    const lasts = [{ ...ROUND, 'Heel height': 0, 'Days on last': 1 }];
    const [batch] = new Plan(inputOf({ styles, lasts, rates, pairage: [{ Style: 'Betony', 38: 1 }] })).batches;
    // Two pieces a foot at 15 minutes are 60, two coats, usual on leather, dry for 20 each, the joint cures for 40: 140 of 300 minutes.
    // On a flat last nothing is bent.
    expect(batch?.makingDays).toBeCloseTo(1 + 140 / 300, 9);
    // All is cut out on the day before, so that the waits and 15 s in the press are left after the night.
    expect(batch?.days).toBeCloseTo(1 + 80.25 / 300, 6);
    // On a heel the sole is bent to the lasted shoe, for the wet insole has the last to itself: a second night.
    const heeled = [{ ...lasts[0], 'Heel height': 20 }];
    const [bent] = new Plan(inputOf({ styles, lasts: heeled, rates, pairage: [{ Style: 'Betony', 38: 1 }] })).batches;
    expect(bent?.makingDays).toBeCloseTo(2 + 140 / 300, 9);
  });

  it('have waits that do not hang on one another run beside each other: a heel cures while the sole dries (worked by hand)', () => {
    const styles = [
      {
        Style: 'Betony',
        Last: 'Round',
        Sole: 'Bend 4',
        Raise: 'heel',
        Laying: 'block',
        Lifts: 'Cork 6, Cork 4',
        'Most rasping': 4,
      },
    ];
    const rates = [
      { Item: 'Bench', Value: 5, Unit: 'hours a day' },
      { Item: 'Gluing', Value: 30, Unit: 'minutes a pair' },
      { Item: 'Flash-off', Value: 20, Unit: 'minutes waited' },
      { Item: 'Cure', Value: 600, Unit: 'minutes waited' },
    ];
    const lasts = [{ ...ROUND, 'Heel height': 25, 'Days on last': 1 }];
    const [batch] = new Plan(inputOf({ styles, lasts, rates, pairage: [{ Style: 'Betony', 38: 1 }] })).batches;
    // Lifts two coats 40, their cure a night; sole dried a night, two coats 40; heel two coats 40, last cure a night. One of
    // the two first nights counts, with 40 before or after it and 40 for the heel: 2 nights and 110 of 300 minutes.
    expect(batch?.makingDays).toBeCloseTo(2 + (30 + 80) / 300, 9);
  });
});
