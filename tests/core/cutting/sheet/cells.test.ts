import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { area } from '../../../../src/core/geometry/area';
import { letOutArea } from '../../../../src/core/geometry/let-out-area';
import { mirror } from '../../../../src/core/geometry/mirror';
import { quickLayout } from '../../../../src/core/cutting/quick-layout';
import { weighingsByCells } from '../../../../src/core/cutting/sheet/cells';
import { leastByArea, leastSheets } from '../../../../src/core/cutting/sheet/least-sheets';
import type { Piece } from '../../../../src/core/cutting/sheet/piece';
import { roomOn } from '../../../../src/core/cutting/sheet/sheet';
import { convexHull } from '../../../../src/core/geometry/convex-hull';
import { anyOutline, regular, soleLike } from '../outlines';

const bare = { knifeRoom: 0, edgeTrim: 0 };
const disc = (radius: number, count: number): Piece => ({
  key: 'disc',
  ring: regular(240, radius),
  count,
  way: { kind: 'any' },
});

function sized(pieces: readonly Pick<Piece, 'ring' | 'count'>[], knifeRoom: number) {
  return pieces.map(({ ring, count }) => ({ ring, count, area: letOutArea(ring, knifeRoom / 2) }));
}

/** Share of a room that pieces take at least by the best of the weighings. */
function share(pieces: readonly Piece[], format: Parameters<typeof roomOn>[0]): number {
  const room = roomOn(format);
  return Math.max(
    ...[...weighingsByCells(sized(pieces, format.knifeRoom), room, format.knifeRoom)].map(
      ({ weight, hold }) => weight / hold(room),
    ),
  );
}

describe('weighingsByCells', () => {
  it('gives circles the hexagons that they lie in: 2√3 r² each, and to the sheet two sides more (L. Fejes Tóth)', () => {
    const format = { length: 2000, width: 2000, ...bare };
    const packed = share([disc(10, 10_000)], format) * 2000 ** 2;
    expect(packed / 10_000 / 100).toBeGreaterThan(0.99 * 2 * Math.sqrt(3));
    expect(packed / 10_000 / 100).toBeLessThanOrEqual(2 * Math.sqrt(3));
  });

  it('holds against the densest packings of circles in a square that are known', () => {
    // Radii in the unit square, from memory of the tables by Specht (packomania.com).
    const known: readonly (readonly [count: number, radius: number])[] = [
      [4, 0.25],
      [9, 1 / 6],
      [10, 0.148204322],
      [20, 0.111382347],
      [30, 0.091671057],
      [39, 0.081836],
    ];
    for (const [count, radius] of known) {
      const side = 1000;
      expect(share([disc(side * radius, count)], { length: side, width: side, ...bare })).toBeLessThanOrEqual(1);
    }
  });

  it('tells of more sheets than the area does where neither rows nor any search can lay the pieces on fewer', () => {
    const format = { length: 1000, width: 1000, ...bare };
    // 36 of radius 90 take 0.916 of the sheet by their area, and as hexagons 1.010.
    expect([leastByArea([disc(90, 36)], format), leastSheets([disc(90, 36)], format)]).toEqual([1, 2]);
    // Soles: 4 % or more between them, however they lie.
    const soles = [255, 262, 268].flatMap((length): Piece[] => {
      const shared = { count: 10, way: { kind: 'any' } as const };
      const ring = soleLike(length, 60);
      return [
        { key: `${length} left`, ring, ...shared },
        { key: `${length} right`, ring: mirror(ring), ...shared },
      ];
    });
    const size = soles.reduce((sum, { ring, count }) => sum + count * area(ring), 0);
    const sheet = { length: size / 1000 / 0.97, width: 1000, ...bare };
    expect([leastByArea(soles, sheet), leastSheets(soles, sheet)]).toEqual([1, 2]);
  });

  it('is never more than layouts take, of convex outlines and others, with knife room and without', () => {
    let [nearer, all] = [0, 0];
    fc.assert(
      fc.property(
        fc.array(fc.tuple(anyOutline, fc.integer({ min: 1, max: 9 }), fc.boolean()), { minLength: 1, maxLength: 4 }),
        fc.constantFrom(0, 3),
        (list, knifeRoom) => {
          const pieces = list.map(([outline, count, round], i): Piece => ({
            key: String(i),
            ring: round ? convexHull(outline) : outline,
            count,
            way: { kind: 'any' },
          }));
          const format = { length: 700, width: 400, knifeRoom, edgeTrim: 5 };
          const laid = quickLayout(pieces, format).sheets;
          const least = leastSheets(pieces, format);
          expect(least).toBeLessThanOrEqual(laid.length);
          // Sheet by sheet as well: what lies on each weighs no more than it holds.
          const room = roomOn(format);
          for (const sheet of laid) {
            const counts = pieces.map((_, kind) => sheet.filter(({ piece }) => piece === kind).length);
            const bodies = pieces.map(({ ring }, kind) => ({ ring, count: counts[kind]! }));
            for (const { weight, hold } of weighingsByCells(sized(bodies, knifeRoom), room, knifeRoom))
              expect(weight).toBeLessThanOrEqual(hold(room));
          }
          const byArea = leastByArea(pieces, format);
          all++;
          if (share(pieces, format) > (byArea - 1) * 1.01) nearer++;
        },
      ),
      { numRuns: 60, seed: 8 },
    );
    expect(nearer).toBeGreaterThan(all / 4);
  });
});
