import { expect, it } from 'vitest';
import { rockerRise } from '../../../src/core/bottom/rocker';
import { rampProfile } from '../ramp';

// Derived: (1 − 0.62) · 260 · tan 15° and tan 20°.
it('a rocker from 62 %% of a length of 260 rises 26.5 at 15° and 36.0 at 20°', () => {
  const profile = { ...rampProfile, s: Float64Array.of(0, 260), tread: 0.62 * 260 };
  expect(rockerRise(profile, 15)).toBeCloseTo(26.5, 1);
  expect(rockerRise(profile, 20)).toBeCloseTo(36.0, 1);
});
