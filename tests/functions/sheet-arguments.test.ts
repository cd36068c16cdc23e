import { describe, expect, it } from 'vitest';
import { sheetOfOne } from '../../src/functions/sheet-arguments';

/** A strip whose upper edge has so many teeth. */
const toothed = (teeth: number, deep: number): unknown[][] => [
  [0, 0],
  [260, 0],
  ...Array.from({ length: teeth }, (_, i) => [
    [(260 * (teeth - i)) / teeth, 90],
    [(260 * (teeth - i - 0.5)) / teeth, 90 - deep],
  ]).flat(),
  [0, 90],
];

describe('a piece for a sheet of its own', () => {
  it('has no more hollows than a cell can lay in time, and may have a rough edge', () => {
    const refused = /^outline: it has 119 hollows; 40 is the most for laying it on a sheet, so smooth its edge$/;
    expect(() => sheetOfOne(toothed(119, 60), 5000, 18_000)).toThrow(refused);
    expect(sheetOfOne(toothed(119, 0.6), 500, 1000).count).toBeGreaterThan(12);
  });
});
