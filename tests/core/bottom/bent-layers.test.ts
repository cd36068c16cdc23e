import { describe, expect, it } from 'vitest';
import { bentLayers } from '../../../src/core/bottom/bent-layers';
import { modelProfile } from '../../../src/core/last/model-profile';
import { atLength } from '../../../src/core/last/profile';
import { RAMP_ANGLE, RAMP_TO_TREAD, rampProfile } from '../ramp';

const NO_SETBACK = { least: 0, most: 15 };

describe('bentLayers under a ramp last worked by hand (derived)', () => {
  const layers = bentLayers(rampProfile, [6, 6, 6, 6, 6], 0, NO_SETBACK);

  it('have an upright substance of 6 × 13 / 12 = 6.5 on the ramp', () => {
    layers.slice(0, 4).forEach(({ upright }) => expect(upright).toBeCloseTo(6.5, 6));
  });

  it('end where what lies above them reaches the ground: the second at 168 − 2.4 × 6.5 = 152.4 along the ground', () => {
    expect(layers[0]?.groundFront).toBeCloseTo(168, 6);
    expect(layers[0]?.front).toBeCloseTo(RAMP_TO_TREAD, 6);
    expect(layers[1]?.groundFront).toBeCloseTo(152.4, 4);
    layers.forEach(({ groundFront }, i) => expect(groundFront).toBeCloseTo(168 - 2.4 * 6.5 * i, 4));
  });

  it('have the length of their own upper face: round a corner whose half has a tangent of 1 / 5 it is 6 / 5 shorter on either side', () => {
    // Of 45 - 6 = 39 down to the ground 93.6 along it: 13 × 7.8.
    expect(layers[1]?.front).toBeCloseTo(60 - 1.2 + 13 * 7.8, 0);
  });

  it('taper at the slope of the ramp, over 6 × 12 / 5 = 14.4 mm', () => {
    layers.slice(0, 4).forEach(({ skiveWidth, skiveAngle, edge, removed }) => {
      expect(skiveWidth).toBeCloseTo(14.4, 6);
      expect(skiveAngle).toBeCloseTo(RAMP_ANGLE, 6);
      expect(edge).toBeCloseTo(0, 6);
      expect(removed).toBeCloseTo((6 * 14.4) / 2, 6);
    });
  });

  it('are numbered from the last downward, the first the longest', () => {
    expect(layers.map(({ number }) => number)).toEqual([1, 2, 3, 4, 5]);
    layers.slice(1).forEach(({ front }, i) => expect(front).toBeLessThan(layers[i]?.front as number));
  });

  it('keep their edge by ending earlier', () => {
    const [, second] = bentLayers(rampProfile, [6, 6], 1, NO_SETBACK);
    expect(second?.edge).toBeCloseTo(1, 6);
    // The skive still follows the ramp.
    expect(second?.skiveAngle).toBeCloseTo(RAMP_ANGLE, 6);
    // Square to the ramp 6 + 1 mm are 7 × 13 / 12 upright, and 2.4 times that along the ground, less the lean of the 1.
    expect(second?.groundFront).toBeCloseTo(168 - 2.4 * 7 * (13 / 12) + 5 / 13, 6);
  });

  it('refuses a layer that would lie below the ground', () => {
    expect(() => bentLayers(rampProfile, [10, 10, 10, 10, 10, 10], 1)).toThrow('layer 6 would lie below the ground');
  });
});

describe('bentLayers under the model', () => {
  it.each([20, 40, 50])(
    'fill what lies under a bottom of heel %i as fine integration says, within 1 %%',
    (heelHeight) => {
      const profile = modelProfile({ length: 252, heelHeight, toeSpring: 8 });
      const pitch = (profile.slope[0] as number) * (Math.PI / 180);
      // Thin ones: a stout layer is pressed together in the hollow, and its upper face alone tells too much.
      const layers = bentLayers(profile, new Array<number>(40).fill((heelHeight * Math.cos(pitch)) / 40), 0.01);
      const front = (layers[0] as (typeof layers)[number]).front;
      // Square to the bottom: height × cos θ over its length.
      let under = 0;
      for (let i = 0; i < 20_000; i++) {
        const { z, slope } = atLength(profile, ((i + 0.5) / 20_000) * front);
        under += (z * Math.cos((slope * Math.PI) / 180) * front) / 20_000;
      }
      const filled = layers.reduce((sum, layer) => sum + layer.front * layer.thickness - layer.removed, 0);
      expect(filled / under).toBeGreaterThan(0.99);
      expect(filled / under).toBeLessThan(1.01);
    },
  );

  it('taper within each of them', () => {
    const profile = modelProfile({ length: 252, heelHeight: 40, toeSpring: 8 });
    for (const { skiveFrom, front, edge, thickness } of bentLayers(profile, [5, 5, 5, 5, 5, 5, 5], 1)) {
      expect(skiveFrom).toBeLessThanOrEqual(front);
      expect(edge).toBeGreaterThanOrEqual(0);
      expect(edge).toBeLessThanOrEqual(thickness);
    }
  });
});
