import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fittedProfile, MODEL_HEEL_LIMIT, modelProfile, waistPlace } from '../../../src/core/last/model-profile';
import { atLength, bottomLength } from '../../../src/core/last/profile';
import { evenly } from '../../evenly';

const usual = { length: 252, heelHeight: 40, toeSpring: 8 };

describe('modelProfile', () => {
  it('stands at the heel height at the back, on the ground at the tread line, at the toe spring at the toe', () => {
    const profile = modelProfile(usual);
    expect(profile.z[0]).toBe(40);
    expect(atLength(profile, profile.tread).z).toBeCloseTo(0, 6);
    expect(atLength(profile, 252).z).toBeCloseTo(8, 6);
    expect(bottomLength(profile)).toBeCloseTo(252, 9);
    expect(profile).toMatchObject({ seat: 42, tread: 168, source: 'model' });
  });

  it('pitches its seat by H / 4.5 degrees over the back quarter where nothing else is said (from memory: H/5 to H/4)', () => {
    const profile = modelProfile(usual);
    expect(profile.slope[0]).toBeCloseTo(40 / 4.5, 9);
    expect(atLength(profile, 63).slope).toBeCloseTo(40 / 4.5, 6);
    // Derived: the breast stands lower by L/4 · sin of the pitch.
    expect(atLength(profile, 63).z).toBeCloseTo(40 - 63 * Math.sin((40 / 4.5 / 180) * Math.PI), 6);
  });

  it('takes another pitch, also a level seat', () => {
    expect(atLength(modelProfile({ ...usual, seatPitch: 0 }), 63).z).toBeCloseTo(40, 9);
    expect(modelProfile({ ...usual, seatPitch: 12 }).slope[0]).toBeCloseTo(12, 9);
  });

  it('is level where heel and toe spring are nothing', () => {
    const profile = modelProfile({ length: 252, heelHeight: 0, toeSpring: 0 });
    expect(Math.max(...profile.z.map(Math.abs))).toBeLessThan(1e-6);
    expect(profile.x.at(-1)).toBeCloseTo(252, 6);
  });

  it('is as long along its curve as its samples say (fine sum of small chords)', () => {
    const profile = modelProfile({ length: 260, heelHeight: 50, toeSpring: 12 });
    let [length, worst] = [0, 0];
    for (let i = 1; i < profile.s.length; i++) {
      length += Math.hypot(
        (profile.x[i] as number) - (profile.x[i - 1] as number),
        (profile.z[i] as number) - (profile.z[i - 1] as number),
      );
      worst = Math.max(worst, Math.abs(length - (profile.s[i] as number)));
    }
    expect(worst).toBeLessThan(1e-3);
  });

  it('runs forward all the way and only down as far as the tread, for any last that it can make', () => {
    fc.assert(
      fc.property(evenly(150, 330), evenly(0, 0.22), evenly(0, 0.08), (length, heel, toe) => {
        const [heelHeight, toeSpring] = [heel * length, toe * length];
        const profile = modelProfile({ length, heelHeight, toeSpring });
        expect(profile.z[0]).toBe(heelHeight);
        expect(atLength(profile, profile.tread).z).toBeCloseTo(0, 5);
        expect(atLength(profile, length).z).toBeCloseTo(toeSpring, 5);
        const { s, x, z } = profile;
        expect(x.every((here, i) => i === 0 || here > (x[i - 1] as number))).toBe(true);
        const falls = z.every((here, i) => i === 0 || (s[i] as number) > profile.tread || here <= (z[i - 1] as number));
        expect(falls).toBe(true);
      }),
      { seed: 12, numRuns: 60 },
    );
  });

  it('says that a seat pitch falls further than the heel is high', () => {
    // 63 · sin 45° = 44.5 mm.
    expect(() => modelProfile({ ...usual, seatPitch: 45 })).toThrow(
      'seat pitch: a seat pitch of 45.0° falls further than the heel height of 40 mm; give less',
    );
    expect(() => modelProfile({ length: 252, heelHeight: 0, toeSpring: 0, seatPitch: 5 })).toThrow('seat pitch');
  });

  it('says that a heel is too high for the length', () => {
    expect(() => modelProfile({ length: 120, heelHeight: 110, toeSpring: 0, seatPitch: 10 })).toThrow(
      'heel height: 110 mm is too high for a bottom 120.0 mm long; check both, or give measured gaps',
    );
  });

  it('says that a toe spring is too high for the forepart', () => {
    expect(() => modelProfile({ ...usual, toeSpring: 60 })).toThrow(
      'toe spring: 60 mm is too much for a forepart 84 mm long',
    );
  });

  it('is trusted up to a heel of 50 mm (common practice)', () => {
    expect(MODEL_HEEL_LIMIT).toBe(50);
  });
});

describe('fittedProfile', () => {
  it('passes the waist height as measured, midway between seat and tread line', () => {
    const plain = atLength(modelProfile(usual), waistPlace(252)).z;
    for (const waist of [plain - 3, plain, plain + 2]) {
      const profile = fittedProfile(usual, waist);
      expect(atLength(profile, 105).z).toBeCloseTo(waist, 3);
      expect(profile).toMatchObject({ source: 'fitted', misfit: expect.closeTo(0, 3) });
      expect(profile.z[0]).toBe(40);
      expect(atLength(profile, profile.tread).z).toBeCloseTo(0, 6);
    }
  });

  it('says by how much it misses what no seat pitch reaches', () => {
    const high = fittedProfile(usual, 39.9);
    expect(high.misfit).toBeGreaterThan(5);
    expect(atLength(high, 105).z + (high.misfit as number)).toBeCloseTo(39.9, 6);
    const low = fittedProfile(usual, 0);
    expect(atLength(low, 105).z - (low.misfit as number)).toBeCloseTo(0, 6);
  });

  it('comes to a curve for any waist height of any last', () => {
    fc.assert(
      fc.property(evenly(150, 330), evenly(0, 0.22), evenly(0, 150), (length, heel, waist) => {
        const profile = fittedProfile({ length, heelHeight: heel * length, toeSpring: 6 }, waist);
        const found = atLength(profile, waistPlace(length)).z;
        expect(Math.abs(found - waist)).toBeCloseTo(profile.misfit ?? -1, 6);
      }),
      { seed: 13, numRuns: 40 },
    );
  });

  it('takes a flat last', () => {
    expect(fittedProfile({ length: 252, heelHeight: 0, toeSpring: 5 }, 0).misfit).toBeCloseTo(0, 6);
  });
});
