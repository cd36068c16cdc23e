import { describe, expect, it } from 'vitest';
import { rectangleAbout } from '../../src/core/geometry/rectangle';
import { lastInSize } from '../../src/core/last/last-in-size';
import { waistWidth } from '../../src/workings/waist-width';
import { lastOf } from '../core/samples';

describe('the width of a last’s waist', () => {
  it('is that of a rectangle anywhere, and of one with a nick what the nick leaves (derived)', () => {
    const plain = rectangleAbout({ left: 0, right: 200, bottom: -30, top: 30 });
    expect(waistWidth({ outline: plain, length: 200 })).toBeCloseTo(60, 9);
    const nicked = [
      [0, -30],
      [200, -30],
      [200, 30],
      [90, 30],
      [80, 22],
      [70, 30],
      [0, 30],
    ] as const;
    expect(waistWidth({ outline: nicked, length: 200 })).toBeCloseTo(52, 9);
  });

  // What the working says: the smooth curve dips beside the place at which the waist is given.
  it('of a modelled last is at most 1.5 mm less than the waist given, and never more', () => {
    for (const [length, tread, waist, seat] of [
      [255, 84, 57, 58],
      [250, 77, 47, 51],
      [285, 94, 62, 64],
      [230, 74, 50, 52],
    ] as const) {
      const inSize = lastInSize(lastOf({ Length: length, Tread: tread, Waist: waist, Seat: seat }), 38, 'EU');
      const less = inSize.waist - waistWidth(inSize);
      expect(less).toBeGreaterThan(0);
      expect(less).toBeLessThan(1.5);
    }
  });
});
