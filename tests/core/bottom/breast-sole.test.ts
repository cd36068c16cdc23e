import { describe, expect, it } from 'vitest';
import { downBreast, fromBreast } from '../../../src/core/bottom/breast-sole';
import { area } from '../../../src/core/geometry/area';
import { box } from '../../../src/core/geometry/box';
import { outline } from '../../../src/core/geometry/outline';
import type { Ring } from '../../../src/core/geometry/ring';
import { outlineModel } from '../../../src/core/last/outline-model';
import { rampOutline, RAMP_LENGTH } from '../ramp';

const sole = outlineModel({ length: 252, tread: 84, waist: 56, seat: 58, swing: 3 });

describe('fromBreast', () => {
  it('leaves what lies before the breast (derived: 60 wide)', () => {
    expect(area(fromBreast(rampOutline, 63))).toBeCloseTo(60 * (RAMP_LENGTH - 63), 6);
  });
});

describe('downBreast', () => {
  const rule = { allowance: 3, tabWidth: 10, tabLength: 4 };
  const none = { allowance: 0, tabWidth: 0, tabLength: 0 };

  it('adds a flap as wide as the breast and as long as it is high (derived: 60 × 36)', () => {
    const { ring } = downBreast(rampOutline, 63, 36, none);
    expect(area(ring)).toBeCloseTo(60 * (RAMP_LENGTH - 63) + 60 * 36, 6);
    expect(box(ring).left).toBeCloseTo(27, 6);
  });

  it('leaves 3 mm for the bend and a tab 10 × 4 for the heel’s ground face ("Women’s Fitted Soles: Louis Heels"; derived)', () => {
    const { ring, flap } = downBreast(rampOutline, 63, 36, rule);
    expect(area(ring)).toBeCloseTo(60 * (RAMP_LENGTH - 63) + 60 * 39 + 10 * 4, 6);
    expect(box(ring).left).toBeCloseTo(63 - 39 - 4, 6);
    expect(flap).toEqual({ width: 60, length: 39, tabWidth: 10, tabLength: 4 });
  });

  it('leaves about π t / 4 for the bend of a sole 4 thick: a fibre in its middle turns the corner at t / 2 (derived)', () => {
    expect((Math.PI / 2) * (4 / 2)).toBeCloseTo(3, 0);
  });

  it('makes a tab no wider than the breast', () => {
    expect(downBreast(rampOutline, 63, 36, { ...rule, tabWidth: 90 }).flap?.tabWidth).toBe(60);
  });

  it('is a sound outline on a sole', () => {
    const { ring, flap } = downBreast(sole, 63, 50, rule);
    expect(outline(ring, 'sole')).toEqual(ring);
    expect(flap?.width).toBeGreaterThan(45);
    expect(area(ring)).toBeCloseTo(area(fromBreast(sole, 63)) + 53 * (flap?.width ?? 0) + 10 * 4, 6);
  });

  it('is the same whichever corner of the outline comes first', () => {
    const corners: Ring = rampOutline;
    for (const ring of corners.map((_, i) => [...corners.slice(i), ...corners.slice(0, i)])) {
      expect(area(downBreast(ring, 63, 36, rule).ring)).toBeCloseTo(60 * (RAMP_LENGTH - 63) + 60 * 39 + 10 * 4, 6);
    }
  });

  it('falls back to no flap where the breast has no height', () => {
    const { ring, flap } = downBreast(sole, 63, 0, rule);
    expect(area(ring)).toBeCloseTo(area(fromBreast(sole, 63)), 6);
    expect(flap).toBeUndefined();
  });
});
