import { describe, expect, it } from 'vitest';
import { box } from '../../../src/core/geometry/box';
import { groundOutline } from '../../../src/core/last/ground-outline';
import { modelProfile } from '../../../src/core/last/model-profile';
import { RAMP_LENGTH, RAMP_TO_TREAD, rampOutline, rampProfile } from '../ramp';
import { rectangle } from '../cutting/outlines';

describe('groundOutline', () => {
  it('is shorter than along the last by what the slope takes: 168 to the tread instead of 177 (derived)', () => {
    const ring = groundOutline([...rampOutline, [RAMP_TO_TREAD, 30]], rampProfile);
    expect(ring.at(-1)?.[0]).toBeCloseTo(168, 6);
    // The forepart lies on the ground as it is long.
    expect(box(ring).right).toBeCloseTo(168 + RAMP_LENGTH - RAMP_TO_TREAD, 6);
  });

  it('keeps widths', () => {
    const { bottom, top } = box(groundOutline(rampOutline, rampProfile));
    expect([bottom, top]).toEqual([-30, 30]);
  });

  it('takes the forepart along the toe spring, not along the ground', () => {
    const profile = modelProfile({ length: 252, heelHeight: 0, toeSpring: 12 });
    expect(box(groundOutline(rectangle(252, 80), profile)).right).toBeCloseTo(252, 6);
  });

  it('of a flat last is its outline', () => {
    const profile = modelProfile({ length: 252, heelHeight: 0, toeSpring: 0 });
    groundOutline(rectangle(252, 80), profile).forEach(([x, y], i) => {
      expect(x).toBeCloseTo(rectangle(252, 80)[i]?.[0] ?? NaN, 6);
      expect(y).toBe(rectangle(252, 80)[i]?.[1]);
    });
  });
});
