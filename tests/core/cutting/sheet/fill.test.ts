import { describe, expect, it } from 'vitest';
import { fillOf, fullest } from '../../../../src/core/cutting/sheet/fill';
import { leastByArea } from '../../../../src/core/cutting/sheet/least-sheets';
import { usableGround } from '../../../../src/core/cutting/sheet/natural-sheet';
import { area } from '../../../../src/core/geometry/area';
import { SHEET } from '../natural/hide';
import { rectangle } from '../outlines';

const CORK = { length: 950, width: 640, knifeRoom: 4, edgeTrim: 10 };
const way = { kind: 'any' } as const;
const pieces = (count: number) => [{ key: 'lift', ring: rectangle(266, 96), count, way }];

/** A piece let out by 2 mm, and the room on a sheet and on an offcut of 300 × 200 mm within the trim (derived). */
const PIECE = 266 * 96 + 724 * 2 + 4 * Math.PI;
const ROOM = 934 * 624;
const OFFCUT = 284 * 184;

describe('how full sheets are', () => {
  it('is the area let out over the room on all sheets and offcuts (derived)', () => {
    expect(fillOf(pieces(21), CORK, 1)).toBeCloseTo((21 * PIECE) / ROOM, 4);
    expect(fillOf(pieces(60), CORK, 4)).toBeCloseTo((60 * PIECE) / (4 * ROOM), 4);
    const offcuts = [{ code: 'Rack 1', length: 300, width: 200 }];
    expect(fillOf(pieces(21), { ...CORK, offcuts }, 1)).toBeCloseTo((21 * PIECE) / (ROOM + OFFCUT), 4);
    expect(fillOf(pieces(1), { ...CORK, offcuts }, 0)).toBeCloseTo(PIECE / OFFCUT, 4);
    expect(fillOf(pieces(1), CORK, 0)).toBe(Infinity);
    expect(fillOf(pieces(0), CORK, 0)).toBe(0);
  });

  it('is above 1 exactly where the least by area is more sheets', () => {
    for (let count = 1; count <= 70; count++) {
      const least = leastByArea(pieces(count), CORK);
      expect(fillOf(pieces(count), CORK, least)).toBeLessThanOrEqual(1 + 1e-9);
      expect(fillOf(pieces(count), CORK, least - 1)).toBeGreaterThan(1);
    }
  });

  it('is on hides that of the quality which leaves least', () => {
    const hide = { length: 1000, width: 600, knifeRoom: 0, edgeTrim: 5, natural: SHEET };
    const of = (best: number, any: number) => [
      { key: 'sole', ring: rectangle(100, 80), count: best, way, quality: 1 as const },
      { key: 'lift', ring: rectangle(100, 80), count: any, way, quality: 2 as const },
    ];
    const room = (quality: 1 | 2) => usableGround(SHEET, quality, 5).reduce((sum, ring) => sum + area(ring), 0);
    const [best, any] = [room(1), room(2)];
    expect(best).toBeLessThan(any);
    expect(fillOf(of(20, 1), hide, 1)).toBeCloseTo((20 * 8000) / best, 9);
    expect(fillOf(of(1, 20), hide, 1)).toBeCloseTo((21 * 8000) / any, 9);
  });

  it('is for the fullest sheet of a layout that of what lies on it', () => {
    const lying = (count: number) => Array.from({ length: count }, () => ({ piece: 0, turn: 0, x: 0, y: 0 }));
    const layout = { offcuts: [], sheets: [lying(3), lying(12), lying(6)] };
    expect(fullest(pieces(21), CORK, layout)).toBeCloseTo((12 * PIECE) / ROOM, 4);
    expect(fullest(pieces(21), CORK, { offcuts: [], sheets: [] })).toBe(0);
  });
});
