import { describe, expect, it } from 'vitest';
import { Effort } from '../../../../src/core/cutting/search/effort';
import { Sheets, turnsFor } from '../../../../src/core/cutting/search/sheets';
import type { Layout, Placements } from '../../../../src/core/cutting/sheet/layout';
import type { Way } from '../../../../src/core/cutting/sheet/way';
import { FORMAT, SHEET } from '../natural/hide';
import { rectangle, soleLike } from '../outlines';

const pieces = [250, 220].map((length, i) => ({
  key: `sole ${i}`,
  ring: soleLike(length, 30),
  count: 2,
  way: { kind: 'any' } as Way,
}));
const format = { length: 700, width: 400, knifeRoom: 4, edgeTrim: 8 };
const onSheets = (sheets: readonly Placements[]): Layout => ({ offcuts: [], sheets });
const effort = () => new Effort(1e6, { stopped: false });

describe('Sheets', () => {
  const layout = [
    [
      { piece: 0, turn: 90, x: 150, y: 160 },
      { piece: 1, turn: 0, x: 400, y: 100 },
    ],
    [{ piece: 1, turn: 180, x: 300, y: 250 }],
  ];
  const sheets = new Sheets(
    pieces,
    turnsFor(pieces, onSheets(layout)),
    layout.map((placements) => ({ format, placements })),
    [0],
    effort(),
  );

  it('lays pieces on their sheets as they were given, and those that lie nowhere out of the way', () => {
    const saved = sheets.arrangement.save();
    sheets.placements(saved).forEach((placements, sheet) => {
      placements.forEach((placement, i) => {
        const given = layout[sheet]![i]!;
        expect(placement).toMatchObject({ piece: given.piece, turn: given.turn });
        expect(placement.x).toBeCloseTo(given.x, 9);
        expect(placement.y).toBeCloseTo(given.y, 9);
      });
    });
    expect(sheets.left(saved)).toEqual([0]);
    expect(saved.loss).toBe(0);
  });

  it('knows of the knife room: two pieces nearer to each other than it lose by it', () => {
    const lossAt = (gap: number) => {
      const square = [
        {
          key: 'a',
          ring: [
            [0, 0],
            [50, 0],
            [50, 50],
            [0, 50],
          ] as const,
          count: 2,
          way: { kind: 'oneWay' } as Way,
        },
      ];
      const placements = [50, 100 + gap].map((x) => ({ piece: 0, turn: 0, x, y: 50 }));
      return new Sheets(square, turnsFor(square, onSheets([placements])), [{ format, placements }], [], effort())
        .arrangement.loss;
    };
    expect(lossAt(4.01)).toBe(0);
    expect(lossAt(3.9)).toBeGreaterThan(0);
  });

  it('keeps pieces off what a hide lacks of its box', () => {
    const [x, y] = SHEET.outline.reduce(
      ([sx, sy], [px, py]) => [sx + px / SHEET.outline.length, sy + py / SHEET.outline.length],
      [0, 0],
    );
    const lossAt = (px: number, py: number) => {
      const placements = [{ piece: 0, turn: 0, x: px, y: py }];
      return new Sheets(
        pieces,
        turnsFor(pieces, onSheets([placements])),
        [{ format: FORMAT, placements }],
        [],
        effort(),
      ).arrangement.loss;
    };
    expect(lossAt(130, 60)).toBeGreaterThan(0);
    expect(lossAt(x, y)).toBeLessThan(lossAt(130, 60));
  });
});

describe('turnsFor', () => {
  it('gives the turns that a way allows, those in which a piece lies among them, each with its half turn', () => {
    const of = (way: Way, turn: number) =>
      turnsFor([{ ...pieces[0]!, way }], onSheets([[{ piece: 0, turn, x: 0, y: 0 }]]))[0]!;
    expect(of({ kind: 'oneWay' }, 0)).toEqual([0]);
    expect(of({ kind: 'endForEnd' }, 180)).toEqual([0, 180]);
    expect(of({ kind: 'within', degrees: 10 }, 0)).toEqual([0, 5, 10, 170, 175, 180, 185, 190, 350, 355]);
    expect(of({ kind: 'any' }, 7)).toContain(187);
    expect(of({ kind: 'any' }, 7)).toHaveLength(14);
  });

  it('gives fewer within an angle the more outlines there are: every two of them in each turn are prepared', () => {
    const of = (outlines: number) => {
      const many = Array.from({ length: outlines }, (_, i) => ({
        ...pieces[0]!,
        ring: rectangle(50 + i, 30),
        way: { kind: 'within', degrees: 10 } as const,
      }));
      return turnsFor(many, { offcuts: [], sheets: [] })[0]!;
    };
    expect(of(12)).toHaveLength(10);
    expect(of(21)).toEqual([0, 10, 170, 180, 190, 350]);
    expect(of(22)).toEqual([0, 180]);
  });
});
