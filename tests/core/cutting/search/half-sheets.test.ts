import { describe, expect, it } from 'vitest';
import { quickLayout } from '../../../../src/core/cutting/quick-layout';
import { halfSheets } from '../../../../src/core/cutting/search/half-sheets';
import { takenApart } from '../../../../src/core/cutting/search/taken-apart';
import type { Piece } from '../../../../src/core/cutting/sheet/piece';
import type { SheetFormat } from '../../../../src/core/cutting/sheet/sheet';
import { verifyLayout } from '../../../../src/core/cutting/sheet/verify-layout';
import type { Way } from '../../../../src/core/cutting/sheet/way';
import { mirror } from '../../../../src/core/geometry/mirror';
import { FORMAT, naturalComplaints, SHEET } from '../natural/hide';
import { complaints } from '../oracle';
import { rectangle, soleLike } from '../outlines';

function pairsOf(lengths: readonly number[], count: number, way: Way, quality = 1): Piece[] {
  return lengths.flatMap((length) => {
    const ring = soleLike(length, 24);
    const same = { count, way, quality, pair: String(length) };
    return [
      { key: `${length} left`, ring, ...same },
      { key: `${length} right`, ring: mirror(ring), ...same },
    ];
  });
}

const across = { pairs: 'across the backbone' as const };
const endForEnd: Way = { kind: 'endForEnd' };

describe('halfSheets', () => {
  it('takes the half of each sheet with one of each pair, and gives both back as they lay', () => {
    const formats: readonly SheetFormat[] = [
      { length: 1060, width: 480, knifeRoom: 2, edgeTrim: 5, ...across },
      { length: 900, width: 700, knifeRoom: 4, edgeTrim: 0, ...across },
      { ...FORMAT, ...across },
    ];
    for (const format of formats) {
      const pieces = pairsOf([200, 230, 250], 3, { kind: 'any' });
      const start = quickLayout(pieces, format);
      const half = halfSheets(pieces, format, start);
      if (!half) throw new Error('Every piece has its other across the backbone.');
      expect(half.layout.sheets.flat()).toHaveLength(start.sheets.flat().length / 2);
      expect(verifyLayout(half.pieces, half.format, half.layout)).toEqual([]);
      const back = takenApart(half.layout, half.twos);
      expect(verifyLayout(pieces, format, back)).toEqual([]);
      const places = (layout: typeof start) =>
        layout.sheets.map((sheet) => sheet.map(({ piece, x }) => `${piece} ${x.toFixed(3)}`).sort());
      expect(places(back)).toEqual(places(start));
    }
  });

  it('has the flaws of both halves: what is laid on one half is sound on both', () => {
    // Mostly poor, with good ground on either side that is not the same.
    const poor = {
      ...SHEET,
      quality: 3,
      zones: [
        { ring: rectangle(700, 600), quality: 1 },
        { ring: rectangle(1000, 450), quality: 2 },
      ],
    };
    for (const natural of [SHEET, poor]) {
      const format = { ...FORMAT, natural, ...across };
      const pieces = pairsOf([180, 190], 2, endForEnd, 2);
      const half = halfSheets(pieces, format, quickLayout(pieces, format));
      if (!half) throw new Error('Every piece has its other across the backbone.');
      const layout = takenApart(quickLayout(half.pieces, half.format), half.twos);
      expect(layout.sheets.flat()).toHaveLength(8);
      expect(verifyLayout(pieces, format, layout)).toEqual([]);
      expect(complaints(pieces, { ...format, edgeTrim: 0 }, layout.sheets)).toEqual([]);
      if (natural === SHEET) expect(naturalComplaints(pieces, FORMAT, layout.sheets)).toEqual([]);
    }
  });

  it('is not for pieces of no pair, nor where one has no other in its place', () => {
    const format = { length: 1060, width: 480, knifeRoom: 2, edgeTrim: 5, ...across };
    const pieces = pairsOf([230], 2, endForEnd);
    const start = quickLayout(pieces, format);
    expect(halfSheets(pieces, format, start)).toBeDefined();
    const single = pieces.map((piece) => ({ ...piece, pair: undefined }));
    expect(halfSheets(single, format, start)).toBeUndefined();
    const [sheet = []] = start.sheets;
    expect(halfSheets(pieces, format, { ...start, sheets: [sheet.slice(1)] })).toBeUndefined();
  });
});
