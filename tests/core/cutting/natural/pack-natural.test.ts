import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { itemAt } from '../../../../src/core/item-at';
import { packNatural } from '../../../../src/core/cutting/natural/pack-natural';
import { PAIRS } from '../../../../src/core/cutting/sheet/matching-pairs';
import type { Piece } from '../../../../src/core/cutting/sheet/piece';
import type { Way } from '../../../../src/core/cutting/sheet/way';
import { Memory } from '../../../../src/core/memory';
import { shared } from '../../../../src/core/shared';
import { mirror } from '../../../../src/core/geometry/mirror';
import { moved } from '../../../../src/core/geometry/moved';
import type { Point } from '../../../../src/core/geometry/ring';
import { evenly } from '../../../evenly';
import { areaOutside, complaints } from '../oracle';
import { at, FORMAT, hideOf, naturalComplaints, SHEET } from './hide';
import { anyOutline, rectangle, soleLike } from '../outlines';

const END_FOR_END: Way = { kind: 'endForEnd' };

function pairsOf(lengths: readonly number[], count: number, quality?: number): Piece[] {
  return lengths.flatMap((length): Piece[] => {
    const left = soleLike(length, 40);
    const same = { count, way: END_FOR_END, pair: String(length), quality };
    return [
      { key: `${length} L`, ring: left, ...same },
      { key: `${length} R`, ring: mirror(left), ...same },
    ];
  });
}

describe('packNatural', () => {
  it('lays soles on a hide, clear of holes and of the zone that does not do for them', () => {
    const pieces = [...pairsOf([250, 260, 270], 3), ...pairsOf([240], 4, 2)];
    const layout = packNatural(pieces, FORMAT);
    expect(naturalComplaints(pieces, FORMAT, layout)).toEqual([]);
    expect(layout.length).toBeLessThanOrEqual(3);
  });

  it('cuts pieces that need less from zones that do for them, so that fewer sheets are needed', () => {
    const sheets = (quality: 1 | 2) => packNatural(pairsOf([260, 270], 6, quality), FORMAT).length;
    expect(sheets(2)).toBeLessThan(sheets(1));
  });

  it('keeps to good zones where the rest of the sheet does not do', () => {
    const good = at(rectangle(600, 300), 200, 150);
    const natural = { ...SHEET, quality: 3, zones: [{ ring: good, quality: 1 }] };
    const pieces = pairsOf([250], 1);
    const sheet = itemAt(packNatural(pieces, { ...FORMAT, natural }), 0);
    for (const { piece, turn, x, y } of sheet) {
      expect(areaOutside(moved(itemAt(pieces, piece).ring, turn, x, y), good)).toBeLessThan(0.1);
    }
  });

  it('mirrors pairs across the backbone, and lays pairs side by side at one length along it', () => {
    const pieces = pairsOf([240, 260], 3);
    for (const sheet of packNatural(pieces, { ...FORMAT, pairs: 'across the backbone' })) {
      for (const { x, y, turn, piece } of sheet.filter((one) => one.piece % 2 === 0)) {
        const other = sheet.find((one) => one.piece === piece + 1 && Math.abs(one.x - x) < 1e-6);
        expect(other?.y).toBeCloseTo(2 * SHEET.backbone - y, 6);
        expect(((other?.turn ?? NaN) + turn) % 360).toBe(0);
      }
    }
    for (const sheet of packNatural(pieces, { ...FORMAT, pairs: 'side by side' })) {
      expect(sheet.filter(({ piece }) => piece % 2 === 0)).toHaveLength(sheet.length / 2);
    }
  });

  it('lays pairs that match on a rectangle too', () => {
    const pieces = pairsOf([260], 4);
    const format = { length: 900, width: 600, knifeRoom: 3, edgeTrim: 5, pairs: 'side by side' as const };
    const layout = packNatural(pieces, format);
    expect(complaints(pieces, format, layout)).toEqual([]);
    expect(layout).toHaveLength(1);
  });

  it('names a piece that fits nowhere', () => {
    const pieces = [...pairsOf([250], 1), { key: 'a plank', ring: rectangle(990, 40), count: 1, way: END_FOR_END }];
    expect(() => packNatural(pieces, FORMAT)).toThrow(/a plank: .*no place within the outline.*clear of its holes/);
  });

  it('gives the same layout for the same pieces', () => {
    const pieces = pairsOf([250, 265], 2);
    expect(packNatural(pieces, FORMAT)).toEqual(packNatural(pieces, FORMAT));
  });

  it('lays the same with what is kept of the same outlines in other numbers, and on other sheets, as without it', () => {
    const jobs = [
      { pieces: pairsOf([250, 265], 1), format: FORMAT },
      { pieces: pairsOf([250, 265], 3), format: FORMAT },
      { pieces: pairsOf([250, 265], 3), format: { ...FORMAT, knifeRoom: 6 } },
      { pieces: pairsOf([250, 265], 3, 2), format: FORMAT },
    ];
    const lay = () => jobs.map(({ pieces, format }) => packNatural(pieces, format));
    const kept = shared('shapes of pieces on natural sheets', () => new Memory(0));
    const alone = jobs.map(({ pieces, format }) => {
      kept.forget();
      return packNatural(pieces, format);
    });
    lay();
    expect(kept.bytes).toBeGreaterThan(0);
    expect(lay()).toEqual(alone);
  });

  it('stands the check of another library for outlines of any shape, every way and match', { timeout: 120_000 }, () => {
    const way = fc.constantFrom<Way>(
      { kind: 'any' },
      { kind: 'endForEnd' },
      { kind: 'oneWay' },
      { kind: 'within', degrees: 7 },
    );
    // Mirrored pairs of them go between the backbone and the zone that does not do.
    const small = anyOutline.map((ring) => ring.map(([x, y]): Point => [0.4 * x, 0.4 * y]));
    const waves = fc.array(evenly(-0.06, 0.06), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(
        small,
        way,
        waves,
        fc.constantFrom(0, 3),
        fc.constantFrom(...PAIRS),
        (ring, lies, hide, room, pairs) => {
          const same = { count: 4, way: lies, pair: 'one' };
          const pieces = [
            { key: 'L', ring, ...same },
            { key: 'R', ring: mirror(ring), ...same },
          ];
          const format = { ...FORMAT, knifeRoom: room, natural: { ...SHEET, outline: hideOf(hide) }, pairs };
          expect(naturalComplaints(pieces, format, packNatural(pieces, format))).toEqual([]);
        },
      ),
      { numRuns: 25, seed: 17, endOnFailure: true },
    );
  });
});
