import { describe, expect, it } from 'vitest';
import { BuiltRows } from '../../../../src/core/cutting/rows/built-rows';
import { SheetFiller, type Direction } from '../../../../src/core/cutting/rows/fill-sheet';
import { Lays } from '../../../../src/core/cutting/rows/lay';
import type { Piece } from '../../../../src/core/cutting/sheet/piece';
import { Queue, Supply } from '../../../../src/core/cutting/rows/supply';
import { verifySheets } from '../../../../src/core/cutting/sheet/verify-layout';
import { rectangle } from '../outlines';

const ROOM = { x: 0, y: 0, length: 270, width: 200 };

describe('SheetFiller', () => {
  it.each([true, false])('fills what rows leave beside and beyond them, the rows along the sheet: %s', (along) => {
    const pieces: Piece[] = [
      { key: 'large', ring: rectangle(120, 150), count: 2, way: { kind: 'any' } },
      { key: 'small', ring: rectangle(40, 60), count: 4, way: { kind: 'any' } },
    ];
    const supply = new Supply(pieces.map(({ count }) => count));
    const directionOf = (turn: number): Direction => {
      const lays = pieces.map(({ ring }) => [Lays.of(ring, 0).at(turn)]);
      return { along, lays, areas: [18_000, 2_400], queue: new Queue([0, 1], supply), built: new BuiltRows() };
    };
    // The small pieces are too long for the rest of the large ones' rows, and lie the other way in what these leave.
    const [first, second] = along ? [directionOf(0), directionOf(90)] : [directionOf(90), directionOf(0)];
    const filler = new SheetFiller(supply, [first, second]);
    const { placements, area } = filler.fill(first, 'same', ROOM);
    expect(placements).toHaveLength(6);
    expect(area).toBe(2 * 18_000 + 4 * 2_400);
    expect(supply.total).toBe(6);
    expect(verifySheets(pieces, { length: 270, width: 200, knifeRoom: 0, edgeTrim: 0 }, [placements])).toEqual([]);
  });
});
