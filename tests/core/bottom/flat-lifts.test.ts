import { describe, expect, it } from 'vitest';
import { flatLifts, wedgeFront } from '../../../src/core/bottom/flat-lifts';
import { modelProfile } from '../../../src/core/last/model-profile';
import { atGround, atLength } from '../../../src/core/last/profile';
import { RAMP_ANGLE, rampProfile } from '../ramp';

const NO_SETBACK = { least: 0, most: 15 };
const ramp = (thicknesses: readonly number[], skiveTo = 0, setback = NO_SETBACK) =>
  flatLifts(rampProfile, thicknesses, { skiveTo, setback });

describe('flatLifts under a ramp last worked by hand (derived)', () => {
  const lifts = ramp([9, 9, 9, 6, 6, 6]);

  it('end where the bottom stands at their lower face', () => {
    const fronts = [168, 146.4, 124.8, 103.2, 88.8, 74.4];
    lifts.forEach(({ front }, i) => expect(front).toBeCloseTo(fronts[i] as number, 6));
  });

  it('are skived over 21.6 and 14.4 mm at 22.62°, together as far as the ramp is long', () => {
    lifts.forEach(({ thickness, skiveWidth, skiveAngle, edge, proud }) => {
      expect(skiveWidth).toBeCloseTo(thickness === 9 ? 21.6 : 14.4, 6);
      expect(skiveAngle).toBeCloseTo(22.62, 2);
      expect(edge).toBeCloseTo(0, 6);
      expect(proud).toBeCloseTo(0, 6);
    });
    expect(lifts.reduce((sum, { skiveWidth }) => sum + skiveWidth, 0)).toBeCloseTo(108, 6);
  });

  it('fill the side view of 45 × 60 + ½ × 45 × 108 = 5,130 mm²', () => {
    const mean = lifts.map(({ front, skiveFrom, thickness }) => ((front + skiveFrom) / 2) * thickness);
    expect(mean.reduce((a, b) => a + b)).toBeCloseTo(5130, 4);
    expect(lifts.reduce((sum, { front, thickness, removed }) => sum + front * thickness - removed, 0)).toBeCloseTo(
      5130,
      4,
    );
  });

  it('keep their edge by ending earlier: 1 mm is 2.4 mm along a ramp of 5 in 12', () => {
    const kept = ramp([9, 9, 9, 6, 6, 6], 1);
    expect(kept.slice(1).map(({ front }) => Number(front.toFixed(4)))).toEqual([144, 122.4, 100.8, 86.4, 72]);
    kept.slice(1).forEach(({ edge }) => expect(edge).toBeCloseTo(1, 6));
    expect(kept.at(-1)?.skiveAngle).toBeCloseTo(RAMP_ANGLE, 6);
  });

  it('stop behind the tread by the setback, and there leave what stands under the bottom', () => {
    const [first] = ramp([6, 6], 0, { least: 5, most: 15 });
    expect(first?.front).toBeCloseTo(163, 6);
    expect(first?.edge).toBeCloseTo(5 / 2.4, 6);
    // A thick edge would end the wedge 24 mm behind the tread: it is taken to 15 mm behind it, and its edge is less.
    const [far] = ramp([12, 12], 10, { least: 5, most: 15 });
    expect(far?.front).toBeCloseTo(153, 6);
    expect(far?.edge).toBeCloseTo(15 / 2.4, 6);
  });

  it('end at the breast of a heel; what lies above it is skived from there back', () => {
    const heel = flatLifts(rampProfile, [9, 9, 9, 6, 6, 6], { skiveTo: 0.5, breast: 84 });
    expect(heel.slice(0, 5).map(({ front }) => front)).toEqual([84, 84, 84, 84, 84]);
    expect(heel.slice(0, 4).every(({ skiveWidth }) => skiveWidth === 0)).toBe(true);
    // The bottom stands at (168 - 84) / 2.4 = 35 above the breast: the topmost lift but one goes from 33 to 39.
    expect(heel[4]?.skiveFrom).toBeCloseTo(168 - 2.4 * 39, 6);
    expect(heel[4]?.edge).toBeCloseTo(2, 6);
    expect(heel[5]?.front).toBeCloseTo(168 - 2.4 * 39.5, 4);
  });

  it('refuses an edge as thick as a lift, and lifts above the back', () => {
    expect(() => ramp([6, 4], 4)).toThrow('lift 2 is 4 mm thick and cannot be skived to 4 mm');
    expect(() => ramp([30, 30, 6])).toThrow('lift 3 would lie above the back of the last; take fewer or thinner lifts');
  });
});

describe('flatLifts under the model', () => {
  const heights = [15, 25, 40, 50];

  it.each(heights)('fill what lies under a bottom of heel %i as fine integration says, within 1 %%', (heelHeight) => {
    const profile = modelProfile({ length: 252, heelHeight, toeSpring: 8 });
    const lifts = flatLifts(profile, new Array<number>(heelHeight / 5).fill(5), { skiveTo: 0.1 });
    const front = (lifts[0] as (typeof lifts)[number]).front;
    let under = 0;
    for (let i = 0; i < 20_000; i++) under += (atGround(profile, ((i + 0.5) / 20_000) * front).z * front) / 20_000;
    const filled = lifts.reduce((sum, lift) => sum + lift.front * lift.thickness - lift.removed, 0);
    expect(filled / under).toBeGreaterThan(0.99);
    expect(filled / under).toBeLessThan(1.01);
  });

  it.each(heights)('never rise, and are each skived within the one below, at a heel of %i', (heelHeight) => {
    const profile = modelProfile({ length: 252, heelHeight, toeSpring: 8 });
    const lifts = flatLifts(profile, new Array<number>(heelHeight / 5).fill(5), { skiveTo: 1 });
    lifts.forEach((lift, i) => {
      const below = lifts[i - 1];
      if (below) expect(lift.front).toBeLessThanOrEqual(below.front);
      expect(lift.skiveFrom).toBeLessThanOrEqual(lift.front);
      // The ground lift reaches on to its setback, where less may be left.
      if (below) expect(lift.edge).toBeGreaterThanOrEqual(1 - 1e-6);
      // Where a skive begins the bottom stands at its upper face.
      if (lift.skiveWidth > 0) expect(atGround(profile, lift.skiveFrom).z).toBeCloseTo(lift.upper, 4);
    });
  });

  it('stand proud by less than a quarter of their thickness where the bottom curves (derived: t/4)', () => {
    const profile = modelProfile({ length: 252, heelHeight: 40, toeSpring: 8 });
    const lifts = flatLifts(profile, new Array<number>(8).fill(5), { skiveTo: 1 });
    const proudest = Math.max(...lifts.map(({ proud }) => proud));
    expect(proudest).toBeGreaterThan(0.2);
    expect(proudest).toBeLessThan(5 / 4);
  });
});

describe('wedgeFront', () => {
  it('lies where the kept edge fits, between 5 and 15 mm behind the tread line (common practice)', () => {
    const profile = modelProfile({ length: 252, heelHeight: 40, toeSpring: 8 });
    const tread = atLength(profile, profile.tread).x;
    for (const edge of [0.01, 0.5, 1, 3]) {
      const setback = tread - wedgeFront(profile, edge);
      expect(setback).toBeGreaterThanOrEqual(5 - 1e-9);
      expect(setback).toBeLessThanOrEqual(15 + 1e-9);
    }
  });
});
