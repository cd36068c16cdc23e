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
    const named = { Sole: 'Bend 4', Platform: 'Foam 10', Outsole: 'Rubber 4' };
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
    // 45 and what lies under the tread alone, less the top piece.
    expect(heel.liftHeight).toBe(45 + 4 + 4 - 6);
  });

  it('puts insole, midsole and sole in this order against the last', () => {
    expect(
      parts(courses({ Sole: 'Bend 4', Midsole: 'Bend 4', Insole: 'Board 2' }).following).map(
        (one) => one.split(' ')[0],
      ),
    ).toEqual(['insole', 'midsole', 'sole']);
  });
});

describe('a block that goes on under the tread', () => {
  const unit = { Raise: 'wedge', Laying: 'block', Lifts: 'Cork 6', Outsole: 'Rubber 4', 'Finished heel': 67 };

  it('reaches the finished heel by itself where no platform is named: 67 − 45 − 4 are 18 under the tread (derived)', () => {
    expect(courses(unit)).toMatchObject({ through: 18, liftHeight: 45 + 18 });
    expect(courses({ ...unit, Platform: 'Foam 10' }).through).toBe(0);
    expect(courses({ ...unit, 'Finished heel': '' })).toMatchObject({ through: 0, liftHeight: 45 });
    expect(courses({ ...unit, Raise: 'heel' }).through).toBe(0);
  });

  it('is told of where lifts are laid otherwise, and where the last stands higher already', () => {
    const slip = (named: Named) => {
      try {
        chooseMixes(styleOf({ ...unit, 'Most rasping': 6, ...named }), last, findSample);
        return '';
      } catch (error) {
        return (error as Error).message;
      }
    };
    expect(slip({})).toBe('');
    expect(slip({ Laying: 'flat' })).toContain('set Laying to block');
    expect(slip({ 'Finished heel': 49 })).toMatch(
      /Finished heel: without a platform the bottom stands 49 mm high already/,
    );
  });
});

describe('chooseMixes', () => {
  it('lets prices decide between mixes that are equal otherwise, and only then', () => {
    const find = (prices: readonly [number, number]) => (code: string) => {
      const i = code === 'A' ? 0 : 1;
      return stockOf({ ...STOCKS[0], Stock: code, Thick: 9, Price: prices[i] });
    };
    const counts = (prices: readonly [number, number]) =>
      chooseMixes(styleOf({ Raise: 'wedge', Lifts: 'A, B' }), last, find(prices)).lifts?.counts;
    expect(counts([5, 9])).toEqual([5, 0]);
    expect(counts([9, 5])).toEqual([0, 5]);
  });

  it('compares prices by the area that they buy, whatever the sheets are sold by', () => {
    const counts = (a: Named, b: Named) => {
      const find = (code: string) => stockOf({ ...STOCKS[0], Thick: 9, ...(code === 'A' ? a : b), Stock: code });
      return chooseMixes(styleOf({ Raise: 'wedge', Lifts: 'A, B' }), last, find).lifts?.counts;
    };
    // A sheet of 1000 × 500 for 9 is 18 a m².
    expect(counts({ Price: 9 }, { Price: 10, 'Sold by': 'm²' })).toEqual([0, 5]);
    // Twice the sheet for 12 is 12 a m².
    expect(counts({ Price: 9 }, { Price: 12, Width: 1000 })).toEqual([0, 5]);
    // 9 mm of 250 kg/m³ are 2.25 kg a m²: 8 a kg is 18 too, and 7 a kg less.
    expect(counts({ Price: 9 }, { Price: 7, 'Sold by': 'kg' })).toEqual([0, 5]);
    // A price that is not known decides nothing: the first stays.
    expect(counts({ Price: 9 }, { Price: '' })).toEqual(counts({}, {}));
    expect(counts({ Price: 9 }, { Price: 1, 'Sold by': 'kg', Density: '' })).toEqual(counts({}, {}));
  });

  it('reaches a finished heel with what welt, sole, outsole and a wedge leave for the platform (derived: 75 − 45 − 4 − 4 = 22)', () => {
    const style = { Sole: 'Bend 4', Outsole: 'Rubber 4', Platform: 'Foam 10, Cork 4, Cork 6', 'Most rasping': 0 };
    const built = (named: Named) => chooseMixes(styleOf({ ...style, ...named }), last, findSample).platform?.built;
    expect(built({ Raise: 'wedge', Lifts: 'Cork 6, Cork 4', 'Finished heel': 75, 'Most rasping': 3 })).toBe(22);
    expect(built({ 'Finished heel': 24 })).toBe(16);
  });

  it('counts bent layers square to the pitched seat: 45 mm at 45 / 4.5 = 10° are 44.32 (derived)', () => {
    const steep = styleOf({ Raise: 'wedge', Laying: 'bent', Lifts: 'Cork 6, Cork 4', 'Most rasping': 3 });
    const { lifts } = chooseMixes(steep, last, findSample);
    expect((lifts?.built ?? 0) - (lifts?.rasped ?? 0)).toBeCloseTo(45 * Math.cos(10 * (Math.PI / 180)), 1);
  });
});
