import { describe, expect, it } from 'vitest';
import { leastSheets, offcutsHold } from '../../../../src/core/cutting/sheet/least-sheets';
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
      // Three go on the offcuts' 103,712 mm², four do not; 25 are 674,915 mm², 26 are 701,912, sheet and offcuts 686,528.
      expect([3, 4, 25, 26].map((count) => leastSheets(pieces(count), { ...CORK, offcuts }))).toEqual([0, 1, 1, 2]);
    });
  });
});
