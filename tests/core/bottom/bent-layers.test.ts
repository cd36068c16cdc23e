import { describe, expect, it } from 'vitest';
import { bentLayers } from '../../../src/core/bottom/bent-layers';
import { modelProfile } from '../../../src/core/last/model-profile';
import { atLength } from '../../../src/core/last/profile';
import { RAMP_TO_TREAD, rampProfile } from '../ramp';

const NO_SETBACK = { least: 0, most: 15 };
const COSINE = 100 / Math.hypot(100, 40);

describe('bentLayers under a ramp last worked by hand (derived)', () => {
  const layers = bentLayers(rampProfile, [7, 7, 7, 7, 7], 0, NO_SETBACK);

  it('have an upright substance of 7 / cos 21.80° = 7.54 on the ramp', () => {
    layers.slice(0, 4).forEach(({ upright }) => expect(upright).toBeCloseTo(7.54, 2));
  });

  it('end where what lies above them reaches the ground: the second at 141.2 along the ground', () => {
    expect(layers[0]?.groundFront).toBeCloseTo(160, 6);
    expect(layers[0]?.front).toBeCloseTo(RAMP_TO_TREAD, 6);
    expect(layers[1]?.groundFront).toBeCloseTo(141.15, 2);
    layers.forEach(({ groundFront }, i) => expect(groundFront).toBeCloseTo(160 - (2.5 * 7 * i) / COSINE, 4));
  });

  it('have the length of their own upper face: round a corner of 21.80° it is 7 × tan(21.80° / 2) shorter on either side', () => {
    const corner = 60 - 7 * Math.tan(Math.atan(0.4) / 2);
    const along = Math.hypot(141.15 - corner, 33);
    expect(layers[1]?.front).toBeCloseTo(corner + along, 0);
  });

  it('taper at the slope of the ramp, over 7 / tan 21.80° = 17.5 mm', () => {
    layers.slice(0, 4).forEach(({ skiveWidth, skiveAngle, edge, removed }) => {
      expect(skiveWidth).toBeCloseTo(17.5, 6);
      expect(skiveAngle).toBeCloseTo(21.8, 2);
      expect(edge).toBeCloseTo(0, 6);
      expect(removed).toBeCloseTo((7 * 17.5) / 2, 6);
    });
  });

  it('are numbered from the last downward, the first the longest', () => {
    expect(layers.map(({ number }) => number)).toEqual([1, 2, 3, 4, 5]);
    layers.slice(1).forEach(({ front }, i) => expect(front).toBeLessThan(layers[i]?.front as number));
  });

  it('keep their edge by ending earlier', () => {
    const [, second] = bentLayers(rampProfile, [7, 7], 1, NO_SETBACK);
    expect(second?.edge).toBeCloseTo(1, 6);
    // Square to the ramp 1 mm is 1 / cos 21.80° upright, and 2.5 times that along the ground, less its lean.
    expect(second?.groundFront).toBeCloseTo(160 - 2.5 * 8 * COSINE - 7 * 0.4 * COSINE, 6);
  });

  it('refuses a layer that would lie below the ground', () => {
    expect(() => bentLayers(rampProfile, [7, 7, 7, 7, 7, 7, 7], 1)).toThrow('layer 7 would lie below the ground');
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
