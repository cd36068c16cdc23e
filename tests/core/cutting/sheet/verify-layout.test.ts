import { describe, expect, it } from 'vitest';
import { itemAt } from '../../../../src/core/item-at';
import type { Placement, Placements } from '../../../../src/core/cutting/sheet/layout';
import type { Piece } from '../../../../src/core/cutting/sheet/piece';
import {
  describeFault,
  mustBeSound,
  verifyLayout,
  verifySheets,
} from '../../../../src/core/cutting/sheet/verify-layout';
import type { Pairs } from '../../../../src/core/cutting/sheet/matching-pairs';
import type { SheetFormat } from '../../../../src/core/cutting/sheet/sheet';
import { mirror } from '../../../../src/core/geometry/mirror';
import { rectangle } from '../outlines';

const FORMAT = { length: 300, width: 200, knifeRoom: 4, edgeTrim: 10 };
const PIECES: Piece[] = [
  { key: 'lift', ring: rectangle(100, 50), count: 2, way: { kind: 'endForEnd' } },
  { key: 'top piece', ring: rectangle(40, 40), count: 1, way: { kind: 'any' } },
];
const FIRST = { piece: 0, x: 10, y: 10, turn: 0 };
const OTHERS = [
  { piece: 0, x: 110, y: 114, turn: 180 },
  { piece: 1, x: 154, y: 10, turn: 90 },
];
const SOUND: readonly Placements[] = [[FIRST, ...OTHERS]];

function with0(change: Partial<Placement>): readonly Placements[] {
  return [[{ ...FIRST, ...change }, ...OTHERS]];
}

describe('verifyLayout', () => {
  it('finds no fault with pieces exactly the knife room and the edge trim apart', () => {
    expect(verifySheets(PIECES, FORMAT, SOUND)).toEqual([]);
    expect(() => mustBeSound([])).not.toThrow();
  });

  it('finds pieces that are too close, overlap, or lie within each other', () => {
    expect(verifySheets(PIECES, FORMAT, with0({ y: 10.5 }))).toMatchObject([
      { kind: 'knifeRoom', on: { sheet: 1 }, keys: ['lift', 'lift'], gap: 3.5 },
    ]);
    expect(verifySheets(PIECES, FORMAT, with0({ y: 30 }))).toMatchObject([{ kind: 'knifeRoom', gap: 0 }]);
    const within: readonly Placements[] = [
      [
        { piece: 0, x: 10, y: 10, turn: 0 },
        { piece: 1, x: 20, y: 12, turn: 0 },
      ],
    ];
    expect(verifySheets(PIECES, FORMAT, within, 'atMost')).toMatchObject([{ kind: 'knifeRoom', gap: 0 }]);
  });

  it('lets pieces touch where there is no knife room, and finds the least overlap', () => {
    const format = { ...FORMAT, knifeRoom: 0 };
    const beside = (x: number): readonly Placements[] => [
      [
        { piece: 0, x: 10, y: 10, turn: 0 },
        { piece: 0, x, y: 10, turn: 0 },
      ],
    ];
    expect(verifySheets(PIECES, format, beside(110), 'atMost')).toEqual([]);
    expect(verifySheets(PIECES, format, beside(110 - 1e-6), 'atMost')).toEqual([]);
    expect(verifySheets(PIECES, format, beside(109.99), 'atMost')).toHaveLength(1);
    expect(verifySheets(PIECES, format, beside(10), 'atMost')).toHaveLength(1);
  });

  it('finds a piece in the edge trim or off the sheet', () => {
    expect(verifySheets(PIECES, FORMAT, with0({ x: 9 }))).toMatchObject([{ kind: 'edgeTrim', keys: ['lift'], gap: 9 }]);
    expect(verifySheets(PIECES, FORMAT, with0({ x: -500 }))).toMatchObject([{ kind: 'edgeTrim', gap: -500 }]);
  });

  it('finds a piece turned as it may not lie', () => {
    expect(verifySheets(PIECES, FORMAT, with0({ x: 60, turn: 90 })).map(({ kind }) => kind)).toContain('way');
  });

  it('tells of thousands of pieces on one spot without comparing every two', () => {
    const heap = [new Array<Placement>(20_000).fill(FIRST)];
    const many = [{ ...itemAt(PIECES, 0), count: 20_000 }];
    const faults = verifySheets(many, FORMAT, heap);
    expect(faults).toHaveLength(1000);
    expect(faults[0]).toMatchObject({ kind: 'knifeRoom', gap: 0 });
  });

  it('counts the pieces', () => {
    const missing: readonly Placements[] = [OTHERS];
    expect(verifySheets(PIECES, FORMAT, missing)).toMatchObject([{ kind: 'count', laid: 1, wanted: 2 }]);
    expect(verifySheets(PIECES, FORMAT, missing, 'atMost')).toEqual([]);
    expect(verifySheets(PIECES, FORMAT, [...SOUND, ...SOUND])).toHaveLength(2);
  });

  it('finds a piece that is not in the list or lies nowhere', () => {
    const strange: readonly Placements[] = [[FIRST, ...OTHERS, { piece: 7, x: 0, y: 0, turn: 0 }]];
    expect(verifySheets(PIECES, FORMAT, strange)).toMatchObject([{ kind: 'unknown', piece: 7 }]);
    expect(verifySheets(PIECES, FORMAT, with0({ x: NaN })).map(({ kind }) => kind)).toContain('unknown');
  });

  it('says each fault in words with the pieces named, and stops a layout that has one', () => {
    const faults = [
      ...verifySheets(PIECES, FORMAT, with0({ y: 10.5 })),
      ...verifySheets(PIECES, FORMAT, [[{ ...FIRST, x: 9, turn: 10 }, ...OTHERS.slice(1)]]),
      ...verifySheets(PIECES, FORMAT, []),
    ];
    expect(faults.map((fault) => describeFault(fault))).toEqual([
      'sheet 1: lift and lift lie 3.50 mm apart',
      'sheet 1: lift lies turned by 10.0°, which it may not',
      'sheet 1: lift lies 0.32 mm from the edge',
      'lift is laid 1 times and wanted 2 times',
      'lift is laid 0 times and wanted 2 times',
      'top piece is laid 0 times and wanted 1 times',
    ]);
    expect(() => mustBeSound(faults)).toThrow(/lift and lift/);
  });

  it('holds each offcut to its own size, names it by its code, and knows those that there are', () => {
    const format = { ...FORMAT, offcuts: [{ code: 'Rack 1', length: 130, width: 80 }] };
    const [lift, topPiece] = [FIRST, itemAt(OTHERS, 1)];
    const on = (code: string, placement: Placement) =>
      verifyLayout(PIECES, format, { offcuts: [{ code, placements: [placement] }], sheets: [[topPiece]] }, 'atMost');
    expect(on('Rack 1', lift)).toEqual([]);
    expect(on('Rack 1', { ...lift, x: 25 }).map(describeFault)).toEqual([
      'offcut Rack 1: lift lies 5.00 mm from the edge',
    ]);
    expect(on('Rack 2', lift).map(describeFault)).toEqual(['offcut Rack 2 is not on the shelf, or is laid twice']);
    const twice = [lift, { ...lift, y: 11 }].map((placement) => ({ code: 'Rack 1', placements: [placement] }));
    expect(verifyLayout(PIECES, format, { offcuts: twice, sheets: [] }, 'atMost')).toMatchObject([{ kind: 'offcut' }]);
  });

  describe('on a natural sheet', () => {
    const zone = { ring: rectangle(60, 200), quality: 2 };
    const natural = {
      // A rectangle less its upper right corner.
      outline: [
        [0, 0],
        [300, 0],
        [300, 120],
        [220, 200],
        [0, 200],
      ] as const,
      holes: [
        [
          [150, 90],
          [160, 90],
          [160, 100],
          [150, 100],
        ],
      ] as const,
      zones: [zone],
      quality: 1,
      backbone: 100,
    };
    const format = { length: 300, width: 200, knifeRoom: 4, edgeTrim: 5, natural };
    const lift: Piece = { key: 'lift', ring: rectangle(40, 30), count: 1, way: { kind: 'endForEnd' } };
    const kinds = (x: number, y: number, of: Piece = lift, on: SheetFormat = format) =>
      verifySheets([of], on, [[{ piece: 0, x, y, turn: 0 }]]).map(({ kind }) => kind);

    it('finds no fault with a piece that keeps clear of everything', () => {
      expect(kinds(80, 20)).toEqual([]);
    });

    it('finds a piece that leaves the outline or comes too near its edge', () => {
      expect(kinds(255, 160)).toEqual(['edgeTrim']);
      expect(kinds(200, 145)).toEqual(['edgeTrim']);
      expect(kinds(195, 145)).toEqual([]);
    });

    it('lets pieces lie on the edge where nothing is to be trimmed, and no further', () => {
      const untrimmed = { ...format, edgeTrim: 0 };
      expect(kinds(260, 0, lift, untrimmed)).toEqual([]);
      expect(kinds(260.1, 0, lift, untrimmed)).toContain('edgeTrim');
    });

    it('finds a piece on a hole, too near it or about it', () => {
      expect(kinds(140, 80)).toEqual(['hole']);
      expect(kinds(164, 85)).toEqual(['hole']);
      expect(kinds(165, 85)).toEqual([]);
    });

    it('finds a piece on a zone whose quality does not do, and on a sheet whose quality does not', () => {
      expect(kinds(50, 20)).toEqual(['quality']);
      expect(kinds(50, 20, { ...lift, quality: 2 })).toEqual([]);
      const poor = { ...format, natural: { ...natural, quality: 3, zones: [zone] } };
      expect(kinds(10, 20, { ...lift, quality: 2 }, poor)).toEqual([]);
      expect(kinds(50, 20, { ...lift, quality: 2 }, poor)).toEqual(['quality']);
      // A sheet that just does needs no better zone under the piece.
      const even = { ...format, natural: { ...natural, quality: 2, zones: [{ ...zone, quality: 1 }] } };
      expect(kinds(50, 20, { ...lift, quality: 2 }, even)).toEqual([]);
    });

    it('finds the piece of a pair that lacks its other in the matching place', () => {
      const pair: Piece[] = [
        { ...lift, key: 'L', pair: 'one' },
        { ...lift, key: 'R', pair: 'one', ring: mirror(lift.ring) },
      ];
      const left = { piece: 0, x: 80, y: 110, turn: 0 };
      const faults = (right: Partial<typeof left>, pairs: Pairs) =>
        verifySheets(pair, { ...format, pairs }, [[left, { piece: 1, x: 80, y: 90, turn: 0, ...right }]]).map((fault) =>
          describeFault(fault),
        );
      expect(faults({}, 'across the backbone')).toEqual([]);
      expect(faults({ x: 82 }, 'across the backbone')).toHaveLength(2);
      expect(faults({ y: 105 }, 'side by side')).toEqual([]);
      expect(faults({ y: 60 }, 'side by side')[0]).toMatch(/L has no other of its pair/);
      expect(faults({ y: 60 }, 'anywhere')).toEqual([]);
    });

    it('takes a pair for mirrored across the backbone when its turns are opposite, and for side by side when they are one', () => {
      const way = { kind: 'within', degrees: 7 } as const;
      const pair: Piece[] = [
        { ...lift, key: 'L', pair: 'one', way },
        { ...lift, key: 'R', pair: 'one', way, ring: mirror(lift.ring) },
      ];
      const faults = (turn: number, y: number, pairs: Pairs) =>
        verifySheets(pair, { ...format, pairs }, [
          [
            { piece: 0, x: 80, y: 110, turn: 5 },
            { piece: 1, x: 80, y, turn },
          ],
        ]).map(({ kind }) => kind);
      expect(faults(355, 90, 'across the backbone')).toEqual([]);
      expect(faults(5, 90, 'across the backbone')).toHaveLength(2);
      expect(faults(5, 105.5, 'side by side')).toEqual([]);
      expect(faults(355, 105.5, 'side by side')).toHaveLength(2);
    });
  });
});
