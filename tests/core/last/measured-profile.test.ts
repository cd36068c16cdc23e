import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Gap, measuredProfile } from '../../../src/core/last/measured-profile';
import { atGround, bottomLength } from '../../../src/core/last/profile';
import { evenly } from '../../evenly';
import { RAMP_LENGTH, rampGaps } from '../ramp';

const gaps = (...list: readonly (readonly [number, number])[]): Gap[] => list.map(([x, z]) => ({ x, z }));

const rises = (list: Float64Array) => list.every((value, i) => i === 0 || value >= (list[i - 1] as number));

describe('measuredProfile', () => {
  it('passes through every gap', () => {
    const given = gaps([0, 45], [20, 44], [40, 42], [60, 38], [80, 30], [100, 20], [120, 11], [140, 4], [160, 0]);
    const profile = measuredProfile(given, 250);
    for (const { x, z } of given) expect(atGround(profile, x).z).toBeCloseTo(z, 6);
    expect(profile.source).toBe('measured');
  });

  it('is the natural cubic spline: 24.0625 and 39.0625 midway between 20, 30 and 50 at 0, 10 and 20 (derived: M₁ = 0.15)', () => {
    const profile = measuredProfile(gaps([0, 20], [10, 30], [20, 50]), 250);
    expect(atGround(profile, 5).z).toBeCloseTo(24.0625, 6);
    expect(atGround(profile, 15).z).toBeCloseTo(39.0625, 6);
  });

  it('joins two gaps straight', () => {
    const profile = measuredProfile(gaps([0, 40], [160, 0]), 250);
    expect(atGround(profile, 80).z).toBeCloseTo(20, 9);
    expect(profile.slope[0]).toBeCloseTo((Math.atan(0.25) * 180) / Math.PI, 9);
  });

  it('has a corner where a gap is given twice', () => {
    const profile = measuredProfile(rampGaps, RAMP_LENGTH);
    expect(atGround(profile, 30).slope).toBeCloseTo(0, 9);
    expect(atGround(profile, 61).slope).toBeCloseTo(22.62, 2);
  });

  it('goes on flat where the last gap stands on the ground', () => {
    const profile = measuredProfile(rampGaps, RAMP_LENGTH);
    expect(bottomLength(profile)).toBeCloseTo(RAMP_LENGTH, 9);
    expect(atGround(profile, 200)).toMatchObject({ z: expect.closeTo(0, 9), slope: expect.closeTo(0, 9) });
  });

  it('goes on down at its slope to the ground, then flat, where gaps end above it (derived)', () => {
    const profile = measuredProfile(gaps([0, 40], [100, 20]), 250);
    expect(atGround(profile, 150).z).toBeCloseTo(10, 6);
    expect(atGround(profile, 210).z).toBeCloseTo(0, 6);
    expect(bottomLength(profile)).toBeCloseTo(250, 6);
  });

  it('goes on up to the toe where gaps end rising', () => {
    const profile = measuredProfile(gaps([0, 20], [100, 0], [100, 0], [150, 5]), 250);
    expect(atGround(profile, 200).z).toBeCloseTo(10, 6);
  });

  it('never goes below the ground where the spline would', () => {
    const profile = measuredProfile(gaps([0, 60], [20, 0], [40, 0], [60, 0]), 250);
    expect(Math.min(...profile.z)).toBe(0);
  });

  it('is as long along it as fine integration says', () => {
    const given = gaps([0, 45], [30, 43], [60, 36], [90, 24], [120, 12], [160, 0]);
    const profile = measuredProfile(given, 250);
    const end = atGround(profile, 160);
    let [length, x0, z0] = [0, 0, 45];
    for (let i = 1; i <= 20_000; i++) {
      const x = (160 * i) / 20_000;
      const { z } = atGround(profile, x);
      length += Math.hypot(x - x0, z - z0);
      [x0, z0] = [x, z];
    }
    expect(end.s).toBeCloseTo(length, 3);
  });

  it('slopes as its heights fall (derived: central differences)', () => {
    const profile = measuredProfile(gaps([0, 45], [30, 43], [60, 36], [90, 24], [120, 12], [160, 4]), 250);
    for (let x = 5; x < 160; x += 5) {
      const fall = atGround(profile, x - 0.5).z - atGround(profile, x + 0.5).z;
      expect(atGround(profile, x).slope).toBeCloseTo((Math.atan(fall) * 180) / Math.PI, 1);
    }
  });

  it('takes a flat last', () => {
    const profile = measuredProfile(gaps([0, 0], [160, 0]), 250);
    expect(Math.max(...profile.z)).toBe(0);
    expect(bottomLength(profile)).toBeCloseTo(250, 9);
  });

  it('rises along last and ground, for gaps of any kind', () => {
    const steps = fc.array(fc.tuple(evenly(1, 40), evenly(0, 120)), { minLength: 1, maxLength: 15 });
    fc.assert(
      fc.property(evenly(0, 120), steps, (first, list) => {
        let x = 0;
        const profile = measuredProfile([{ x, z: first }, ...list.map(([step, z]) => ({ x: (x += step), z }))], 250);
        const { s, x: along, z, slope } = profile;
        expect([...s, ...along, ...z, ...slope].every(Number.isFinite)).toBe(true);
        expect(Math.min(...z)).toBeGreaterThanOrEqual(-1e-9);
        expect(rises(s) && rises(along)).toBe(true);
      }),
      { seed: 11 },
    );
  });

  it('says what is wrong with gaps', () => {
    const wrong: readonly (readonly [Gap[], string])[] = [
      [[], 'give at least two gaps'],
      [gaps([0, 40]), 'give at least two gaps'],
      [gaps([5, 40], [20, 30]), 'the first gap lies at 5 mm; begin at the back, at 0'],
      [gaps([0, 40], [20, -1]), 'the gap at 20 mm is below the ground'],
      [gaps([0, 40], [40, 20], [20, 30]), 'the gap at 20 mm follows the one at 40 mm; give them in order'],
      [gaps([0, 40], [0.5, 39]), 'give them 1 mm apart or more'],
      [gaps([0, 40], [20, 30], [20, 30], [20, 30]), 'three gaps stand at 20 mm'],
      [gaps([0, 40], [20, 30], [20, 20]), 'two different gaps stand at 20 mm'],
    ];
    for (const [list, sentence] of wrong) expect(() => measuredProfile(list, 250)).toThrow(sentence);
  });
});
