import { describe, expect, it } from 'vitest';
import { quickLayout } from '../../../../src/core/cutting/quick-layout';
import { bind } from '../../../../src/core/cutting/search/bind';
import { takenApart } from '../../../../src/core/cutting/search/taken-apart';
import type { Piece } from '../../../../src/core/cutting/sheet/piece';
import { verifyLayout } from '../../../../src/core/cutting/sheet/verify-layout';
import type { Way } from '../../../../src/core/cutting/sheet/way';
import { mirror } from '../../../../src/core/geometry/mirror';
import { soleLike } from '../outlines';

describe('bind', () => {
  it.each(['side by side', 'across the backbone'] as const)('has pieces stand for pairs that match %s', (pairs) => {
    const shared = { count: 3, way: { kind: 'endForEnd' } as Way, pair: 'a' };
    const ring = soleLike(240, 32);
    const pieces: readonly Piece[] = [
      { key: 'left', ring, ...shared },
      { key: 'right', ring: mirror(ring), ...shared },
    ];
    const format = { length: 900, width: 500, knifeRoom: 2, edgeTrim: 5, pairs };
    const { bound } = bind({ kind: 'bind', pieces, format, start: quickLayout(pieces, format) });
    if (!bound) throw new Error('All pieces lie in pairs.');
    expect(bound.layout.sheets.flat()).toHaveLength(3);
    // Any way that these lie the pieces match: in rows as well.
    const again = takenApart(quickLayout(bound.pieces, bound.format), bound.twos);
    expect(again.sheets.flat()).toHaveLength(6);
    expect(verifyLayout(pieces, format, again)).toEqual([]);
  });
});
