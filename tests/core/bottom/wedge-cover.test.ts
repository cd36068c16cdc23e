import { describe, expect, it } from 'vitest';
import { wedgeCover, type WedgeCoverRule } from '../../../src/core/bottom/wedge-cover';
import { RAMP_LENGTH, RAMP_TO_TREAD, rampLast } from '../ramp';

const rule: WedgeCoverRule = { turnOver: 12, turnUnder: 15, platform: 0, letOut: 0 };
/** Length of the ramp last on the ground: 160 to the tread, then along the toe spring. */
const ON_GROUND = 160 + RAMP_LENGTH - RAMP_TO_TREAD;

describe('the cover of a wedge under the ramp last, worked by hand (derived)', () => {
  it('goes round the back from front to front, 5 behind the tread: 60 + 2 × 155 = 370', () => {
    const strip = wedgeCover(rampLast, rule);
    expect(strip.length).toBeCloseTo(370, 6);
    // Sides of 60 × 40 and of 95 from 40 down to 2, and a back of 60 × 40.
    expect(strip.wall).toBeCloseTo(2 * (2400 + 95 * 21) + 2400, 0);
    expect(strip.area).toBeCloseTo(strip.wall + 370 * 27, 6);
    expect(strip.stations[0]?.width).toBeCloseTo(2 + 27, 9);
  });

  it('goes all round with a platform', () => {
    const strip = wedgeCover(rampLast, { ...rule, platform: 10 });
    expect(strip.length).toBeCloseTo(2 * (ON_GROUND + 60), 6);
    expect(strip.width).toBeCloseTo(10 + 40 + 27, 6);
  });

  it('is let out with the edge: by 3 mm each side is 6 longer', () => {
    const strip = wedgeCover(rampLast, { ...rule, platform: 10, letOut: 3 });
    expect(strip.length).toBeCloseTo(2 * (ON_GROUND + 6 + 60 + 6), 6);
  });

  it('is refused where there is nothing to cover', () => {
    expect(() => wedgeCover({ ...rampLast, heelHeight: 0 }, rule)).toThrow('no platform to cover');
  });
});
