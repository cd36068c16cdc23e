import { describe, expect, it } from 'vitest';
import { buildBottom } from '../../../../src/core/bottom/bottom';
import { adhesive } from '../../../../src/core/plan/cost/adhesive';
import { Rates } from '../../../../src/core/plan/cost/rates';
import { rampLast } from '../../ramp';
import { findSample, type Named, ratesOf, styleOf } from '../../samples';

const style = styleOf({
  Raise: 'wedge',
  Lifts: 'Cork 7, Cork 3',
  Platform: 'Foam 8',
  Outsole: 'Rubber 4',
  'Lasted substance': 0,
  'Rounding allowance': 0,
  'Skive to': 0.1,
  'Front slant': 0,
  'Most rasping': 0,
});
const bottom = buildBottom(style, rampLast, findSample);
const ml = (...rates: readonly Named[]) => adhesive(bottom, 'Betony', new Rates(ratesOf(...rates)));

/** mm² of the joints of a foot, worked by hand. */
const JOINTS = { wedge: 9300, lifts: 41_295, whole: 14_631 };
const ALL = JOINTS.wedge + JOINTS.lifts + 2 * JOINTS.whole;

describe('adhesive', () => {
  it('is joints × 2 faces × 2 feet / coverage: 79.86 ml at 4 m² a litre (derived)', () => {
    expect(ml({ Value: 4, Unit: 'm² a litre' })).toBeCloseTo((4 * ALL) / 4 / 1000, 1);
  });

  it('at the spray figure of 7.56 m² a litre takes 42.25 ml (US federal specification MMM-A-121, data sheet)', () => {
    expect(ml({ Value: 7.56, Unit: 'm² a litre' })).toBeCloseTo(42.25, 1);
  });

  it('doubles with a second coat, on absorbent faces alone where it is given for them', () => {
    const coverage = { Value: 4, Unit: 'm² a litre' };
    expect(ml(coverage, { Value: 2, Unit: 'coats' })).toBeCloseTo((2 * (4 * ALL)) / 4 / 1000, 1);
    // Faces of cork: one of the wedge's joint to the last, both of lift to lift, one of the platform's.
    const cork = JOINTS.wedge + 2 * JOINTS.lifts + JOINTS.whole;
    expect(ml(coverage, { Value: 2, Unit: 'coats', For: 'Cork' })).toBeCloseTo((2 * (2 * ALL + cork)) / 4 / 1000, 1);
  });

  it('takes the coverage of style before stock before material before all', () => {
    const rows = [
      { Value: 1, Unit: 'm² a litre' },
      { Value: 2, Unit: 'm² a litre', For: 'cork' },
      { Value: 4, Unit: 'm² a litre', For: 'Cork 7' },
      { Value: 8, Unit: 'm² a litre', For: 'betony' },
    ];
    expect(ml(...rows)).toBeCloseTo((4 * ALL) / 8 / 1000, 1);
    expect(ml(...rows.slice(0, 2))).toBeGreaterThan(ml(...rows.slice(0, 3)) as number);
  });

  it('is not known without a coverage, or with one of nothing', () => {
    expect(ml()).toBeUndefined();
    expect(ml({ Value: 0, Unit: 'm² a litre' })).toBeUndefined();
    expect(ml({ Value: 4, Unit: 'm² a litre', For: 'cork' })).toBeUndefined();
  });
});
