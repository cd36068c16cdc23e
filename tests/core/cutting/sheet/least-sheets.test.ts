import { describe, expect, it } from 'vitest';
import { leastSheets } from '../../../../src/core/cutting/sheet/least-sheets';
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

  it('is none for no pieces', () => {
    expect(leastSheets([], CORK)).toBe(0);
  });
});
