import { describe, expect, it } from 'vitest';
import { compare, type Comparison, untimedAlone } from '../../../src/core/plan/compare';
import { inputOf, type Named, ratesOf, STOCKS } from '../samples';

const input = inputOf({
  stock: STOCKS.map((one) => ({ ...one, Price: 10 })),
  rates: [{ Item: 'Welt', Value: 5, Unit: 'minutes a piece', For: 'Teasel' }],
});

describe('compare', () => {
  const [cork, foam, wrong] = compare(input, 'betony', [
    { name: 'Cork', changes: {} },
    { name: 'Foam', changes: { lifts: ['Foam 10', 'Cork 6'] } },
    { name: 'Nothing there', changes: { lifts: ['Cork 9'] } },
  ]);

  it('works out one style across materials, at the same height', () => {
    expect([cork?.result?.height, foam?.result?.height]).toEqual([59, 59]);
    // 45 from four of 10 and one of 6 against seven of 6 and one of 4, on platform and outsole.
    expect([cork?.result?.layers, foam?.result?.layers]).toEqual([8 + 2, 5 + 2]);
    expect(foam?.result?.weight).toBeLessThan(cork?.result?.weight ?? 0);
  });

  it('says why a way cannot be built, and goes on', () => {
    expect(wrong?.problem?.message).toContain('"Cork 9" is not in Bottom stock');
    expect(wrong?.result).toBeUndefined();
  });

  it('does not hold rates of other styles against it', () => {
    expect(cork?.result?.lookAt).toBe(
      compare({ ...input, rates: [] }, 'Betony', [{ name: 'Cork', changes: {} }])[0]?.result?.lookAt,
    );
  });

  it('tells what a way of building has no minutes for while others have, rather than let it seem to take none', () => {
    const ways = (...rates: readonly Named[]) =>
      compare({ ...input, rates: ratesOf(...rates) }, 'Betony', [
        { name: 'Flat', changes: {} },
        { name: 'Block', changes: { laying: 'block' } },
        { name: 'Bent', changes: { laying: 'bent' } },
      ]);
    const told = (list: readonly Comparison[]) => list.map((one) => untimedAlone(one, list));
    const skiving = { Item: 'Skiving', Value: 2, Unit: 'minutes a skive' };
    const sawing = { Item: 'Sawing', Value: 12, Unit: 'minutes a pair', Step: 'saw' };
    // What all lack alike, joining, rasping, trimming and finishing, tilts nothing.
    expect(told(ways(skiving))).toEqual([[], ['saw'], ['bend']]);
    expect(told(ways(skiving, sawing))).toEqual([[], [], ['bend']]);
    expect(told(ways(sawing))).toEqual([['skive'], [], ['skive', 'bend']]);
    expect(told(ways())).toEqual([[], [], []]);
  });

  it('refuses a style that is not there', () => {
    expect(() => compare(input, 'Teasel', [])).toThrow('"Teasel" is not in Styles');
  });
});
