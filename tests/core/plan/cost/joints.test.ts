import { describe, expect, it } from 'vitest';
import { buildBottom } from '../../../../src/core/bottom/bottom';
import { area } from '../../../../src/core/geometry/area';
import { joints } from '../../../../src/core/plan/cost/joints';
import { rampLast } from '../../ramp';
import { findSample, type Named, styleOf } from '../../samples';

const BARE = {
  'Lasted substance': 0,
  Projection: 0,
  'Rounding allowance': 0,
  'Skive to': 0.1,
  'Front slant': 0,
  'Most rasping': 0,
};
const build = (named: Named) => buildBottom(styleOf({ ...BARE, ...named }), rampLast, findSample);
const told = (named: Named) =>
  joints(build(named)).map(
    ({ above, below, sewn }) => `${above?.part ?? 'lasted'} ${sewn ? 'sewn' : '-'} ${below.part}`,
  );

describe('joints', () => {
  it('of a ramp wedge are 93 cm² to the last, 412.95 cm² lift to lift, and the whole of platform and outsole (derived)', () => {
    const list = joints(build({ Raise: 'wedge', Lifts: 'Cork 7, Cork 3', Platform: 'Foam 8', Outsole: 'Rubber 4' }));
    const sum = (keep: (i: number) => boolean) => list.reduce((n, { area }, i) => n + (keep(i) ? area : 0), 0);
    expect(list).toHaveLength(10);
    expect(sum((i) => i === 0)).toBeCloseTo(9300, 0);
    expect(sum((i) => i > 0 && i < 8)).toBeCloseTo(41_295, 0);
    expect(sum((i) => i === 9)).toBeCloseTo(14_631, 0);
  });

  it('leave the insole to the lasted bottom, and a welt to the needle', () => {
    expect(told({ Insole: 'Board 2', Sole: 'Bend 4', Welt: 'Bend 4' })).toEqual(['lasted - sole', 'lasted sewn welt']);
  });

  it('of a heel under a forepart outsole join its lifts to the sole, not to the outsole before them', () => {
    const list = told({
      Raise: 'heel',
      Lifts: 'Cork 7, Cork 3',
      Sole: 'Bend 4',
      Outsole: 'Rubber 4',
      'Top piece': 'Rubber 6',
      'Most rasping': 3,
    });
    expect(list.slice(0, 3)).toEqual(['lasted - sole', 'sole - outsole', 'sole - lift']);
    expect(list.at(-1)).toBe('lift - topPiece');
  });

  it('join a cover over its whole strip', () => {
    const bottom = build({ Raise: 'wedge', Lifts: 'Cork 7, Cork 3', Cover: 'Calf 1' });
    const strip = bottom.layers.find(({ part }) => part === 'cover');
    expect(joints(bottom).at(-1)).toMatchObject({ area: area(strip?.ring ?? []), sewn: false });
  });
});
