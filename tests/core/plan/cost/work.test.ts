import { describe, expect, it } from 'vitest';
import { buildBottom } from '../../../../src/core/bottom/bottom';
import { Rates } from '../../../../src/core/plan/cost/rates';
import { work } from '../../../../src/core/plan/cost/work';
import { rampLast } from '../../ramp';
import { findSample, type Named, ratesOf, styleOf } from '../../samples';

// A heel of 40 from four lifts of 7 and four of 3, all skived; a platform and an outsole under them.
const style = styleOf({
  Raise: 'wedge',
  Lifts: 'Cork 7, Cork 3',
  Platform: 'Foam 8',
  Outsole: 'Rubber 4',
  'Skive to': 0.1,
  'Most rasping': 0,
});
const bottom = buildBottom(style, rampLast, findSample);
const minutes = (...rates: readonly Named[]) => work(bottom, 'Betony', new Rates(ratesOf(...rates)));

describe('work', () => {
  it('of a pair is that of both feet, piece by piece, skive by skive and joint by joint, and what is counted by the pair: 2 × (10 × 1 + 8 × 0.5 + 10 × 2) + 15 = 83 (derived)', () => {
    expect(
      minutes(
        { Value: 1, Unit: 'minutes a piece' },
        { Value: 0.5, Unit: 'minutes a skive' },
        { Value: 2, Unit: 'minutes a joint' },
        { Value: 15, Unit: 'minutes a pair' },
      ),
    ).toBe(83);
  });

  it('takes the row for a material before the row for all: 2 × (8 × 3 + 2 × 1) = 52 (derived)', () => {
    expect(
      minutes(
        { Item: 'Cutting', Value: 1, Unit: 'minutes a piece' },
        { Item: 'Cutting', Value: 3, Unit: 'minutes a piece', For: 'Cork' },
      ),
    ).toBe(52);
  });

  it('is nothing without times', () => {
    expect(minutes()).toBe(0);
  });
});
