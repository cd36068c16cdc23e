import { describe, expect, it } from 'vitest';
import { wedge, type WedgeRule } from '../../../src/core/bottom/wedge';
import { RAMP_ANGLE, rampLast } from '../ramp';

const rule: WedgeRule = { thicknesses: [9], platform: 10, laying: 'flat', skiveTo: 1, rasping: 0 };

describe('a wedge under the ramp last, worked by hand (derived)', () => {
  it('has five lifts of 9 for a heel of 45, over a platform of 10', () => {
    const { height, mix, flat, bent } = wedge(rampLast, rule);
    expect([height, mix.counts, mix.rasped, bent]).toEqual([45, [5], 0, undefined]);
    expect(flat.map(({ from, to }) => [from, to])).toEqual([
      [10, 19],
      [19, 28],
      [28, 37],
      [37, 46],
      [46, 55],
    ]);
  });

  it('ends each lift where the ramp stands an edge of 1 over its lower face: the second at 168 − 2.4 × (9 + 1) = 144', () => {
    const { flat } = wedge(rampLast, rule);
    expect(flat[1]?.front).toBeCloseTo(144, 6);
    expect(flat[1]?.skiveWidth).toBeCloseTo(2.4 * (9 - 1), 6);
    expect(flat[1]?.skiveAngle).toBeCloseTo(RAMP_ANGLE, 6);
    // The ground lift stops no less than 5 behind the tread at 168.
    expect(flat[0]?.front).toBeCloseTo(163, 6);
  });

  it('lays the stoutest next to the ground when flat, next to the ground too when bent on from the last', () => {
    const mixed = { ...rule, thicknesses: [6, 13] };
    expect(wedge(rampLast, mixed).flat.map(({ thickness }) => thickness)).toEqual([13, 13, 13, 6]);
    const { bent, flat } = wedge(rampLast, { ...mixed, laying: 'bent' });
    expect([bent?.map(({ thickness }) => thickness), flat]).toEqual([[6, 13, 13, 13], []]);
  });

  it('takes the height square to a pitched seat for bent layers: 45 · cos 10° = 44.32', () => {
    const { profile } = rampLast;
    const pitched = {
      ...rampLast,
      profile: { ...profile, slope: profile.slope.map((one, i) => (i === 0 ? 10 : one)) },
    };
    const bent = wedge(pitched, { ...rule, thicknesses: [1], laying: 'bent', rasping: 1 });
    expect(bent.height).toBeCloseTo(44.32, 2);
  });

  it('is refused under a last without a heel', () => {
    expect(() => wedge({ ...rampLast, heelHeight: 0 }, rule)).toThrow('last: its heel height is 0');
  });
});
