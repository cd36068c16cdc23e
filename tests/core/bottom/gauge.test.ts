import { describe, expect, it } from 'vitest';
import { buildBottom } from '../../../src/core/bottom/bottom';
import { gauges } from '../../../src/core/bottom/gauge';
import { rampLast } from '../ramp';
import { findSample, type Named, styleOf } from '../samples';

const BARE = {
  'Lasted substance': 0,
  Projection: 0,
  'Rounding allowance': 0,
  'Skive to': 0.1,
  'Front slant': 0,
  'Most rasping': 3,
};
const heights = (named: Named) => {
  const bottom = buildBottom(styleOf({ ...BARE, ...named }), rampLast, findSample);
  const map = gauges(bottom);
  return bottom.layers.map(({ part, item }) => ({ part, ...map.get(item) }));
};

describe('gauges on a ramp last worked by hand (derived; breast at 265.5 / 4 = 66.375 along it, 45 − 6.375 × 5 / 13 = 42.55 high)', () => {
  const BREAST = 45 - (6.375 * 5) / 13;

  it('read each lift of a wedge at its upper face, and under the tread what lies flat', () => {
    const list = heights({
      Raise: 'wedge',
      Lifts: 'Cork 11, Cork 6',
      'Most rasping': 0,
      Platform: 'Foam 10',
      Outsole: 'Rubber 4',
    });
    expect(list.map(({ back }) => back)).toEqual([59, 53, 47, 36, 25, 14, 4].map((z) => expect.closeTo(z, 6)));
    expect(list.map(({ tread }) => tread)).toEqual([...new Array<undefined>(5), 14, 4]);
    expect(list[0]?.breast).toBeCloseTo(14 + BREAST, 1);
    expect(list[2]?.breast).toBeCloseTo(47, 6);
  });

  it('read a heel with its top piece, and the sole over it at back and breast', () => {
    const list = heights({ Raise: 'heel', Lifts: 'Cork 6, Cork 4', 'Top piece': 'Rubber 6', Sole: 'Bend 4' });
    expect(list[0]).toMatchObject({ part: 'sole', back: expect.closeTo(45 + 4, 6), tread: 4 });
    expect(list.at(-1)).toMatchObject({ part: 'topPiece', back: 6, tread: undefined });
  });

  it('read the insole on the welt’s far side, and neither welt nor cover', () => {
    const bottom = buildBottom(styleOf({ ...BARE, Insole: 'Board 2', Welt: 'Bend 4' }), rampLast, findSample);
    const map = gauges(bottom);
    expect(map.get(1)).toMatchObject({ back: 6, tread: 6 });
    expect(map.has(2)).toBe(false);
  });

  it('read a bent layer upright: 11 mm on a level seat are 11, whatever the ramp', () => {
    const list = heights({ Raise: 'wedge', Laying: 'bent', Lifts: 'Cork 11, Cork 6', 'Most rasping': 0 });
    expect(list.map(({ back }) => back)).toEqual([45, 39, 33, 22, 11].map((z) => expect.closeTo(z, 6)));
  });
});
