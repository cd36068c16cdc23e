import { describe, expect, it } from 'vitest';
import { compare } from '../../../src/core/plan/compare';
import { inputOf, STOCKS } from '../samples';

const input = inputOf({
  stock: STOCKS.map((one) => ({ ...one, Price: 10 })),
  rates: [{ Item: 'Welt', Value: 5, Unit: 'minutes a piece', For: 'Teasel' }],
});

describe('compare', () => {
  const [cork, foam, wrong] = compare(input, 'betony', [
    { name: 'Cork', changes: {} },
    { name: 'Foam', changes: { lifts: ['Foam 8'] } },
    { name: 'Nothing there', changes: { lifts: ['Cork 9'] } },
  ]);

  it('works out one style across materials, at the same height', () => {
    expect([cork?.result?.height, foam?.result?.height]).toEqual([52, 52]);
    // Five layers of 8 against six of 7, on platform and outsole.
    expect(foam?.result?.layers).toBe(7);
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

  it('refuses a style that is not there', () => {
    expect(() => compare(input, 'Teasel', [])).toThrow('"Teasel" is not in Styles');
  });
});
