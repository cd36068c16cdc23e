import { describe, expect, it } from 'vitest';
import { modelProfile } from '../../../src/core/last/model-profile';
import {
  atGround,
  atLength,
  bottomLength,
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

describe('a place on the ramp', () => {
  it('lies 160 along the ground and 167.70 along the last at the tread (derived)', () => {
    expect(RAMP_TO_TREAD).toBeCloseTo(167.7, 2);
    expect(atLength(rampProfile, rampProfile.tread).x).toBeCloseTo(160, 6);
    expect(atGround(rampProfile, 160).s).toBeCloseTo(167.7, 2);
  });

  it('is 20 high half way down the slope, at 21.80° (derived)', () => {
    expect(atGround(rampProfile, 110).z).toBeCloseTo(20, 9);
    expect(atGround(rampProfile, 110).slope).toBeCloseTo(21.8, 2);
    expect(RAMP_ANGLE).toBeCloseTo(21.8, 2);
  });

  it('is kept within the bottom', () => {
    expect(atLength(rampProfile, -10)).toMatchObject({ s: 0, x: 0, z: 40 });
    expect(atLength(rampProfile, 1e6).s).toBeCloseTo(RAMP_LENGTH, 6);
    expect(atGround(rampProfile, 1e6).z).toBeCloseTo(0, 9);
  });

  it('has the whole bottom behind its toe', () => {
    expect(bottomLength(rampProfile)).toBeCloseTo(RAMP_LENGTH, 6);
  });
});

describe('whereStands', () => {
  it('finds the place of a height on the slope (derived: x = 160 − 2.5 z)', () => {
    for (const height of [1, 7, 14, 28.3, 39]) {
      expect(whereStands(rampProfile, height).x).toBeCloseTo(160 - 2.5 * height, 6);
    }
  });

  it('is the far end of a level seat that stands just so high', () => {
    expect(whereStands(rampProfile, 40).x).toBeCloseTo(60, 6);
  });

  it('is the back where the bottom is nowhere so high, the tread where it is everywhere', () => {
    expect(whereStands(rampProfile, 41).s).toBe(0);
    expect(whereStands(rampProfile, 0).x).toBeCloseTo(160, 6);
    expect(whereStands(rampProfile, -5).x).toBeCloseTo(160, 6);
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
    expect(places[0]).toMatchObject({ x: 0, z: 40 });
  });

  it('have the toe once where it is such a place itself', () => {
    const length = bottomLength(rampProfile);
    expect(placesAlong(rampProfile, length / 5)).toHaveLength(6);
  });
});
