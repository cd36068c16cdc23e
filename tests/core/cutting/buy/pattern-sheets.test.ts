import { describe, expect, it } from 'vitest';
import { groundsOf } from '../../../../src/core/cutting/buy/ground';
import { patternSheets } from '../../../../src/core/cutting/buy/pattern-sheets';
import type { Piece } from '../../../../src/core/cutting/sheet/piece';
import { complaints } from '../oracle';
import { rectangle, soleLike } from '../outlines';

const format = { length: 600, width: 400, knifeRoom: 2, edgeTrim: 5 };

function sheets(pieces: readonly Piece[]) {
  const [ground] = groundsOf(pieces, [{ format, terms: [] }]);
  return patternSheets(
    ground!,
    pieces.map(({ count }) => count),
  );
}

describe('patternSheets', () => {
  it('are sound sheets of one foot, of the other, and of both either way up', () => {
    const pieces = [false, true].map((mirrored): Piece => ({
      key: mirrored ? 'right' : 'left',
      ring: soleLike(200, 24, mirrored),
      count: 50,
      way: { kind: 'any' },
    }));
    const found = sheets(pieces);
    const feet = found.map((sheet) => [0, 1].map((foot) => sheet.filter(({ piece }) => piece === foot).length));
    expect(feet[0]![1]).toBe(0);
    expect(feet[1]).toEqual([0, feet[0]![0]]);
    expect(feet[3]).toEqual([...feet[2]!].reverse());
    for (const [i, sheet] of found.entries()) {
      const own = pieces.map((piece, foot) => ({ ...piece, count: feet[i]![foot]! }));
      expect(complaints(own, format, [sheet])).toEqual([]);
    }
  });

  it('are on a second format what they are on it alone, though both share the rows that are tried', () => {
    const pieces = [false, true].map((mirrored): Piece => ({
      key: mirrored ? 'right' : 'left',
      ring: soleLike(200, 24, mirrored),
      count: 50,
      way: { kind: 'endForEnd' },
    }));
    const other = { ...format, length: 450, knifeRoom: 4 };
    const [wide, narrow] = groundsOf(
      pieces,
      [format, other].map((one) => ({ format: one, terms: [] })),
    );
    const [alone] = groundsOf([...pieces], [{ format: other, terms: [] }]);
    const wanted = pieces.map(({ count }) => count);
    expect(patternSheets(wide!, wanted)).not.toEqual([]);
    expect(patternSheets(narrow!, wanted)).toEqual(patternSheets(alone!, wanted));
  });

  it('are left out where there are many outlines', () => {
    const pieces = [100, 110, 120, 130].map((length): Piece => ({
      key: String(length),
      ring: rectangle(length, 50),
      count: 3,
      way: { kind: 'any' },
    }));
    expect(sheets(pieces)).toEqual([]);
    expect(sheets(pieces.slice(0, 3)).length).toBe(3);
  });
});
