import { describe, expect, it } from 'vitest';
import { area } from '../../../src/core/geometry/area';
import { box } from '../../../src/core/geometry/box';
import { lastInSize } from '../../../src/core/last/last-in-size';
import { atGround, atLength, bottomLength } from '../../../src/core/last/profile';
import { rampGaps, rampOutline } from '../ramp';
import { lastOf } from '../samples';

describe('lastInSize', () => {
  it('grades EU 38 to 40: length 250 to 263.33, tread 82 to 85.33, seat 56 to 58.5, heel and toe spring held (derived; The Manufacture of Boots and Shoes, 1902)', () => {
    const last = lastOf({ 'Bottom length': 250, Tread: 82, Waist: 55, Seat: 56 });
    const larger = lastInSize(last, 40, 'EU');
    expect(larger.length).toBeCloseTo(263.33, 2);
    expect(larger.tread).toBeCloseTo(85.33, 1);
    expect(larger.seat).toBeCloseTo(58.5, 9);
    expect(larger).toMatchObject({ heelHeight: 45, toeSpring: 8, swing: 3 });
    expect(bottomLength(larger.profile)).toBeCloseTo(263.33, 2);
    expect(larger.profile.z[0]).toBe(45);
  });

  it('is the last itself in its base size, and the same size in another system', () => {
    const last = lastOf();
    expect(lastInSize(last, 38, 'EU')).toMatchObject({ length: 252, tread: 84, waist: 56, seat: 58 });
    // EU 38 is the foot of 240 mm.
    expect(lastInSize(last, 240, 'MONDO').length).toBeCloseTo(252, 9);
  });

  it('has an outline as long as its bottom, growing with the size', () => {
    const [small, large] = [36, 42].map((size) => lastInSize(lastOf(), size, 'EU').outline);
    expect(box(small ?? []).right).toBeCloseTo(252 - (2 * 20) / 3, 1);
    expect(area(large ?? [])).toBeGreaterThan(area(small ?? []));
  });

  it('stretches measured gaps along the ground with the length (derived)', () => {
    const last = lastOf({ 'Bottom length': 265.5, Tread: 60, Waist: 60, Seat: 60, 'Toe spring': 0 });
    const larger = lastInSize(last, 40, 'EU', { gaps: rampGaps });
    const along = (265.5 + (2 * 20) / 3) / 265.5;
    expect(atGround(larger.profile, 114 * along).z).toBeCloseTo(22.5, 6);
    expect(larger.profile.source).toBe('measured');
  });

  it('stretches measured gaps upward with a heel that steps from group to group (derived)', () => {
    const last = lastOf({
      'Bottom length': 265.5,
      Tread: 60,
      Waist: 60,
      Seat: 60,
      'Size groups': '36-38, 39-41',
      'Heel per group': 4,
    });
    const larger = lastInSize(last, 39, 'EU', { gaps: rampGaps });
    expect(larger.heelHeight).toBe(49);
    expect(larger.profile.z[0]).toBeCloseTo(49, 9);
  });

  it('grades a traced outline with length and widths', () => {
    const last = lastOf({ 'Bottom length': 265.5, Tread: 60, Waist: 60, Seat: 60 });
    const { outline, tread, length } = lastInSize(last, 40, 'EU', { outline: rampOutline });
    const { right, top, bottom } = box(outline);
    expect(right).toBeCloseTo(length, 1);
    expect(top - bottom).toBeCloseTo(tread, 6);
  });

  it('is fitted to a waist height, which rises with the heel', () => {
    const last = lastOf({ 'Waist height': 22, 'Size groups': '36-38, 39-41', 'Heel per group': 4 });
    const { profile, length } = lastInSize(last, 38, 'EU');
    expect(profile.source).toBe('fitted');
    expect(atLength(profile, (length / 6 + (2 * length) / 3) / 2).z).toBeCloseTo(22, 2);
    const larger = lastInSize(last, 40, 'EU');
    expect(atLength(larger.profile, (5 * larger.length) / 12).z).toBeCloseTo((22 * (45 + 4)) / 45, 2);
  });

  it('takes a heel of 0', () => {
    const { profile } = lastInSize(lastOf({ 'Heel height': 0 }), 38, 'EU');
    expect(profile.z[0]).toBe(0);
    expect(Math.max(...profile.z)).toBeCloseTo(8, 6);
  });

  it('refuses a size that the last cannot be graded down to', () => {
    expect(() => lastInSize(lastOf({ Waist: 20 }), 28, 'EU')).toThrow(
      'size: graded down to size 28 the last would be less than 10 mm wide; check the size and the base size',
    );
    expect(() => lastInSize(lastOf(), -8, 'EU')).toThrow('is no size of EU');
  });
});
