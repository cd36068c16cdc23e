import { describe, expect, it } from 'vitest';
import { measuredProfile } from '../../../src/core/last/measured-profile';
import { modelProfile } from '../../../src/core/last/model-profile';
import { atGround } from '../../../src/core/last/profile';
import { tightestCurve } from '../../../src/core/last/tightest-curve';
import { rampProfile } from '../ramp';

describe('tightestCurve', () => {
  it('of the model is the length of a turn over its angle and π / 2 (derived: θ turns as a half cosine)', () => {
    const profile = modelProfile({ length: 252, heelHeight: 40, toeSpring: 8 });
    const shank = (Math.max(...profile.slope) * Math.PI) / 180;
    const fall = 0.45 * (168 - 63);
    expect(tightestCurve(profile, 'over')?.radius).toBeCloseTo(fall / (shank * (Math.PI / 2)), 1);
  });

  it('is within a twentieth of it for gaps measured off the model every 5 mm', () => {
    const model = modelProfile({ length: 252, heelHeight: 45, toeSpring: 8 });
    const gaps = Array.from({ length: 37 }, (_, i) => ({ x: 5 * i, z: Math.max(0, atGround(model, 5 * i).z) }));
    const measured = measuredProfile(gaps, 252);
    for (const side of ['over', 'hollow'] as const) {
      const [found, wanted] = [tightestCurve(measured, side), tightestCurve(model, side)];
      expect((found?.radius ?? 0) / (wanted?.radius ?? 1)).toBeGreaterThan(0.95);
      expect((found?.radius ?? 0) / (wanted?.radius ?? 1)).toBeLessThan(1.05);
      expect(Math.abs((found?.s ?? 0) - (wanted?.s ?? 99))).toBeLessThan(6);
    }
  });

  it('leaves corners out and finds none on straight lines', () => {
    expect(tightestCurve(rampProfile, 'over')).toBeUndefined();
    expect(tightestCurve(rampProfile, 'hollow')).toBeUndefined();
  });

  it('finds none on a flat last', () => {
    expect(tightestCurve(modelProfile({ length: 252, heelHeight: 0, toeSpring: 0 }), 'hollow')).toBeUndefined();
  });

  it('does not look past the tread line: the toe spring is no bend for the layers behind', () => {
    expect(tightestCurve(modelProfile({ length: 252, heelHeight: 0, toeSpring: 12 }), 'hollow')).toBeUndefined();
  });

  it('grows tighter with the heel', () => {
    const radius = (heelHeight: number) =>
      tightestCurve(modelProfile({ length: 252, heelHeight, toeSpring: 8 }), 'over')?.radius ?? Infinity;
    expect(radius(50)).toBeLessThan(radius(40));
    expect(radius(40)).toBeLessThan(radius(20));
  });
});
