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
});
