import { describe, expect, it } from 'vitest';
import { wedge, type WedgeRule } from '../../../src/core/bottom/wedge';
import { RAMP_ANGLE, rampLast } from '../ramp';

const rule: WedgeRule = { thicknesses: [8], platform: 10, laying: 'flat', skiveTo: 1, rasping: 0 };

describe('a wedge under the ramp last, worked by hand (derived)', () => {
  it('has five lifts of 8 for a heel of 40, over a platform of 10', () => {
    const { height, mix, flat, bent } = wedge(rampLast, rule);
    expect([height, mix.counts, mix.rasped, bent]).toEqual([40, [5], 0, undefined]);
    expect(flat.map(({ from, to }) => [from, to])).toEqual([
      [10, 18],
      [18, 26],
      [26, 34],
      [34, 42],
      [42, 50],
    ]);
  });

  it('ends each lift where the ramp stands an edge of 1 over its lower face: the second at 60 + 31 / 0.4 = 137.5', () => {
    const { flat } = wedge(rampLast, rule);
    expect(flat[1]?.front).toBeCloseTo(137.5, 6);
    expect(flat[1]?.skiveWidth).toBeCloseTo(17.5, 6);
    expect(flat[1]?.skiveAngle).toBeCloseTo(RAMP_ANGLE, 6);
    // The ground lift stops no less than 5 behind the tread at 160.
    expect(flat[0]?.front).toBeCloseTo(155, 6);
  });

  it('lays the stoutest next to the ground when flat, next to the ground too when bent on from the last', () => {
    const mixed = { ...rule, thicknesses: [4, 12] };
    expect(wedge(rampLast, mixed).flat.map(({ thickness }) => thickness)).toEqual([12, 12, 12, 4]);
    const { bent, flat } = wedge(rampLast, { ...mixed, laying: 'bent' });
    expect([bent?.map(({ thickness }) => thickness), flat]).toEqual([[4, 12, 12, 12], []]);
  });

  it('takes the height square to a pitched seat for bent layers: 40 · cos 10° = 39.39', () => {
    const { profile } = rampLast;
    const pitched = {
      ...rampLast,
      profile: { ...profile, slope: profile.slope.map((one, i) => (i === 0 ? 10 : one)) },
    };
    const bent = wedge(pitched, { ...rule, thicknesses: [1], laying: 'bent', rasping: 1 });
    expect(bent.height).toBeCloseTo(39.39, 2);
  });

  it('is refused under a last without a heel', () => {
    expect(() => wedge({ ...rampLast, heelHeight: 0 }, rule)).toThrow('last: its heel height is 0');
  });
});
