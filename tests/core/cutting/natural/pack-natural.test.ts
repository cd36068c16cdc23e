import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Layout } from '../../../../src/core/cutting/layout';
import type { NaturalSheet } from '../../../../src/core/cutting/natural/natural-sheet';
import { packNatural } from '../../../../src/core/cutting/natural/pack-natural';
import { PAIRS } from '../../../../src/core/cutting/pairs';
import type { Piece } from '../../../../src/core/cutting/piece';
import type { Way } from '../../../../src/core/cutting/way';
import { mirror } from '../../../../src/core/geometry/mirror';
import { moved } from '../../../../src/core/geometry/moved';
import type { Point, Ring } from '../../../../src/core/geometry/ring';
import { areaOutside, complaints, sharedArea, toEdge } from '../oracle';
import { anyOutline, rectangle, regular, soleLike } from '../outlines';

const END_FOR_END: Way = { kind: 'endForEnd' };

/** An invented hide, 1000 × 600 mm, bulged by waves of several heights. */
function hideOf(waves: readonly number[]): Ring {
  return Array.from({ length: 48 }, (_, i): Point => {
    const angle = (2 * Math.PI * i) / 48;
    const bulge = waves.reduce((sum, wave, k) => sum + wave * Math.cos((k + 2) * angle + k), 1);
    return [500 + 420 * bulge * Math.cos(angle), 300 + 240 * bulge * Math.sin(angle)];
  });
}

function at(ring: Ring, x: number, y: number): Ring {
  return moved(ring, 0, x, y);
}

const SHEET: NaturalSheet = {
  outline: hideOf([0.05, -0.04, 0.03]),
  holes: [at(regular(7, 18), 430, 320), at(regular(5, 12), 700, 220)],
  zones: [{ ring: at(rectangle(1000, 170), 0, 0), quality: 2 }],
  quality: 1,
  backbone: 300,
};
const FORMAT = { length: 1000, width: 600, knifeRoom: 3, edgeTrim: 5, natural: SHEET };

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

/** What is wrong with a layout on a natural sheet by arithmetic that the project does not use. */
function naturalComplaints(pieces: readonly Piece[], format: typeof FORMAT, layout: Layout): string[] {
  const { outline, holes, zones } = format.natural;
  const found = complaints(pieces, { ...format, edgeTrim: 0 }, layout);
  layout.forEach((sheet, number) => {
    for (const { piece, turn, x, y } of sheet) {
      const { key, ring, quality = 1 } = pieces[piece];
      const laid = moved(ring, turn, x, y);
      const here = `sheet ${number}: ${key}`;
      if (areaOutside(laid, outline) > 0.05) found.push(`${here} leaves the outline`);
      for (const edge of [outline, ...holes]) {
        const gap = Math.min(...laid.map((p) => toEdge(p, edge)), ...edge.map((p) => toEdge(p, laid)));
        if (gap < format.edgeTrim - 2e-3) found.push(`${here} lies ${gap} from an edge`);
      }
      if (holes.some((hole) => sharedArea(laid, hole) > 0)) found.push(`${here} lies on a hole`);
      for (const zone of zones) {
        const shared = zone.quality > quality ? sharedArea(laid, zone.ring) : 0;
        if (shared > 0.1) found.push(`${here} has ${shared} mm² on a zone that does not do`);
      }
    }
  });
  return found;
}

describe('packNatural', () => {
  it('lays soles on a hide, clear of holes and of the zone that does not do for them', () => {
    const pieces = [...pairsOf([250, 260, 270], 3), ...pairsOf([240], 4, 2)];
    const layout = packNatural(pieces, FORMAT);
    expect(naturalComplaints(pieces, FORMAT, layout)).toEqual([]);
    expect(layout.length).toBeLessThanOrEqual(3);
  });

  it('cuts pieces that need less from zones that do for them, so that fewer sheets are needed', () => {
    const [fine, coarse] = [1, 2].map((quality) => packNatural(pairsOf([260, 270], 6, quality), FORMAT).length);
    expect(coarse).toBeLessThan(fine);
  });

  it('keeps to good zones where the rest of the sheet does not do', () => {
    const natural = { ...SHEET, quality: 3, zones: [{ ring: at(rectangle(600, 300), 200, 150), quality: 1 }] };
    const pieces = pairsOf([250], 1);
    const [sheet] = packNatural(pieces, { ...FORMAT, natural });
    for (const { piece, turn, x, y } of sheet) {
      expect(areaOutside(moved(pieces[piece].ring, turn, x, y), natural.zones[0].ring)).toBeLessThan(0.1);
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

  it('stands the check of another library for outlines of any shape, every way and match', { timeout: 120_000 }, () => {
    const way = fc.constantFrom<Way>(
      { kind: 'any' },
      { kind: 'endForEnd' },
      { kind: 'oneWay' },
      { kind: 'within', degrees: 7 },
    );
    const waves = fc.array(fc.double({ min: -0.06, max: 0.06, noNaN: true }), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(
        anyOutline,
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
