import { describe, expect, it } from 'vitest';
import { wedgeCover, type WedgeCoverRule } from '../../../src/core/bottom/wedge-cover';
import { lastInSize } from '../../../src/core/last/last-in-size';
import { RAMP_LENGTH, RAMP_TO_TREAD, rampLast } from '../ramp';
import { lastOf } from '../samples';

const rule: WedgeCoverRule = { turnOver: 12, turnUnder: 15, platform: 0, letOut: 0 };
/** Length of the ramp last on the ground: 168 to the tread, then along the toe spring. */
const ON_GROUND = 168 + RAMP_LENGTH - RAMP_TO_TREAD;

describe('the cover of a wedge under the ramp last, worked by hand (derived)', () => {
  it('goes round the back from front to front, 5 behind the tread: 60 + 2 × 163 = 386', () => {
    const strip = wedgeCover(rampLast, rule);
    expect(strip.length).toBeCloseTo(386, 6);
    // Sides of 60 × 45 and of 103 from 45 down to 5 / 2.4, and a back of 60 × 45.
    expect(strip.wall).toBeCloseTo(2 * (2700 + (103 * (45 + 5 / 2.4)) / 2) + 2700, 0);
    expect(strip.area).toBeCloseTo(strip.wall + 386 * 27, 6);
    expect(strip.stations[0]?.width).toBeCloseTo(5 / 2.4 + 27, 9);
  });

  it('goes all round with a platform', () => {
    const strip = wedgeCover(rampLast, { ...rule, platform: 10 });
    expect(strip.length).toBeCloseTo(2 * (ON_GROUND + 60), 6);
    expect(strip.width).toBeCloseTo(10 + 45 + 27, 6);
  });

  it('is as high as the platform alone under a last without a heel', () => {
    const strip = wedgeCover(lastInSize(lastOf({ 'Heel height': 0 }), 38, 'EU'), { ...rule, platform: 10 });
    expect(strip.width).toBeCloseTo(10 + 27, 9);
    expect(strip.wall).toBeCloseTo(10 * strip.length, 6);
  });

  it('is let out with the edge: by 3 mm each side is 6 longer', () => {
    const strip = wedgeCover(rampLast, { ...rule, platform: 10, letOut: 3 });
    expect(strip.length).toBeCloseTo(2 * (ON_GROUND + 6 + 60 + 6), 6);
  });

  it('is refused where there is nothing to cover', () => {
    expect(() => wedgeCover({ ...rampLast, heelHeight: 0 }, rule)).toThrow('no platform to cover');
  });
});
