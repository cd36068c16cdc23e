import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastByArea, leastSheets, offcutsHold } from '../../../../src/core/cutting/sheet/least-sheets';
import { rectangular } from '../../../../src/core/cutting/sheet/natural-sheet';
import { verifySheets } from '../../../../src/core/cutting/sheet/verify-layout';
import { at } from '../natural/hide';
import { rectangle } from '../outlines';

const CORK = { length: 950, width: 640, knifeRoom: 4, edgeTrim: 10 };
const pieces = (count: number) => [{ key: 'lift', ring: rectangle(266, 96), count, way: { kind: 'any' } as const }];

describe('leastSheets', () => {
  it('is the area let out over the room on the sheet (derived)', () => {
    // A piece takes 266 × 96 + 724 × 2 + 4π = 26,996.6 mm², a sheet has room for 934 × 624 = 582,816 mm², so 21.6 pieces.
    expect(leastSheets(pieces(21), CORK)).toBe(1);
    expect(leastSheets(pieces(22), CORK)).toBe(2);
    expect(leastSheets(pieces(60), CORK)).toBe(3);
  });

  it('asks no further once as many are needed as do', () => {
    expect(leastSheets(pieces(60), CORK, 3)).toBe(3);
    expect(leastSheets(pieces(60), CORK, 4)).toBe(3);
  });

  it('is none for no pieces', () => {
    expect(leastSheets([], CORK)).toBe(0);
  });

  describe('with offcuts', () => {
    // Less twice the trim and let out by the knife room: 284 × 184 and 384 × 134; the third is all trim.
    const offcuts = [
      { code: 'Rack 1', length: 300, width: 200 },
      { code: 'Rack 2', length: 400, width: 150 },
      { code: 'Rack 3', length: 10, width: 10 },
    ];
    const held = 284 * 184 + 384 * 134;

    it('counts the room on all of them together, and none for pieces that are to match (derived)', () => {
      expect(offcutsHold({ ...CORK, offcuts })).toBe(held);
      expect(offcutsHold({ ...CORK, offcuts, pairs: 'side by side' })).toBe(0);
      expect(offcutsHold(CORK)).toBe(0);
    });

    it('needs a sheet less where they hold what does not go on it (derived: 26,996.6 mm² a piece)', () => {
      // One goes on each offcut, since two are 53,993 mm², more than 52,256; and 21 on a sheet, 22 are 593,925.
      expect([2, 3, 23, 24].map((count) => leastSheets(pieces(count), { ...CORK, offcuts }))).toEqual([0, 1, 1, 2]);
    });
  });

  describe('beyond the area', () => {
    const bare = { knifeRoom: 0, edgeTrim: 0 };
    const straight = { kind: 'endForEnd' } as const;
    const laid = (list: readonly (readonly [length: number, width: number, count: number])[]) =>
      list.map(([length, width, count], i) => ({
        key: String(i),
        ring: rectangle(length, width),
        count,
        way: straight,
      }));

    it('knows that two larger than half a sheet share none, whichever way they lie (derived)', () => {
      const sheet = { length: 100, width: 100, ...bare };
      const large = [{ key: 'a', ring: rectangle(80, 65), count: 3, way: { kind: 'any' } as const }];
      // 3 × 5,200 mm² are 1.56 sheets; each is more than half of one.
      expect([leastByArea(large, sheet), leastSheets(large, sheet)]).toEqual([2, 3]);
    });

    it('knows how many strips longer than half the sheet lie beside each other (derived)', () => {
      const sheet = { length: 1000, width: 300, ...bare };
      // 520 long: one in a line, 6 of 50 in the width. 12 of them are 1.04 sheets by area, and 2 by lines; 13 are 3.
      expect([12, 13].map((count) => leastByArea(laid([[520, 50, count]]), sheet))).toEqual([2, 2]);
      expect([12, 13].map((count) => leastSheets(laid([[520, 50, count]]), sheet))).toEqual([2, 3]);
    });

    it('counts 320 long beside 700 long as more than a sheet’s length (derived)', () => {
      const sheet = { length: 1000, width: 100, ...bare };
      // Nothing of 320 lies beside 700: a line each for two of 700, and one for one of 320; by area 1.72.
      const list = laid([
        [700, 100, 2],
        [320, 100, 1],
      ]);
      expect([leastByArea(list, sheet), leastSheets(list, sheet)]).toEqual([2, 3]);
    });

    it('is never more than the fewest that there are, by trying every place on a grid', () => {
      const [length, width] = [6, 5];
      const sides = fc.tuple(
        fc.integer({ min: 1, max: 6 }),
        fc.integer({ min: 1, max: 5 }),
        fc.integer({ min: 1, max: 2 }),
      );
      let [more, closed, all] = [0, 0, 0];
      fc.assert(
        fc.property(fc.array(sides, { minLength: 1, maxLength: 4 }), (list) => {
          const sheet = { length: 10 * length, width: 10 * width, ...bare };
          const pieces = laid(list.map(([long, wide, count]) => [10 * long, 10 * wide, count]));
          const least = leastSheets(pieces, sheet);
          const fewest = fewestOnGrid(
            list.flatMap(([long, wide, count]) => Array.from({ length: count }, () => [long, wide] as const)),
            length,
            width,
          );
          expect(least).toBeLessThanOrEqual(fewest);
          expect(least).toBeGreaterThanOrEqual(leastByArea(pieces, sheet));
          all++;
          if (least > leastByArea(pieces, sheet)) more++;
          if (least === fewest) closed++;
        }),
        { numRuns: 300, seed: 7 },
      );
      // It would be of no use if it seldom told more than the area.
      expect(more).toBeGreaterThan(all / 10);
      expect(closed).toBeGreaterThan(0.8 * all);
    });
  });

  describe('on natural sheets', () => {
    const upright = (length: number, width: number, count: number, quality = 1) => ({
      key: `${length} ${width} ${quality}`,
      ring: rectangle(length, width),
      count,
      way: { kind: 'oneWay' } as const,
      quality,
    });

    it('counts the knife room with the pieces (derived)', () => {
      const size = { length: 100, width: 100 };
      const format = { ...size, knifeRoom: 10, edgeTrim: 5, natural: rectangular(size) };
      // Ground of 90 × 90, let out by 5: 90² + 4 × 90 × 5 + 25π = 9,978.5 mm²; a piece 20² + 4 × 20 × 5 + 25π = 878.5: 11.4.
      expect([11, 12].map((count) => leastSheets([upright(20, 20, count)], format))).toEqual([1, 2]);
    });

    it('lets a piece lie edge on edge with the zone that does for it', () => {
      const size = { length: 100, width: 100 };
      const zones = [{ ring: at(rectangle(40, 40), 30, 30), quality: 1 }];
      const format = { ...size, knifeRoom: 0, edgeTrim: 10, natural: { ...rectangular(size), quality: 2, zones } };
      const piece = [upright(40, 40, 1)];
      expect(verifySheets(piece, format, [[{ piece: 0, x: 30, y: 30, turn: 0 }]])).toEqual([]);
      expect(leastSheets(piece, format)).toBe(1);
    });

    it('is never more than the fewest on a grid, with a hole, a poor zone and knife room', () => {
      const sides = fc.tuple(
        fc.integer({ min: 1, max: 5 }),
        fc.integer({ min: 1, max: 4 }),
        fc.integer({ min: 1, max: 2 }),
        fc.constantFrom(1, 2),
      );
      const cell = fc.tuple(fc.integer({ min: 0, max: 7 }), fc.integer({ min: 0, max: 5 }));
      let [closed, all] = [0, 0];
      fc.assert(
        fc.property(
          fc.array(sides, { minLength: 1, maxLength: 3 }),
          cell,
          fc.integer({ min: 0, max: 2 }),
          (list, hole, poor) => {
            const pieces = list.map(([long, wide, count, quality]) => upright(10 * long, 10 * wide, count, quality));
            const size = { length: 80, width: 60 };
            const natural = {
              ...rectangular(size),
              holes: [at(rectangle(10, 10), 10 * hole[0], 10 * hole[1])],
              zones: poor > 0 ? [{ ring: rectangle(80, 10 * poor), quality: 2 }] : [],
            };
            const one = list.flatMap(([long, wide, count, quality]) =>
              Array.from({ length: count }, () => ({ long, wide, quality })),
            );
            const fewest = fewestOnGround(one, hole, poor);
            fc.pre(fewest !== undefined);
            const least = leastSheets(pieces, { ...size, knifeRoom: 10, edgeTrim: 10, natural });
            expect(least).toBeLessThanOrEqual(fewest!);
            all++;
            if (least === fewest) closed++;
          },
        ),
        { numRuns: 150, seed: 5 },
      );
      expect(closed).toBeGreaterThan(all / 2);
    });
  });
});

/** An upright piece on a grid, and the quality that it needs. */
interface OnGrid {
  readonly long: number;
  readonly wide: number;
  readonly quality: number;
}

/**
 * The fewest sheets of 8 × 6 cells for pieces that keep a cell from each other, from the edge and from a hole of one cell, those
 * that need the best off the lowest rows, by trying every place; undefined where a piece fits nowhere.
 */
function fewestOnGround(pieces: readonly OnGrid[], hole: readonly [number, number], poor: number): number | undefined {
  const sorted = [...pieces].sort((a, b) => b.long * b.wide - a.long * a.wide);
  const places = sorted.map(({ long, wide, quality }) => {
    const found: Spot[] = [];
    for (let x = 1; x + long <= 7; x++) {
      for (let y = Math.max(1, quality === 1 ? poor : 0); y + wide <= 5; y++) {
        const spot = { left: x, bottom: y, right: x + long, top: y + wide };
        if (clear(spot, { left: hole[0], bottom: hole[1], right: hole[0] + 1, top: hole[1] + 1 })) found.push(spot);
      }
    }
    return found;
  });
  if (places.some((spots) => spots.length === 0)) return undefined;
  const lie = (at: number, sheets: readonly (readonly Spot[])[]): boolean =>
    at === places.length ||
    places[at]!.some((spot) =>
      sheets.some(
        (laid, i) =>
          laid.every((other) => clear(spot, other)) &&
          lie(
            at + 1,
            sheets.map((one, k) => (k === i ? [...one, spot] : one)),
          ),
      ),
    );
  for (let sheets = 1; ; sheets++)
    if (
      lie(
        0,
        Array.from({ length: sheets }, () => []),
      )
    )
      return sheets;
}

interface Spot {
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly top: number;
}

/** Whether two keep a cell from each other. */
function clear(a: Spot, b: Spot): boolean {
  return b.left >= a.right + 1 || a.left >= b.right + 1 || b.bottom >= a.top + 1 || a.bottom >= b.top + 1;
}

/** The fewest sheets for upright rectangles, by trying every place on every sheet. */
function fewestOnGrid(pieces: readonly (readonly [number, number])[], length: number, width: number): number {
  const sorted = [...pieces].sort((a, b) => b[0] * b[1] - a[0] * a[1]);
  for (let sheets = 1; ; sheets++)
    if (fits(sorted, 0, new Uint8Array(sheets * length * width), length, width)) return sheets;
}

function fits(
  pieces: readonly (readonly [number, number])[],
  at: number,
  taken: Uint8Array,
  length: number,
  width: number,
): boolean {
  if (at === pieces.length) return true;
  const [long, wide] = pieces[at]!;
  for (let sheet = 0; sheet < taken.length; sheet += length * width) {
    const blank = taken.subarray(sheet, sheet + length * width).every((cell) => cell === 0);
    for (let x = 0; x + long <= length; x++) {
      for (let y = 0; y + wide <= width; y++) {
        const cells: number[] = [];
        for (let i = x; i < x + long; i++) for (let k = y; k < y + wide; k++) cells.push(sheet + i * width + k);
        if (cells.some((cell) => taken[cell])) continue;
        for (const cell of cells) taken[cell] = 1;
        const done = fits(pieces, at + 1, taken, length, width);
        for (const cell of cells) taken[cell] = 0;
        if (done) return true;
      }
    }
    // Blank sheets are alike.
    if (blank) return false;
  }
  return false;
}
