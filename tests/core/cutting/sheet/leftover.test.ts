import { describe, expect, it } from 'vitest';
import { leftover } from '../../../../src/core/cutting/sheet/leftover';
import type { Piece } from '../../../../src/core/cutting/sheet/piece';
import { rectangle } from '../outlines';

const FORMAT = { length: 900, width: 600, knifeRoom: 4, edgeTrim: 10 };
const PIECES: Piece[] = [{ key: 'lift', ring: rectangle(200, 100), count: 9, way: { kind: 'any' } }];

describe('leftover', () => {
  it('cuts the largest rectangle from edge to edge and another beside it, knife room away (derived)', () => {
    expect(leftover(PIECES, FORMAT, [{ piece: 0, x: 110, y: 10, turn: 90 }])).toEqual([
      { x: 114, y: 0, length: 786, width: 600 },
      { x: 0, y: 214, length: 114, width: 386 },
    ]);
  });

  it('is the whole sheet where nothing lies on it', () => {
    expect(leftover(PIECES, FORMAT, [])).toEqual([{ x: 0, y: 0, length: 900, width: 600 }]);
  });

  it('leaves out strips too narrow to keep', () => {
    const corners = [
      [10, 10],
      [690, 490],
    ].map(([x, y]) => ({ piece: 0, x, y, turn: 0 }));
    expect(leftover(PIECES, FORMAT, corners)).toEqual([]);
  });
});
