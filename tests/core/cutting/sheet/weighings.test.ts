import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastSheets } from '../../../../src/core/cutting/sheet/least-sheets';
import type { Piece } from '../../../../src/core/cutting/sheet/piece';
import { type SheetFormat, roomOn } from '../../../../src/core/cutting/sheet/sheet';
import { weighings } from '../../../../src/core/cutting/sheet/weighings';
import { rectangle } from '../outlines';

const side = (most: number) => fc.integer({ min: 2, max: most }).map((steps) => 10 * steps);
const lists = fc.array(fc.tuple(side(40), side(20), fc.integer({ min: 1, max: 9 })), { minLength: 1, maxLength: 6 });
const shelves = fc.array(fc.tuple(side(30), side(15)), { maxLength: 2 });

describe('weighings', () => {
  it('that are left out where they could not matter change no least number of sheets (derived: by all of them)', () => {
    let [more, made, kept] = [0, 0, 0];
    fc.assert(
      fc.property(lists, shelves, fc.constantFrom('any', 'endForEnd'), (list, shelf, kind) => {
        const pieces = list.map(([length, width, count], i): Piece => ({
          key: String(i),
          ring: rectangle(length, width),
          count,
          way: { kind },
        }));
        const offcuts = shelf.map(([length, width], i) => ({ code: String(i), length, width }));
        const format: SheetFormat = { length: 420, width: 210, knifeRoom: 0, edgeTrim: 0, offcuts };
        const room = roomOn(format);
        const asked = [...weighings(pieces, room, format)].map(({ weight, hold }) => {
          const rest = weight - shelf.reduce((sum, [length, width]) => sum + hold({ length, width }), 0);
          return rest <= 0 ? 0 : Math.max(1, Math.ceil(rest / hold(room) - 1e-9));
        });
        const least = leastSheets(pieces, format);
        expect(least).toBe(asked.reduce((most, one) => Math.max(most, one)));
        made += asked.length;
        kept += [...weighings(pieces, room, format, (sheets) => Math.ceil(sheets) > least)].length;
        if (least > asked[0]!) more++;
      }),
      { numRuns: 400, seed: 3 },
    );
    // It would be of no use if the area alone told as much, or if few could be left out.
    expect(more).toBeGreaterThan(100);
    expect(kept).toBeLessThan(made / 2);
  });

  it('weigh pieces of one outline, and the other foot’s, as one (derived)', () => {
    const ring = rectangle(100, 50);
    const one = { key: 'a', ring, count: 30, way: { kind: 'endForEnd' } as const };
    const apart = Array.from({ length: 30 }, (_, i) => ({ ...one, key: String(i), ring: [...ring], count: 1 }));
    const room = { length: 420, width: 210 };
    const told = (pieces: readonly Piece[]) =>
      [...weighings(pieces, room, { knifeRoom: 2 })].map(({ weight }) => weight);
    expect(told(apart)).toEqual(told([one]));
  });
});
