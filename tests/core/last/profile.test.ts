import { describe, expect, it } from 'vitest';
import { modelProfile } from '../../../src/core/last/model-profile';
import {
  atGround,
  atLength,
  bottomLength,
  integrateOver,
  placesAlong,
  seatLine,
  treadLine,
  whereStands,
} from '../../../src/core/last/profile';
import { RAMP_ANGLE, RAMP_LENGTH, RAMP_TO_TREAD, rampProfile } from '../ramp';

describe('seat line and tread line', () => {
  it('stand at a sixth from the back and a third from the toe (The Manufacture of Boots and Shoes, 1902)', () => {
    expect(seatLine(252)).toBe(42);
    expect(treadLine(252)).toBe(168);
  });
});

describe('what is summed along the ramp', () => {
  const under = (axis: 's' | 'x', from: number, to: number) => integrateOver(rampProfile, axis, from, to, ({ z }) => z);

  it('is 60 × 45 + ½ × 108 × 45 along the ground, and with the slope of 117 along the bottom (derived)', () => {
    expect(under('x', 0, 168)).toBeCloseTo(2700 + 2430, 6);
    expect(under('s', 0, 177)).toBeCloseTo(2700 + (117 * 45) / 2, 6);
  });

  it('may begin and end between samples (derived)', () => {
    expect(under('x', 30, 114)).toBeCloseTo(30 * 45 + (54 * (45 + 22.5)) / 2, 6);
  });
});

describe('a place on the ramp', () => {
  it('lies 168 along the ground and 60 + √(108² + 45²) = 177 along the last at the tread (derived)', () => {
    expect(RAMP_TO_TREAD).toBeCloseTo(60 + Math.hypot(108, 45), 9);
    expect(atLength(rampProfile, rampProfile.tread).x).toBeCloseTo(168, 6);
    expect(atGround(rampProfile, 168).s).toBeCloseTo(177, 6);
  });

  it('is 22.5 high half way down the slope, at 22.62° (derived)', () => {
    expect(atGround(rampProfile, 114).z).toBeCloseTo(22.5, 9);
    expect(atGround(rampProfile, 114).slope).toBeCloseTo(22.62, 2);
    expect(RAMP_ANGLE).toBeCloseTo(22.62, 2);
  });

  it('is kept within the bottom', () => {
    expect(atLength(rampProfile, -10)).toMatchObject({ s: 0, x: 0, z: 45 });
    expect(atLength(rampProfile, 1e6).s).toBeCloseTo(RAMP_LENGTH, 6);
    expect(atGround(rampProfile, 1e6).z).toBeCloseTo(0, 9);
  });

  it('has the whole bottom behind its toe', () => {
    expect(bottomLength(rampProfile)).toBeCloseTo(RAMP_LENGTH, 6);
  });
});

describe('whereStands', () => {
  it('finds the place of a height on the slope (derived: x = 168 − 2.4 z)', () => {
    for (const height of [1, 7, 14, 28.3, 39]) {
      expect(whereStands(rampProfile, height).x).toBeCloseTo(168 - 2.4 * height, 6);
    }
  });

  it('is the far end of a level seat that stands just so high', () => {
    expect(whereStands(rampProfile, 45).x).toBeCloseTo(60, 6);
  });

  it('is the back where the bottom is nowhere so high, the tread where it is everywhere', () => {
    expect(whereStands(rampProfile, 46).s).toBe(0);
    expect(whereStands(rampProfile, 0).x).toBeCloseTo(168, 6);
    expect(whereStands(rampProfile, -5).x).toBeCloseTo(168, 6);
  });

  it('has at least the height everywhere behind it', () => {
    const profile = modelProfile({ length: 252, heelHeight: 45, toeSpring: 8 });
    for (const height of [0.5, 5, 20, 44]) {
      const place = whereStands(profile, height);
      expect(place.z).toBeCloseTo(height, 6);
      profile.s.forEach((s, i) => {
        if (s <= place.s) expect(profile.z[i]).toBeGreaterThanOrEqual(height - 1e-6);
      });
    }
  });
});

describe('placesAlong', () => {
  it('are every so many mm from the back, and the toe', () => {
    const places = placesAlong(rampProfile, 100);
    expect(places.map(({ s }) => s)).toEqual([0, 100, 200, bottomLength(rampProfile)]);
    expect(places[0]).toMatchObject({ x: 0, z: 45 });
  });

  it('have the toe once where it is such a place itself', () => {
    const length = bottomLength(rampProfile);
    expect(placesAlong(rampProfile, length / 5)).toHaveLength(6);
  });
});
