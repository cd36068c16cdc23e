import { describe, expect, it } from 'vitest';
import { buildBottom } from '../../../../src/core/bottom/bottom';
import { work } from '../../../../src/core/plan/cost/work';
import { stepsOf } from '../../../../src/core/steps/steps';
import { rampLast } from '../../ramp';
import { findSample, type Named, styleOf } from '../../samples';
import { bench } from '../../steps/samples';

// A heel of 45 from three lifts of 11 and two of 6, all skived; a platform and an outsole under them.
const WEDGE: Named = {
  Raise: 'wedge',
  Lifts: 'Cork 11, Cork 6',
  Platform: 'Foam 10',
  Outsole: 'Rubber 4',
  'Lasted substance': 0,
  'Rounding allowance': 0,
  'Skive to': 0.1,
  'Front slant': 0,
  'Most rasping': 0,
};
function workOf(named: Named, ...rates: readonly Named[]) {
  const style = styleOf(named);
  const bottom = buildBottom(style, rampLast, findSample);
  const at = bench(...rates);
  return { ...work(stepsOf(bottom, style, at), style.code, at.rates), bottom };
}
const minutes = (...rates: readonly Named[]) => workOf(WEDGE, ...rates).minutes;
const EACH: readonly Named[] = [
  { Value: 1, Unit: 'minutes a piece' },
  { Value: 0.5, Unit: 'minutes a skive' },
  { Value: 2, Unit: 'minutes a joint' },
];

describe('minutes', () => {
  it('of a pair are of both feet, piece by piece, skive by skive and joint by joint, and what is counted by the pair: 2 × (7 × 1 + 5 × 0.5 + 7 × 2) + 15 = 62 (derived)', () => {
    expect(minutes(...EACH, { Value: 15, Unit: 'minutes a pair' })).toBe(62);
    expect(minutes(...EACH, { Value: 15, Unit: 'minutes a pair', Step: 'rasp' })).toBeCloseTo(62, 9);
  });

  it('of a cover are its piece, its skived margins and its joint: 2 × (1 + 0.5 + 2) = 7 more (derived)', () => {
    expect(workOf({ ...WEDGE, Cover: 'Calf 1' }, ...EACH).minutes - minutes(...EACH)).toBeCloseTo(7, 9);
  });

  it('of a welt are its piece and its lapped ends, for it is sewn: 2 × (1 + 0.5) = 3 more (derived)', () => {
    const sole = { Sole: 'Bend 4', Insole: 'Board 2' };
    expect(workOf({ ...sole, Welt: 'Bend 4' }, ...EACH).minutes - workOf(sole, ...EACH).minutes).toBeCloseTo(3, 9);
  });

  it('take the row for a material before the row for all: 2 × (5 × 3 + 2 × 1) = 34 (derived)', () => {
    expect(
      minutes(
        { Item: 'Cutting', Value: 1, Unit: 'minutes a piece' },
        { Item: 'Cutting', Value: 3, Unit: 'minutes a piece', For: 'Cork' },
      ),
    ).toBe(34);
  });

  it('are none without times', () => {
    expect(minutes()).toBe(0);
  });
});

/**
 * mm² of the joints of a foot, worked by hand: the wedge to the last, up to 5 behind the tread at 168; lift to lift, where
 * the ramp stands at 11, 22, 33 and 39 and the edge of 0.1 ends them 0.24 earlier; the whole of platform and outsole, 88.5
 * of it before the tread.
 */
const JOINTS = {
  wedge: 60 * 163,
  lifts: 60 * (141.6 + 115.2 + 88.8 + 74.4 - 4 * 0.24),
  whole: 60 * (168 + 88.5),
};
const ALL = JOINTS.wedge + JOINTS.lifts + 2 * JOINTS.whole;

describe('adhesive', () => {
  // One coat where the rows before it name none.
  const once: Named = { Value: 1, Unit: 'coats' };
  const ml = (...rates: readonly Named[]) => workOf(WEDGE, ...rates, once).adhesive;

  it('is joints × 2 faces × 2 feet / coverage: 65.70 ml at 4 m² a litre (derived)', () => {
    expect(ml({ Value: 4, Unit: 'm² a litre' })).toBeCloseTo((4 * ALL) / 4 / 1000, 1);
    expect(ALL).toBeCloseTo(65_702.4, 6);
  });

  it('at the spray figure of 7.56 m² a litre takes 34.76 ml (US federal specification MMM-A-121, data sheet)', () => {
    expect(ml({ Value: 7.56, Unit: 'm² a litre' })).toBeCloseTo((4 * 65_702.4) / 7.56 / 1000, 1);
  });

  it('doubles with a second coat, on absorbent faces alone where it is given for them', () => {
    const coverage = { Value: 4, Unit: 'm² a litre' };
    expect(ml(coverage, { Value: 2, Unit: 'coats' })).toBeCloseTo((2 * (4 * ALL)) / 4 / 1000, 1);
    // Faces of cork: the wedge's to the last and to the platform, both of lift to lift.
    const cork = 2 * JOINTS.wedge + 2 * JOINTS.lifts;
    expect(ml(coverage, { Value: 2, Unit: 'coats', For: 'Cork' })).toBeCloseTo((2 * (2 * ALL + cork)) / 4 / 1000, 1);
    // The lasted bottom is leather: wedge and forepart.
    expect(ml(coverage, { Value: 2, Unit: 'coats', For: 'leather' })).toBeCloseTo(
      (2 * (2 * ALL + JOINTS.whole)) / 4 / 1000,
      1,
    );
  });

  it('of a margin of a cover is its flesh and what it is turned under on: 3 mm more are 2 × 3 mm all along, and 3 mm of the laps (derived)', () => {
    const covered = (mm: number) =>
      workOf({ ...WEDGE, Cover: 'Calf 1', 'Turn under': mm }, { Value: 4, Unit: 'm² a litre' }, once);
    const [narrow, wide] = [covered(12), covered(15)];
    const along = narrow.bottom.layers.find(({ cover }) => cover)?.cover?.under ?? 0;
    expect(along).toBeGreaterThan(300);
    // Past the seam, 5 mm at each end, there is flesh alone.
    expect((wide.adhesive ?? 0) - (narrow.adhesive ?? 0)).toBeCloseTo((2 * 3 * (2 * along + 2 * 5)) / 4 / 1000, 6);
  });

  it('has two coats on absorbent faces where none are named, here all but foam and rubber (derived; a maker’s sheet)', () => {
    // Foam and rubber: under the lifts and the forepart the platform's upper face, its lower one and the outsole's.
    expect(workOf(WEDGE, { Value: 4, Unit: 'm² a litre' }).adhesive).toBeCloseTo(
      (2 * (4 * ALL - 3 * JOINTS.whole)) / 4 / 1000,
      1,
    );
  });

  it('takes the coverage of style before stock before material before all', () => {
    const rows = [
      { Value: 1, Unit: 'm² a litre' },
      { Value: 2, Unit: 'm² a litre', For: 'cork' },
      { Value: 4, Unit: 'm² a litre', For: 'Cork 11' },
      { Value: 8, Unit: 'm² a litre', For: 'betony' },
    ];
    expect(ml(...rows)).toBeCloseTo((4 * ALL) / 8 / 1000, 1);
    expect(ml(...rows.slice(0, 2))).toBeGreaterThan(ml(...rows.slice(0, 3)) as number);
  });

  it('is not known without a coverage, or with one of nothing', () => {
    expect(ml()).toBeUndefined();
    expect(ml({ Value: 4, Unit: 'm² a litre', For: 'cork' })).toBeUndefined();
  });
});
