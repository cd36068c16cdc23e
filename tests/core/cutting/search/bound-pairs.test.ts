import { describe, expect, it } from 'vitest';
import { quickLayout } from '../../../../src/core/cutting/quick-layout';
import { boundPairs } from '../../../../src/core/cutting/search/bound-pairs';
import { takenApart } from '../../../../src/core/cutting/search/taken-apart';
import type { Piece } from '../../../../src/core/cutting/sheet/piece';
import type { SheetFormat } from '../../../../src/core/cutting/sheet/sheet';
import { verifyLayout } from '../../../../src/core/cutting/sheet/verify-layout';
import type { Way } from '../../../../src/core/cutting/sheet/way';
import { area } from '../../../../src/core/geometry/area';
import { crossesItself } from '../../../../src/core/geometry/crosses-itself';
import { mirror } from '../../../../src/core/geometry/mirror';
import { moved } from '../../../../src/core/geometry/moved';
import { difference } from '../../../../src/core/geometry/regions';
import { rectangle, soleLike } from '../outlines';

const pairs = (lengths: readonly number[], way: Way, count = 3): readonly Piece[] =>
  lengths.flatMap((length) => {
    const shared = { count, way, pair: `${length}` };
    const ring = soleLike(length, 32);
    return [
      { key: `${length} left`, ring, ...shared },
      { key: `${length} right`, ring: mirror(ring), ...shared },
    ];
  });
const format: SheetFormat = { length: 900, width: 500, knifeRoom: 2, edgeTrim: 5, pairs: 'side by side' };

describe('boundPairs', () => {
  it.each<Way>([{ kind: 'endForEnd' }, { kind: 'oneWay' }, { kind: 'any' }, { kind: 'within', degrees: 8 }])(
    'takes pairs together that lie %o, and gives the same layout back',
    (way) => {
      const pieces = [...pairs([240, 260], way), { key: 'single', ring: rectangle(60, 50), count: 4, way }];
      const start = quickLayout(pieces, format);
      const bound = boundPairs(pieces, format, start)!;
      expect(bound.layout.sheets.flat()).toHaveLength(3 + 3 + 4);
      const sorted = (layout: typeof start) =>
        layout.sheets.map((sheet) =>
          sheet.map(({ piece, x, y, turn }) => [piece, turn, x.toFixed(6), y.toFixed(6)].join(' ')).sort(),
        );
      expect(sorted(takenApart(bound.layout, bound.twos))).toEqual(sorted(start));
      // As one, they are sound by themselves, and each is as large as both: the strip between them is narrow.
      expect(verifyLayout(bound.pieces, bound.format, bound.layout)).toEqual([]);
      for (const { ring, count } of bound.pieces.filter(({ key }) => key.includes('beside'))) {
        expect(count).toBeGreaterThan(0);
        expect(crossesItself(ring)).toBe(false);
        const both = pieces.filter(({ pair }) => pair !== undefined).map((piece) => area(piece.ring));
        expect(area(ring)).toBeGreaterThan(2 * Math.min(...both) - 1);
        expect(area(ring)).toBeLessThan(2 * Math.max(...both) + 5);
      }
    },
  );

  it('has both outlines within the one, also where they touch', () => {
    const way: Way = { kind: 'endForEnd' };
    const pieces = pairs([250], way, 1);
    const laid = (gap: number) => {
      const sheet = [
        { piece: 0, x: 200, y: 100, turn: 0 },
        { piece: 1, x: 200, y: 100 + gap, turn: 0 },
      ];
      return boundPairs(pieces, format, { offcuts: [], sheets: [sheet] });
    };
    for (const gap of [110, 130]) {
      const one = laid(gap)!.pieces[2]!;
      const missing = difference([pieces[0]!.ring, moved(pieces[1]!.ring, 0, 0, gap)], [one.ring]);
      expect(missing.reduce((sum, ring) => sum + area(ring), 0)).toBeLessThan(0.1);
    }
    const squares = [0, 1].map((i): Piece => ({ key: `${i}`, ring: rectangle(40, 40), count: 1, way, pair: 'a' }));
    const touching = [0, 40].map((y, piece) => ({ piece, x: 0, y, turn: 0 }));
    const both = boundPairs(squares, format, { offcuts: [], sheets: [touching] })!;
    // The strip is a tenth wide and may be nearest at a side of both.
    expect(Math.abs(area(both.pieces[2]!.ring) - 3200)).toBeLessThan(0.2);
  });

  it('takes none where one of a pair lies by itself', () => {
    const pieces = pairs([250], { kind: 'endForEnd' }, 1);
    const apart = [0, 1].map((piece) => ({ piece, x: 200 + 300 * piece, y: 200, turn: 0 }));
    expect(boundPairs(pieces, format, { offcuts: [], sheets: [apart] })).toBeUndefined();
  });
});
