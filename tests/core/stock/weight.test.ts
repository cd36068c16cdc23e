import { expect, it } from 'vitest';
import { weight } from '../../../src/core/stock/weight';

// Derived: water, 1000 kg/m³, weighs a gram a millilitre, which is 1000 mm³.
it('weight of a volume: a litre of water is a kilogram; 500 cm² of cork 6 mm thick at 240 kg/m³ is 72 g (derived: 300 cm³ × 0.24)', () => {
  expect(weight(1_000_000, 1000)).toBe(1000);
  expect(weight(50_000 * 6, 240)).toBeCloseTo(72, 9);
});
