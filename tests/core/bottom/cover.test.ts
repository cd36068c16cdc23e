import { describe, expect, it } from 'vitest';
import { type Bottom, buildBottom } from '../../../src/core/bottom/bottom';
import type { CoverStrip } from '../../../src/core/bottom/cover-strip';
import { area } from '../../../src/core/geometry/area';
import { edgeLength } from '../../../src/core/geometry/edge-length';
import { lastInSize } from '../../../src/core/last/last-in-size';
import { rampLast } from '../ramp';
import { findSample, lastOf, type Named, stockOf, STOCKS, styleOf } from '../samples';

const THIN = { Cover: 'Calf 1', 'Turn over': 12, 'Turn under': 15 };
const BARE = {
  ...THIN,
  'Lasted substance': 1.2,
  Projection: 0,
  'Rounding allowance': 0,
  'Skive to': 0.1,
  'Front slant': 0,
};
const LIFTS = { Raise: 'wedge', Lifts: 'Cork 6, Cork 4', 'Most rasping': 3 };
const build = (named: Named, on = rampLast) => buildBottom(styleOf({ ...BARE, ...named }), on, findSample);
/** The cover of what is no heel is a strip. */
const coversIn = ({ layers }: Bottom) => layers.flatMap(({ cover }) => cover ?? []);
const stripOf = (named: Named, on = rampLast) => coversIn(build(named, on))[0] as CoverStrip;
const last = lastInSize(lastOf(), 38, 'EU');

describe('the cover of a bottom', () => {
  it('of a ramp wedge is its back and sides, 60 + 2 × 163 to 5 mm behind the tread (derived)', () => {
    const cover = stripOf({ ...LIFTS, Lifts: 'Cork 11, Cork 6', 'Most rasping': 0 });
    expect(cover.length).toBeCloseTo(386, 1);
    // Walls of 60 × 45 and twice 60 × 45 + 103 × (45 + 5 / 2.4) / 2.
    expect(cover.wall).toBeCloseTo(2700 + 2 * (2700 + (103 * (45 + 5 / 2.4)) / 2), -1);
  });

  it('is measured on the edge as it is once rasped: what is left for that changes no strip (derived)', () => {
    const wedge = { ...LIFTS, Lifts: 'Cork 11, Cork 6', 'Most rasping': 0, 'Rounding allowance': 3 };
    const cover = stripOf(wedge);
    expect(cover.length).toBeCloseTo(386, 1);
    expect(cover.wall).toBeCloseTo(2700 + 2 * (2700 + (103 * (45 + 5 / 2.4)) / 2), -1);
    // On a slanted front too, and all round a platform: 2 × (265.5 + 60).
    const slanted = { ...wedge, 'Front slant': 12 };
    expect(stripOf(slanted).length).toBeCloseTo(stripOf({ ...slanted, 'Rounding allowance': 0 }).length, 2);
    expect(stripOf({ Platform: 'Foam 10', 'Rounding allowance': 3 }).length).toBeCloseTo(651, 3);
    // The core itself is as much wider as is rasped off it.
    const rough = build({ Platform: 'Foam 10', 'Rounding allowance': 3 }).layers.find(
      ({ part }) => part === 'platform',
    );
    expect([rough?.width, rough?.rounding]).toEqual([66, 3]);
  });

  it('of a wedge on a platform runs all round, higher by the platform', () => {
    const plain = build({ ...LIFTS, Platform: 'Foam 10' }, last);
    const [strip] = coversIn(plain) as [CoverStrip];
    const platform = plain.layers.find(({ part }) => part === 'platform');
    expect(strip.length).toBeCloseTo(edgeLength(platform?.ring ?? []), 3);
    expect(Math.max(...strip.stations.map(({ height }) => height))).toBeCloseTo(45 + 10, 1);
    expect(Math.min(...strip.stations.map(({ height }) => height))).toBeCloseTo(10, 6);
  });

  it('of a platform alone is one strip of its thickness', () => {
    const cover = stripOf({ Platform: 'Foam 10' }, last);
    expect(cover.width).toBeCloseTo(10 + 12 + 15, 6);
    expect(cover.wall).toBeCloseTo(10 * (cover?.length ?? 0), 6);
  });

  it('grows with a front slanted either way by no more than the slant itself', () => {
    const length = (slant: number) => stripOf({ ...LIFTS, 'Front slant': slant }, last).length;
    for (const slant of [-20, -12, 12, 20]) expect(Math.abs(length(slant) - length(0))).toBeLessThan(4);
  });

  it("of a heel in one block is the heel's own, round its wall, and no strip", () => {
    const block = (code: string) =>
      code === 'Block 45' ? stockOf({ ...STOCKS[0], Stock: code, Thick: 45 }) : findSample(code);
    const heel = buildBottom(styleOf({ ...BARE, Raise: 'heel', Lifts: 'Block 45' }), last, block);
    expect(heel.layers.filter(({ part }) => part === 'lift')).toHaveLength(1);
    const [cover, ...others] = coversIn(heel);
    expect(cover?.back).toBeDefined();
    expect(cover).not.toHaveProperty('stations');
    expect(others).toEqual([]);
  });

  describe('of a heel under a platform', () => {
    const HEEL: Named = { Raise: 'heel', Lifts: 'Cork 6, Cork 4', 'Most rasping': 3, Platform: 'Foam 10' };
    const whole = (named: Named = {}) => build({ ...HEEL, ...named }, last);
    const widthOf = ({ layers }: Bottom, part: string) => layers.find((layer) => layer.part === part)?.width ?? 0;

    it('is a strip all round the platform, as tall as its edge and lapped at the back, and the heel’s own (derived)', () => {
      const shoe = whole();
      const [strip, heel, ...others] = coversIn(shoe);
      const platform = shoe.layers.find(({ part }) => part === 'platform');
      const around = edgeLength(platform?.ring ?? []);
      expect(others).toEqual([]);
      expect(strip?.closes).toBe(true);
      expect(strip?.wall).toBeCloseTo(10 * around, 1);
      // 5 mm past the seam at each end, 12 over and 15 under.
      expect(strip?.area).toBeCloseTo((10 + 12 + 15) * (around + 2 * 5), 1);
      expect(heel?.back).toBeDefined();
      expect(heel).not.toHaveProperty('stations');
      const pieces = shoe.layers.filter(({ part }) => part === 'cover');
      expect(pieces.map(({ item }) => item)).toEqual([shoe.layers.length - 1, shoe.layers.length]);
    });

    it('is the one of the two that Covered names, and the other stands out by the cover’s 1 mm a side', () => {
      const [both, heel, platform] = [{}, { Covered: 'heel' }, { Covered: 'platform' }].map(whole) as [
        Bottom,
        Bottom,
        Bottom,
      ];
      expect(coversIn(heel)).toEqual(coversIn(both).slice(1));
      expect(coversIn(platform)).toEqual(coversIn(both).slice(0, 1));
      const taken = 2 * findSample('Calf 1').thickness;
      expect(widthOf(heel, 'platform') - widthOf(both, 'platform')).toBeCloseTo(taken, 2);
      expect(widthOf(platform, 'platform')).toBe(widthOf(both, 'platform'));
      expect(widthOf(platform, 'lift') - widthOf(both, 'lift')).toBeGreaterThan(0.5 * taken);
      expect(widthOf(heel, 'lift')).toBe(widthOf(both, 'lift'));
    });
  });

  it('is a piece as large as its strip', () => {
    const piece = build(LIFTS, last).layers.find(({ part }) => part === 'cover');
    expect(area(piece?.ring ?? [])).toBeCloseTo(piece?.cover?.area ?? 0, 3);
  });
});
