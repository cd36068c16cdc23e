import { expect, it } from 'vitest';
import { adhesiveForArea } from '../../../src/core/steps/adhesive-for-area';

// Derived: a litre that covers 4 m² with one coat is 250 ml a m².
it('adhesive for an area: 250 ml for a square metre with one coat at 4 m² a litre, twice as much with two', () => {
  expect(adhesiveForArea(1_000_000, 1, 4)).toBe(250);
  expect(adhesiveForArea(1_000_000, 2, 4)).toBe(500);
  expect(adhesiveForArea(25_000, 2, 3.5)).toBeCloseTo(14.2857, 4);
});
