import { describe, expect, it } from 'vitest';
import { measuredProfile } from '../../../src/core/last/measured-profile';
import { modelProfile } from '../../../src/core/last/model-profile';
import { offsetProfile } from '../../../src/core/last/offset-profile';
import { atGround, atLength } from '../../../src/core/last/profile';
import { tightestCurve } from '../../../src/core/last/tightest-curve';
import { rampProfile } from '../ramp';

const model = modelProfile({ length: 252, heelHeight: 45, toeSpring: 8 });

describe('offsetProfile', () => {
  it('is the same profile for no thickness', () => {
    expect(offsetProfile(model, 0)).toBe(model);
  });

  it('stands on the ground at the tread again, and at the back higher by t (1 − cos pitch) (derived)', () => {
    const under = offsetProfile(model, 6);
    expect(atLength(under, under.tread).z).toBeCloseTo(0, 6);
    const pitch = ((model.slope[0] as number) * Math.PI) / 180;
    expect(under.z[0]).toBeCloseTo(45 + 6 * (1 - Math.cos(pitch)), 6);
  });

  it('stands on the ground also where the bottom slopes at the tread', () => {
    const leaning = { ...model, slope: model.slope.map((degrees) => degrees + 12) };
    const under = offsetProfile(leaning, 20);
    expect(atLength(under, under.tread).z).toBeCloseTo(0, 6);
  });

  it('lies everywhere its thickness below, square to the bottom (derived)', () => {
    const under = offsetProfile(model, 6);
    const down = 6;
    for (let i = 0; i < model.s.length; i += 50) {
      const dx = (under.x[i] as number) - (model.x[i] as number);
      const dz = (under.z[i] as number) - down - (model.z[i] as number);
      expect(Math.hypot(dx, dz)).toBeCloseTo(6, 6);
      expect(under.slope[i]).toBe(model.slope[i]);
      expect(under.s[i]).toBe(model.s[i]);
    }
  });

  it('moves the slope of the ramp parallel: 5 thick is 5 × 13 / 12 upright (derived)', () => {
    const under = offsetProfile(rampProfile, 5);
    const lowered = 45 - ((110 - 60) * 5) / 12 - (5 * 13) / 12;
    // What it is set down by is the thickness under the tread.
    const tread = atLength(rampProfile, rampProfile.tread).slope;
    expect(atGround(under, 110).z - 5 * Math.cos((tread * Math.PI) / 180)).toBeCloseTo(lowered, 4);
  });

  it('runs forward also round the hollow corner of the ramp', () => {
    const { x } = offsetProfile(rampProfile, 5);
    expect(x.every((here, i) => i === 0 || here >= (x[i - 1] as number))).toBe(true);
  });

  it('refuses layers that are thicker than a hollow is round', () => {
    const radius = tightestCurve(model, 'hollow')?.radius ?? 0;
    expect(radius).toBeGreaterThan(0);
    expect(() => offsetProfile(model, radius * 1.1)).toThrow("do not go into the last's hollow; take thinner ones");
    expect(offsetProfile(model, radius * 0.9).z[0]).toBeGreaterThan(45);
  });

  it('goes round a hollow corner in layers of any thickness, however close its samples lie', () => {
    const gaps = [0, 20, 40, 60, 60, 80, 100, 120, 140, 168].map((x) => ({ x, z: x <= 60 ? 45 : (168 - x) / 2.4 }));
    const corner = measuredProfile(gaps, 265.5);
    for (const thickness of [3, 10, 20]) {
      const under = offsetProfile(corner, thickness);
      under.x.forEach((x, i) => expect(x).toBeGreaterThanOrEqual(under.x[i - 1] ?? -Infinity));
      // Past the corner it lies square under the ramp.
      const down = thickness * Math.cos((atLength(corner, corner.tread).slope * Math.PI) / 180);
      expect(atGround(under, 120).z).toBeCloseTo(48 / 2.4 - (thickness * 13) / 12 + down, 1);
    }
  });
});
