import { describe, expect, it } from 'vitest';
import { chooseMixes, coursesOf } from '../../../src/core/bottom/courses';
import { lastInSize } from '../../../src/core/last/last-in-size';
import { findSample, lastOf, type Named, stockOf, STOCKS, styleOf } from '../samples';

const last = lastInSize(lastOf(), 38, 'EU');
const courses = (named: Named) => coursesOf(styleOf(named), last, findSample, {});
const parts = (list: ReturnType<typeof courses>['following']) =>
  list.map(({ part, underSeat, underTread }) => `${part}${underSeat ? ' seat' : ''}${underTread ? ' tread' : ''}`);

describe('coursesOf', () => {
  it('lies platform and outsole flat under a wedge, and bends them on without one', () => {
    const named = { Sole: 'Bend 4', Platform: 'Foam 8', Outsole: 'Rubber 4' };
    const wedge = courses({ ...named, Raise: 'wedge' });
    expect([parts(wedge.following), parts(wedge.flat)]).toEqual([
      ['sole seat tread'],
      ['platform seat tread', 'outsole seat tread'],
    ]);
    const none = courses(named);
    expect([none.following.length, none.flat.length]).toEqual([3, 0]);
  });

  it('ends an outsole, and a sole that goes down it, at the breast of a heel', () => {
    const heel = courses({
      Raise: 'heel',
      Sole: 'Bend 4',
      'Sole ends': 'down the breast',
      Outsole: 'Rubber 4',
      'Top piece': 'Rubber 6',
    });
    expect(parts(heel.following)).toEqual(['sole tread', 'outsole tread']);
    expect(heel.topPiece).toMatchObject({ underSeat: true, underTread: false });
    // 40 and what lies under the tread alone, less the top piece.
    expect(heel.liftHeight).toBe(40 + 4 + 4 - 6);
  });

  it('puts insole, midsole and sole in this order against the last', () => {
    expect(
      parts(courses({ Sole: 'Bend 4', Midsole: 'Bend 4', Insole: 'Board 2' }).following).map(
        (one) => one.split(' ')[0],
      ),
    ).toEqual(['insole', 'midsole', 'sole']);
  });
});

describe('chooseMixes', () => {
  it('lets prices decide between mixes that are equal otherwise, and only then', () => {
    const find = (prices: readonly [number, number]) => (code: string) => {
      const i = code === 'A' ? 0 : 1;
      return stockOf({ ...STOCKS[0], Stock: code, Thick: 8, Price: prices[i] });
    };
    const counts = (prices: readonly [number, number]) =>
      chooseMixes(styleOf({ Raise: 'wedge', Lifts: 'A, B' }), last, find(prices)).lifts?.counts;
    expect(counts([5, 9])).toEqual([5, 0]);
    expect(counts([9, 5])).toEqual([0, 5]);
  });

  it('counts bent layers square to the pitched seat: 40 mm at 8.89° are 39.52 (derived)', () => {
    const steep = styleOf({ Raise: 'wedge', Laying: 'bent', Lifts: 'Cork 7, Cork 3', 'Most rasping': 3 });
    const { lifts } = chooseMixes(steep, last, findSample);
    expect((lifts?.built ?? 0) - (lifts?.rasped ?? 0)).toBeCloseTo(40 * Math.cos((40 / 4.5) * (Math.PI / 180)), 1);
  });
});
