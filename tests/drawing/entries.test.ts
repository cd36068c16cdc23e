import { describe, expect, it } from 'vitest';
import type { StockCutting } from '../../src/core/plan/cutting';
import { entriesCut, entryName, entryNumber } from '../../src/drawing/entries';

const piece = { piece: 0, x: 0, y: 0, turn: 0 };
const offcut = (code: string) => ({ code, length: 500, width: 400 });
const cutting = {
  layout: [[], [piece], [piece], [piece]],
  sheets: 2,
  format: { length: 1000, width: 500, knifeRoom: 4, edgeTrim: 10, offcuts: [offcut('Rack 1'), offcut('Rack 2')] },
} as unknown as StockCutting;

describe('the entries of a layout', () => {
  it('are the offcuts that are used and the whole sheets', () => {
    expect(entriesCut(cutting)).toEqual([1, 2, 3]);
  });

  it('go by the code of an offcut, and by their number among whole sheets', () => {
    expect(entriesCut(cutting).map((entry) => entryName(cutting, entry))).toEqual([
      'offcut Rack 2',
      'sheet 1 of 2',
      'sheet 2 of 2',
    ]);
    expect(entryNumber(cutting, 3)).toBe('2 of 2');
  });
});
