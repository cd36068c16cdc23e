import { describe, expect, it } from 'vitest';
import { downBreast, fromBreast } from '../../../src/core/bottom/breast-sole';
import { area } from '../../../src/core/geometry/area';
import { box } from '../../../src/core/geometry/box';
import { outline } from '../../../src/core/geometry/outline';
import { outlineModel } from '../../../src/core/last/outline-model';
import { rampOutline, RAMP_LENGTH } from '../ramp';

const sole = outlineModel({ length: 252, tread: 84, waist: 56, seat: 58, swing: 3 });

describe('fromBreast', () => {
  it('leaves what lies before the breast (derived: 60 wide)', () => {
    expect(area(fromBreast(rampOutline, 63))).toBeCloseTo(60 * (RAMP_LENGTH - 63), 6);
  });
});

describe('downBreast', () => {
  it('adds a flap as wide as the breast and as long as it is high (derived: 60 × 36)', () => {
    const ring = downBreast(rampOutline, 63, 36);
    expect(area(ring)).toBeCloseTo(60 * (RAMP_LENGTH - 63) + 60 * 36, 6);
    expect(box(ring).left).toBeCloseTo(27, 6);
  });

  it('is a sound outline on a sole', () => {
    const ring = downBreast(sole, 63, 50);
    expect(outline(ring, 'sole')).toEqual(ring);
    expect(area(ring)).toBeGreaterThan(area(fromBreast(sole, 63)) + 50 * 45);
  });

  it('falls back to no flap where the breast has no height', () => {
    expect(area(downBreast(sole, 63, 0))).toBeCloseTo(area(fromBreast(sole, 63)), 6);
  });
});
