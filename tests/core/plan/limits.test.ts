import { describe, expect, it } from 'vitest';
import { LIMIT_ITEMS, limitsOf, unknownLimits, USUAL_LIMITS } from '../../../src/core/plan/limits';
import { ratesOf } from '../samples';

describe('limitsOf', () => {
  it('are the usual ones where nothing is said: control 1 mm, plain curve to 50, shank from 30, pairs within 0.3, a high build from 50 (common practice)', () => {
    expect(limitsOf([])).toEqual(USUAL_LIMITS);
    expect(USUAL_LIMITS).toMatchObject({
      heelControl: 1,
      plainModel: 50,
      shank: 30,
      pairSubstance: 0.3,
      highBuild: 50,
    });
  });

  it('can each be set by its item', () => {
    const rates = ratesOf(
      ...Object.values(LIMIT_ITEMS).map((Item, i) => ({
        Item: ` ${Item.toUpperCase()}`,
        Value: 7 + i,
        Unit: 'limit',
      })),
    );
    expect(Object.values(limitsOf(rates))).toEqual(Object.values(LIMIT_ITEMS).map((_, i) => 7 + i));
  });

  it('leave out one that no check knows, which is told with the names of those that there are', () => {
    const rates = ratesOf(
      { Item: 'Shank', Value: 1, Unit: 'limit' },
      { Item: 'Proud of last', Value: 3, Unit: 'limit' },
    );
    expect(limitsOf(rates)).toEqual({ ...USUAL_LIMITS, proud: 3 });
    expect(unknownLimits(rates).map(({ message }) => message)).toEqual([
      expect.stringMatching(/^row 1 of Costs and times, Item: "Shank" is no limit.*Heel without shank/),
    ]);
  });
});
