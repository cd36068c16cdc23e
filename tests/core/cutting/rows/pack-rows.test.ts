import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastSheets } from '../../../../src/core/cutting/sheet/least-sheets';
import { packRows } from '../../../../src/core/cutting/rows/pack-rows';
import type { Piece } from '../../../../src/core/cutting/sheet/piece';
import type { Way } from '../../../../src/core/cutting/sheet/way';
import { area } from '../../../../src/core/geometry/area';
import { Problem } from '../../../../src/core/problem';
import { evenly } from '../../../evenly';
import { complaints } from '../oracle';
import { anyOutline, rectangle, soleLike } from '../outlines';

const CORK = { length: 950, width: 640, knifeRoom: 4, edgeTrim: 10 };
const ANY: Way = { kind: 'any' };
const END_FOR_END: Way = { kind: 'endForEnd' };

function run(way: Way, each = 3): Piece[] {
  return [230, 240, 250, 260, 270].flatMap((length) =>
    [false, true].map((right): Piece => ({
      key: `sole ${length} ${right ? 'right' : 'left'}`,
      ring: soleLike(length, 60, right),
      count: each,
      way,
    })),
  );
}

describe('packRows', () => {
  it('lays 60 rectangles on 4 sheets end for end and on 3 with quarter turns in the rest (derived)', () => {
    const pieces = (way: Way) => [{ key: 'lift', ring: rectangle(266, 96), count: 60, way }];
    const straight = packRows(pieces(END_FOR_END), CORK);
    expect(straight.map((sheet) => sheet.length)).toEqual([18, 18, 18, 6]);
    const turned = packRows(pieces(ANY), CORK);
    expect(turned.map((sheet) => sheet.length)).toEqual([20, 20, 20]);
  });

  it('fits pieces exactly where the knife room and trim leave not a hair to spare', () => {
    const format = { length: 3 * 100 + 2 * 4 + 20, width: 2 * 50 + 4 + 20, knifeRoom: 4, edgeTrim: 10 };
    const layout = packRows([{ key: 'block', ring: rectangle(100, 50), count: 6, way: END_FOR_END }], format);
    expect(layout).toHaveLength(1);
  });

  it('shares sheets between sizes: eight sizes of one pair each take one sheet, not eight', () => {
    const pieces = Array.from({ length: 16 }, (_, i): Piece => ({
      key: `insole ${i}`,
      ring: soleLike(230 + 6 * (i >> 1), 60, i % 2 === 1),
      count: 1,
      way: ANY,
    }));
    expect(packRows(pieces, CORK)).toHaveLength(1);
  });

  it.each([ANY, END_FOR_END, { kind: 'oneWay' } as const, { kind: 'within', degrees: 8 } as const])(
    'stands the check of another library for a run that may lie %o',
    (way) => {
      const pieces = run(way);
      const layout = packRows(pieces, CORK);
      expect(complaints(pieces, CORK, layout)).toEqual([]);
      expect(layout.length).toBeGreaterThanOrEqual(leastSheets(pieces, CORK));
      if (way.kind === 'oneWay') expect(layout.flat().every(({ turn }) => turn === 0)).toBe(true);
      if (way.kind === 'endForEnd') expect(layout.flat().every(({ turn }) => turn % 180 === 0)).toBe(true);
    },
  );

  it('stacks small pieces in the rows of large ones', () => {
    const pieces: Piece[] = [
      { key: 'board', ring: rectangle(700, 100), count: 1, way: { kind: 'oneWay' } },
      { key: 'lift', ring: rectangle(100, 46), count: 4, way: { kind: 'oneWay' } },
    ];
    const layout = packRows(pieces, { length: 950, width: 130, knifeRoom: 4, edgeTrim: 10 });
    expect(layout).toHaveLength(1);
    expect(complaints(pieces, { length: 950, width: 130, knifeRoom: 4, edgeTrim: 10 }, layout)).toEqual([]);
  });

  it('draws the pieces of the last sheet together', () => {
    const sheets = packRows([{ key: 'lift', ring: rectangle(100, 50), count: 6, way: ANY }], CORK);
    const right = Math.max(...sheets.flat().map(({ x }) => x));
    expect(sheets).toHaveLength(1);
    expect(right).toBeLessThan(200);
  });

  it('gives the same layout for the same pieces', () => {
    expect(packRows(run(ANY), CORK)).toEqual(packRows(run(ANY), CORK));
  });

  it('lays a piece aslant that fits no other way', () => {
    const pieces: Piece[] = [{ key: 'strip', ring: rectangle(1080, 10), count: 1, way: ANY }];
    const layout = packRows(pieces, CORK);
    expect(complaints(pieces, CORK, layout)).toEqual([]);
  });

  it('names a piece that fits no sheet, its size and the sheet', () => {
    const pieces: Piece[] = [...run(ANY, 1), { key: 'runner 12', ring: rectangle(1200, 300), count: 1, way: ANY }];
    expect(() => packRows(pieces, CORK)).toThrow(Problem);
    expect(() => packRows(pieces, CORK)).toThrow(/runner 12.*1200 × 300.*930 × 620/);
  });

  it('lays nothing where nothing is wanted', () => {
    expect(packRows([], CORK)).toEqual([]);
    expect(packRows([{ key: 'none', ring: rectangle(10, 10), count: 0, way: ANY }], CORK)).toEqual([]);
  });

  it('lays a piece that fits to a hair at one turn and with room to spare at the next', () => {
    const format = { length: 193, width: 262.5, knifeRoom: 4, edgeTrim: 0.5 };
    const turn = (50.25 * Math.PI) / 180;
    // At 50.25° it is 0.0004 mm longer than the 192 mm within the trim, which the check lets pass.
    const length = (192.0004 - 10 * Math.sin(turn)) / Math.cos(turn);
    const pieces: readonly Piece[] = [{ key: 'strip', ring: rectangle(length, 10), count: 1, way: ANY }];
    expect(packRows(pieces, format)).toHaveLength(1);
    expect(complaints(pieces, format, packRows(pieces, format))).toEqual([]);
  });

  it('stands the check for outlines of any shape, lying any way', { timeout: 60_000 }, () => {
    const way = fc.constantFrom<Way>(ANY, END_FOR_END, { kind: 'oneWay' }, { kind: 'within', degrees: 15 });
    const piece = fc.record({ ring: anyOutline, count: fc.integer({ min: 1, max: 6 }), way });
    const knifeRoom = fc.constantFrom(0, 0.5, 4);
    fc.assert(
      fc.property(fc.array(piece, { minLength: 1, maxLength: 5 }), knifeRoom, (given, room) => {
        const format = { length: 420, width: 330, knifeRoom: room, edgeTrim: 5 };
        const pieces = given.map((one, i): Piece => ({ ...one, key: `piece ${i}` }));
        expect(complaints(pieces, format, packRows(pieces, format))).toEqual([]);
      }),
      { numRuns: 40, seed: 7 },
    );
  });

  it('stands the check for large pieces with many small ones that fill what they leave', { timeout: 60_000 }, () => {
    const side = evenly(0.08, 0.9);
    const piece = fc.record({ length: side, width: side, small: fc.boolean(), ring: anyOutline });
    fc.assert(
      fc.property(fc.array(piece, { minLength: 2, maxLength: 8 }), fc.constantFrom(ANY, END_FOR_END), (given, way) => {
        const format = { length: 500, width: 300, knifeRoom: 3, edgeTrim: 5 };
        const pieces = given.map(({ length, width, small, ring }, i): Piece => {
          const scale = small ? 0.2 : 1;
          const shape = i % 3 ? rectangle(length * 300 * scale, width * 300 * scale) : ring;
          return { key: `piece ${i}`, ring: shape, count: small ? 24 : 3, way };
        });
        expect(complaints(pieces, format, packRows(pieces, format))).toEqual([]);
      }),
      { numRuns: 20, seed: 3 },
    );
  });

  it('fills the sheets of a long run of one size better than half', () => {
    const pieces = run(ANY, 40);
    const layout = packRows(pieces, CORK);
    const net = pieces.reduce((sum, { ring, count }) => sum + area(ring) * count, 0);
    expect(net / (layout.length * CORK.length * CORK.width)).toBeGreaterThan(0.6);
  });
});
