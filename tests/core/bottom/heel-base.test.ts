import { describe, expect, it } from 'vitest';
import { type Bottom, buildBottom } from '../../../src/core/bottom/bottom';
import { heelBase } from '../../../src/core/bottom/heel-base';
import { rectangleAbout } from '../../../src/core/geometry/rectangle';
import type { Ring } from '../../../src/core/geometry/ring';
import { seatLine } from '../../../src/core/last/profile';
import { rampLast } from '../ramp';
import { findSample, styleOf } from '../samples';

const sample = buildBottom(styleOf({ Sole: 'Bend 4' }), { ...rampLast, heelHeight: 0 }, findSample);

/** A base of this outline under a seat of this height. */
function on(ring: Ring, seatStack: number, rounding = 0): Bottom {
  const [layer] = sample.layers;
  if (!layer) throw new Error('There is no sole.');
  return { ...sample, last: rampLast, seatStack, layers: [{ ...layer, part: 'topPiece', ring, rounding }] };
}
const across = (width: number): Ring => rectangleAbout({ left: 0, bottom: -width / 2, right: 40, top: width / 2 });

describe('heelBase', () => {
  it.each([
    [30, 85, 10.0],
    [58, 45, 32.8],
  ])('%i wide under a seat of %i tips at %f° (derived: atan(w / 2H))', (width, height, angle) => {
    expect(heelBase(on(across(width), height))?.tipAngle).toBeCloseTo(angle, 1);
  });

  it('is what is left when its edge is rasped: 2 mm a side of 34 × 42 leave 30 × 40, 12 cm² (derived)', () => {
    const found = heelBase(on(rectangleAbout({ left: -2, bottom: -17, right: 40, top: 17 }), 85, 2));
    expect(found).toMatchObject({ width: 30, length: 40 });
    expect(found?.area).toBeCloseTo(30 * 40, 6);
    expect(found?.ahead).toBeCloseTo(20 - seatLine(rampLast.length), 6);
  });

  it('is nothing where the seat stands on the ground, or nothing is left of it', () => {
    expect(heelBase(on(across(30), 0))).toBeUndefined();
    expect(heelBase(on(across(3), 40, 2))).toBeUndefined();
  });

  it('of a full sole is its back quarter', () => {
    const found = heelBase(on(rectangleAbout({ left: 0, bottom: -30, right: rampLast.length, top: 30 }), 45));
    expect(found?.length).toBeLessThan(rampLast.length / 4 + 1);
    expect(found?.width).toBeCloseTo(60, 6);
  });
});
