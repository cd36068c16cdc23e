import { describe, expect, it } from 'vitest';
import { buildBottom } from '../../../src/core/bottom/bottom';
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
const stripOf = (named: Named, on = rampLast) => build(named, on).cover as CoverStrip;
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
    const strip = plain.cover as CoverStrip;
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
    expect(heel.cover).not.toHaveProperty('stations');
  });

  it('is a piece as large as its strip', () => {
    const { cover, layers } = build(LIFTS, last);
    const piece = layers.find(({ part }) => part === 'cover');
    expect(area(piece?.ring ?? [])).toBeCloseTo(cover?.area ?? 0, 3);
  });
});
