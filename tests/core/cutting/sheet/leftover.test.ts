import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leftover, LEAST_SIDE, type Offcut } from '../../../../src/core/cutting/sheet/leftover';
import type { Piece } from '../../../../src/core/cutting/sheet/piece';
import { FORMAT as HIDE } from '../natural/hide';
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

  it('cuts on the side on which there is most: to the left, above or below of the pieces (derived)', () => {
    const at = (...places: readonly (readonly [number, number])[]) =>
      leftover(
        PIECES,
        FORMAT,
        places.map(([x, y]) => ({ piece: 0, x, y, turn: 0 })),
      );
    // A piece covers x … x + 200 and y … y + 100; each offcut keeps 4 mm from it.
    expect(at([690, 490])).toEqual([
      { x: 0, y: 0, length: 900, width: 486 },
      { x: 0, y: 486, length: 686, width: 114 },
    ]);
    expect(at([10, 490])).toEqual([
      { x: 0, y: 0, length: 900, width: 486 },
      { x: 214, y: 486, length: 686, width: 114 },
    ]);
    expect(at([690, 10])).toEqual([
      { x: 0, y: 114, length: 900, width: 486 },
      { x: 0, y: 0, length: 686, width: 114 },
    ]);
    expect(at([690, 200], [690, 350])).toEqual([
      { x: 0, y: 0, length: 686, width: 600 },
      { x: 686, y: 0, length: 214, width: 196 },
    ]);
    expect(at([10, 200], [10, 300])).toEqual([
      { x: 214, y: 0, length: 686, width: 600 },
      { x: 0, y: 404, length: 214, width: 196 },
    ]);
    expect(at([10, 300], [250, 300], [490, 300], [690, 300])).toEqual([
      { x: 0, y: 0, length: 900, width: 296 },
      { x: 0, y: 404, length: 900, width: 196 },
    ]);
  });

  it('is the whole sheet where nothing lies on it, and nothing on a sheet that is no rectangle', () => {
    expect(leftover(PIECES, FORMAT, [])).toEqual([{ x: 0, y: 0, length: 900, width: 600 }]);
    expect(leftover(PIECES, HIDE, [])).toEqual([]);
  });

  it('leaves out strips too narrow to keep, and keeps one that is just wide enough', () => {
    const corner = { piece: 0, x: 10, y: 10, turn: 0 };
    expect(leftover(PIECES, FORMAT, [corner, { ...corner, x: 690, y: 490 }])).toEqual([]);
    const above = (top: number) => [corner, { piece: 0, x: 690, y: top - 100, turn: 0 }];
    expect(leftover(PIECES, FORMAT, above(600 - 4 - LEAST_SIDE))).toEqual([{ x: 0, y: 550, length: 900, width: 50 }]);
    expect(leftover(PIECES, FORMAT, above(600 - 4 - LEAST_SIDE + 1))).toEqual([]);
  });

  it('is as large as two cuts of all, tried one by one, make it', () => {
    const format = { length: 60, width: 40, knifeRoom: 2, edgeTrim: 0 };
    const small: Piece[] = [
      { key: 'a', ring: rectangle(12, 5), count: 9, way: { kind: 'any' } },
      { key: 'b', ring: rectangle(6, 6), count: 9, way: { kind: 'any' } },
    ];
    const placed = fc.tuple(
      fc.integer({ min: 0, max: 1 }),
      fc.integer({ min: 0, max: 48 }),
      fc.integer({ min: 0, max: 34 }),
    );
    let cutTwice = 0;
    fc.assert(
      fc.property(fc.array(placed, { minLength: 1, maxLength: 4 }), (places) => {
        const sheet = places.map(([piece, x, y]) => ({ piece, x, y, turn: 0 }));
        const taken = places.map(([piece, x, y]) => {
          const [length, width] = piece === 0 ? [12, 5] : [6, 6];
          return { x: x - 2, y: y - 2, length: length + 4, width: width + 4 };
        });
        const found = leftover(small, format, sheet, 8);
        const whole = { x: 0, y: 0, length: 60, width: 40 };
        const first = strips(whole, taken, 8)[0];
        expect(Math.max(0, ...found.map(sizeOf))).toBe(first ? sizeOf(first.strip) : 0);
        found.forEach((one, i) => {
          expect(Math.min(one.length, one.width)).toBeGreaterThanOrEqual(8);
          for (const other of [...taken, ...found.slice(0, i)]) expect(shared(one, other)).toBe(0);
          expect(shared(one, whole)).toBe(sizeOf(one));
          if (i > 0) expect(sizeOf(one)).toBeLessThanOrEqual(sizeOf(found[i - 1] as Offcut));
        });
        if (found.length < 2) return;
        cutTwice += 1;
        // Of equal first cuts either may be made: the second is the largest of what one of them leaves.
        const seconds = strips(whole, taken, 8)
          .filter(({ strip }) => sizeOf(strip) === sizeOf(first?.strip as Offcut))
          .map(({ rest }) => sizeOf(strips(rest, taken, 8)[0]?.strip ?? { x: 0, y: 0, length: 0, width: 0 }));
        expect(seconds).toContain(sizeOf(found[1] as Offcut));
      }),
      { seed: 23, numRuns: 300 },
    );
    expect(cutTwice).toBeGreaterThan(100);
  });
});

const sizeOf = ({ length, width }: Offcut) => length * width;

/** Area that two rectangles share. */
function shared(a: Offcut, b: Offcut): number {
  const along = Math.min(a.x + a.length, b.x + b.length) - Math.max(a.x, b.x);
  const across = Math.min(a.y + a.width, b.y + b.width) - Math.max(a.y, b.y);
  return Math.max(0, along) * Math.max(0, across);
}

/** What a cut at every whole millimetre parts from a rectangle with nothing in it, and what remains; largest first. */
function strips(of: Offcut, taken: readonly Offcut[], least: number): { strip: Offcut; rest: Offcut }[] {
  const cuts: { strip: Offcut; rest: Offcut }[] = [];
  for (let at = 1; at < of.length; at++) {
    const [left, right] = [
      { ...of, length: at },
      { ...of, x: of.x + at, length: of.length - at },
    ];
    cuts.push({ strip: left, rest: right }, { strip: right, rest: left });
  }
  for (let at = 1; at < of.width; at++) {
    const [below, above] = [
      { ...of, width: at },
      { ...of, y: of.y + at, width: of.width - at },
    ];
    cuts.push({ strip: below, rest: above }, { strip: above, rest: below });
  }
  return cuts
    .filter(({ strip }) => Math.min(strip.length, strip.width) >= least)
    .filter(({ strip }) => taken.every((one) => shared(strip, one) === 0))
    .sort((a, b) => sizeOf(b.strip) - sizeOf(a.strip));
}
