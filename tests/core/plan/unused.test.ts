import { describe, expect, it } from 'vitest';
import { unreadRates, unusedParts } from '../../../src/core/plan/unused';
import { inputOf, type Named, ratesOf, styleOf } from '../samples';

describe('unusedParts', () => {
  it('are lifts without a raise and a top piece without a heel', () => {
    expect(unusedParts(styleOf({ Lifts: 'Cork 6' }))).toEqual(['lift']);
    expect(unusedParts(styleOf({ Lifts: 'Cork 6', Raise: 'wedge', 'Top piece': 'Rubber 6' }))).toEqual(['topPiece']);
    expect(unusedParts(styleOf({ Lifts: 'Cork 6', Raise: 'heel', 'Top piece': 'Rubber 6' }))).toEqual([]);
  });
});

describe('unreadRates', () => {
  const unread = (...rows: readonly Named[]) =>
    unreadRates({ ...inputOf(), rates: ratesOf(...rows) }).map(({ rate, why }) => `${rate.row} ${why}`);

  it('are rows for what is no style, stock or material, and rows that another holds for already', () => {
    expect(
      unread(
        { Value: 30, Unit: 'money an hour' },
        { Value: 40, Unit: 'money an hour', For: 'BETONY' },
        { Value: 50, Unit: 'money an hour', For: 'Thistle' },
        { Value: 60, Unit: 'money an hour' },
      ),
    ).toEqual(['3 scope', '4 twice']);
  });

  it('are not rows that add up, unless they are the same item for the same', () => {
    expect(
      unread(
        { Item: 'Cutting', Value: 1, Unit: 'minutes a piece' },
        { Item: 'Marking', Value: 1, Unit: 'minutes a piece' },
        { Item: 'Cutting', Value: 2, Unit: 'minutes a piece', For: 'Cork' },
        { Item: ' cutting', Value: 2, Unit: 'minutes a piece' },
      ),
    ).toEqual(['4 twice']);
  });

  it('are not two rows of one item that are spent on different kinds of steps', () => {
    const row = { Item: 'Shaping', Value: 5, Unit: 'minutes a pair' };
    expect(unread({ ...row, Step: 'saw' }, { ...row, Step: 'rasp' }, { ...row, Step: 'saw' })).toEqual(['3 twice']);
  });

  it('are no shares spoiled of a sheet or a material', () => {
    expect(
      unread({ Value: 0.1, Unit: 'share spoiled', For: 'cork' }, { Value: 0.1, Unit: 'share spoiled', For: 'Bend 4' }),
    ).toEqual([]);
  });

  it('are rows that hold for something that their unit does not hold for', () => {
    expect(
      unread(
        { Value: 5, Unit: 'minutes a pair', For: 'Cork 6' },
        { Value: 5, Unit: 'minutes a pair', For: 'Betony' },
        { Value: 7, Unit: 'hours a day', For: 'Betony' },
        { Value: 2, Unit: 'coats', For: 'cork' },
      ),
    ).toEqual(['1 styles alone', '3 all alone']);
  });

  it('are not waits of several kinds', () => {
    expect(
      unread(
        { Item: 'Cure', Value: 600, Unit: 'minutes waited' },
        { Item: 'Drying', Value: 60, Unit: 'minutes waited' },
        { Item: 'cure', Value: 700, Unit: 'minutes waited' },
      ),
    ).toEqual(['3 twice']);
  });
});
