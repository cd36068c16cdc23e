import { describe, expect, it } from 'vitest';
import { alike } from '../../../../src/core/cutting/sheet/alike';
import type { Placement } from '../../../../src/core/cutting/sheet/layout';
import type { Piece } from '../../../../src/core/cutting/sheet/piece';
import { mirror } from '../../../../src/core/geometry/mirror';
import { soleLike } from '../outlines';

const piece = (key: string, count: number, more: Partial<Piece> = {}): Piece => ({
  key,
  ring: soleLike(),
  count,
  way: { kind: 'any' },
  ...more,
});
const lying = (kind: number, x = 0): Placement => ({ piece: kind, x, y: 0, turn: 0 });

describe('alike', () => {
  it('takes equal outlines together that may lie the same way on the same quality', () => {
    const { kinds } = alike(
      [
        piece('one', 2),
        piece('other', 3),
        piece('right', 4, { ring: mirror(soleLike()) }),
        piece('straight', 5, { way: { kind: 'endForEnd' } }),
        piece('poorer', 6, { quality: 2 }),
        piece('of the best', 7, { quality: 1 }),
      ],
      false,
    );
    expect(kinds.map(({ key, count }) => [key, count])).toEqual([
      ['one', 12],
      ['right', 4],
      ['straight', 5],
      ['poorer', 6],
    ]);
  });

  it('hands a layout of the kinds out to the pieces in their order, on offcuts first', () => {
    const pieces = [piece('one', 2), piece('larger', 1, { ring: soleLike(280) }), piece('other', 2)];
    const { handedOut } = alike(pieces, false);
    const { offcuts, sheets } = handedOut({
      offcuts: [{ code: 'end', placements: [lying(0, 1)] }],
      sheets: [
        [lying(0, 2), lying(1, 3)],
        [lying(0, 4), lying(0, 5)],
      ],
    });
    expect(offcuts).toEqual([{ code: 'end', placements: [lying(0, 1)] }]);
    expect(sheets).toEqual([
      [lying(0, 2), lying(1, 3)],
      [lying(2, 4), lying(2, 5)],
    ]);
  });

  it('takes pieces that are to match together only where the whole pair is alike', () => {
    const right = { ring: mirror(soleLike()) };
    const pieces = [
      piece('a L', 1, { pair: 'a' }),
      piece('a R', 1, { pair: 'a', ...right }),
      piece('b L', 1, { pair: 'b' }),
      piece('b R', 1, { pair: 'b', ...right }),
      piece('c L', 1, { pair: 'c' }),
      piece('c R', 1, { pair: 'c', ...right, quality: 2 }),
    ];
    const keys = (matched: boolean) => alike(pieces, matched).kinds.map(({ key, count }) => `${key} ${count}`);
    expect(keys(true)).toEqual(['a L 2', 'a R 2', 'c L 1', 'c R 1']);
    expect(keys(false)).toEqual(['a L 3', 'a R 2', 'c R 1']);
  });
});
