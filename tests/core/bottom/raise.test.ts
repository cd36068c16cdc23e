import { describe, expect, it } from 'vitest';
import { buildBottom } from '../../../src/core/bottom/bottom';
import { box } from '../../../src/core/geometry/box';
import { RAMP_LENGTH, rampLast } from '../ramp';
import { findSample, type Named, styleOf } from '../samples';

const BARE = { 'Lasted substance': 0, Projection: 0, 'Rounding allowance': 0, 'Most rasping': 0, 'Front slant': 12 };
const lifts = (named: Named) =>
  buildBottom(styleOf({ ...BARE, Lifts: 'Cork 11, Cork 6', ...named }), rampLast, findSample).layers.filter(
    ({ part }) => part === 'lift',
  );
/** How much further forward the front lies on the inside than on the outside of a piece with straight sides, 60 wide. */
const slantOf = (ring: readonly (readonly [number, number])[]) => {
  const at = (y: number) => Math.max(...ring.filter((point) => Math.abs(point[1] - y) < 1e-6).map(([x]) => x));
  return at(-30) - at(30);
};
/** A quarter of the ramp last's length, which is 6.375 past its level seat: 12 / 13 of that along the ground (derived). */
const BREAST = { along: RAMP_LENGTH / 4, ground: 60 + (6.375 * 12) / 13 };

describe.each(['flat', 'bent', 'block'])('lifts laid %s', (Laying) => {
  it('of a wedge end at a front slanted by the style’s angle, the inside forward: 60 × tan 12° from side to side (derived)', () => {
    for (const { ring, frontSlant } of lifts({ Raise: 'wedge', Laying })) {
      expect(slantOf(ring)).toBeCloseTo(60 * Math.tan(Math.PI / 15), 5);
      expect(frontSlant).toBe(12);
    }
  });

  it('of a heel end square, at the breast or behind it (derived)', () => {
    const heel = lifts({ Raise: 'heel', Laying });
    for (const { ring, frontSlant } of heel) {
      expect(slantOf(ring)).toBeCloseTo(0, 6);
      expect(frontSlant ?? 0).toBe(0);
    }
    const fronts = heel.map(({ ring }) => box(ring).right);
    expect(Math.max(...fronts)).toBeCloseTo(Laying === 'bent' ? BREAST.along : BREAST.ground, 3);
  });
});
