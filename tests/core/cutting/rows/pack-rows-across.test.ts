import { describe, expect, it } from 'vitest';
import { packRows } from '../../../../src/core/cutting/rows/pack-rows';
import type { Piece } from '../../../../src/core/cutting/sheet/piece';
import { verifySheets } from '../../../../src/core/cutting/sheet/verify-layout';

const rectangle = (key: string, length: number, width: number, count: number): Piece => ({
  key,
  ring: [
    [0, 0],
    [length, 0],
    [length, width],
    [0, width],
  ],
  count,
  way: { kind: 'any' },
});

describe('packRows', () => {
  // Found when the demo's rows came to run across a sheet in the browser, whose Math.hypot rounds otherwise than Node's.
  it('keeps rows that run across a sheet clear of what is laid beside them', () => {
    const format = { length: 100, width: 70, knifeRoom: 0, edgeTrim: 0 };
    for (const pieces of [
      [rectangle('a', 46, 27, 4), rectangle('b', 12, 63, 1)],
      [rectangle('a', 16, 49, 3), rectangle('b', 57, 9, 3), rectangle('c', 57, 26, 1)],
      [rectangle('a', 31, 30, 1), rectangle('b', 27, 43, 3), rectangle('c', 17, 49, 3)],
    ]) {
      expect(verifySheets(pieces, format, packRows(pieces, format))).toEqual([]);
    }
  });
});
