import { describe, expect, it } from 'vitest';
import { decimals, figuresOf, fixed, inSentence } from '../../src/tables/figures';

describe('figures', () => {
  const [metric, imperial] = [figuresOf('metric'), figuresOf('imperial')];

  it('are whole millimetres along a piece and tenths in height', () => {
    expect([metric.length(162.4), metric.height(57.14), metric.height(45)]).toEqual(['162', '57.1', '45']);
  });

  it('are inches, irons for what is built up, ounces for what covers', () => {
    // 1 in = 25.4 mm; 1 iron = 1/48 in (US Federal Test Method Standard 311, 3.2.114); 1 oz of leather = 1/64 in.
    expect(imperial.length(254)).toBe('10.00');
    expect([imperial.thickness(25.4 / 4), imperial.thicknessUnit()]).toEqual(['12', 'iron']);
    expect([imperial.thickness(25.4 / 16, true), imperial.thicknessUnit(true)]).toEqual(['4', 'oz']);
  });

  it('are square feet and ounces of weight', () => {
    // 1 ft = 304.8 mm; 1 oz avoirdupois = 28.349523125 g (NIST Handbook 44, appendix C).
    expect(imperial.area(304.8 ** 2)).toBe('1 ft²');
    expect(imperial.weight(283.49523125)).toBe('10 oz');
  });

  it('bring their unit into a sentence where it is not mm', () => {
    expect([inSentence(metric, '57.1'), inSentence(imperial, '2.25')]).toEqual(['57.1', '2.25 in']);
  });

  it('are rounded halves up to so many decimals, as cells show sums of money', () => {
    // A hide of 0.595 m² at 45 is 26.775, which no binary number is (derived).
    expect([fixed(0.595 * 45, 2), fixed(1.005, 2), fixed(-26.775, 2), fixed(0.1 + 0.2, 1), fixed(26.7749, 2)]).toEqual([
      '26.78',
      '1.01',
      '-26.78',
      '0.3',
      '26.77',
    ]);
  });

  it('have a true minus and no zero with a sign', () => {
    expect([
      decimals(5.5, 0),
      decimals(175.5, 0),
      decimals(0.1 + 0.2 + 5.2, 0),
      decimals(175.49999999999997, 0),
    ]).toEqual(['6', '176', '6', '176']);
    expect([decimals(-1.25, 1), decimals(-0.01, 1)]).toEqual(['−1.3', '0']);
  });
});
