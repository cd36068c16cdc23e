import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { packNatural } from '../../../../src/core/cutting/natural/pack-natural';
import { weighingsByCells } from '../../../../src/core/cutting/sheet/cells';
import { groundOfCells } from '../../../../src/core/cutting/sheet/ground-of-cells';
import { leastSheets } from '../../../../src/core/cutting/sheet/least-sheets';
import { usableGround } from '../../../../src/core/cutting/sheet/natural-sheet';
import type { Piece } from '../../../../src/core/cutting/sheet/piece';
import { area } from '../../../../src/core/geometry/area';
import { convexHull } from '../../../../src/core/geometry/convex-hull';
import { letOutArea } from '../../../../src/core/geometry/let-out-area';
import { evenly } from '../../../evenly';
import { at, FORMAT, hideOf, SHEET } from '../natural/hide';
import { anyOutline, rectangle, regular } from '../outlines';

const backwards = (ring: ReturnType<typeof rectangle>) => [...ring].reverse();

describe('groundOfCells', () => {
  it('holds of a rectangle its area and two sides, as the bound for rectangles has it', () => {
    expect(groundOfCells([rectangle(500, 300)]).hold(70)).toBeCloseTo(500 * 300 + 2 * 70, 6);
  });

  it('holds less for a hole, unless six sides are dearer than what it takes (derived)', () => {
    const hole = rectangle(40, 40).map(([x, y]) => [x + 100, y + 100] as const);
    const ground = groundOfCells([rectangle(500, 300), backwards(hole)]);
    expect(ground.hold(100)).toBeCloseTo(500 * 300 + 2 * 100 - (1600 - 600), 6);
    expect(ground.hold(300)).toBeCloseTo(500 * 300 + 2 * 300, 6);
  });

  it('counts parts that do not hang together each for itself', () => {
    const other = rectangle(200, 100).map(([x, y]) => [x + 900, y] as const);
    expect(groundOfCells([rectangle(500, 300), other]).hold(50)).toBeCloseTo(500 * 300 + 200 * 100 + 4 * 50, 6);
  });

  it('is the plain area where sides cost nothing, and takes fewer of them the dearer they are', () => {
    const round = regular(90, 300);
    const ground = groundOfCells([round]);
    expect(ground.hold(0) / area(round)).toBeLessThan(1.001);
    // 90 sides would cost 174 prices: an outline of fewer holds more and costs less.
    expect(ground.hold(500)).toBeLessThan(area(round) + 60 * 500);
    expect(ground.hold(500)).toBeGreaterThan(area(round));
  });

  it('tells of one sheet more than the area does, of soles that fill a sheet with a poor zone to the last (derived)', () => {
    const format = {
      length: 900,
      width: 700,
      knifeRoom: 0,
      edgeTrim: 0,
      natural: {
        outline: rectangle(900, 700),
        holes: [],
        zones: [{ ring: rectangle(900, 140), quality: 2 }],
        quality: 1,
        backbone: 350,
      },
    };
    // Ovals of 2 : 1 fill at most π / √12 = 0.907 of any ground (L. Fejes Tóth, by an affine map of circles).
    const oval = regular(120, 45).map(([x, y]) => [2 * x, y] as const);
    const pieces = (count: number): Piece[] => [{ key: 'oval', ring: oval, count, way: { kind: 'any' } }];
    const fill = (count: number) => (count * area(oval)) / (900 * 560);
    expect(fill(37)).toBeGreaterThan(0.93);
    expect(fill(37)).toBeLessThan(1);
    expect([30, 37].map((count) => leastSheets(pieces(count), format))).toEqual([1, 2]);
  });

  it('is never less than what lies on hides of any outline, with holes and poor zones', () => {
    let nearer = 0;
    fc.assert(
      fc.property(
        fc.tuple(evenly(-0.06, 0.06), evenly(-0.06, 0.06), evenly(-0.06, 0.06)),
        fc.array(fc.tuple(anyOutline, fc.integer({ min: 1, max: 9 }), fc.constantFrom(1, 2)), {
          minLength: 1,
          maxLength: 4,
        }),
        fc.constantFrom(0, 3),
        (waves, list, knifeRoom) => {
          const pieces = list.map(([outline, count, quality], i): Piece => {
            return { key: String(i), ring: convexHull(outline), count, quality, way: { kind: 'any' } };
          });
          const natural = {
            ...SHEET,
            outline: hideOf(waves),
            holes: [at(regular(9, 60), 430, 320), at(regular(5, 40), 620, 250)],
          };
          const format = { ...FORMAT, knifeRoom, natural };
          const laid = packNatural(pieces, format);
          expect(leastSheets(pieces, format)).toBeLessThanOrEqual(laid.length);
          for (const needed of [1, 2]) {
            const region = usableGround(natural, needed, format.edgeTrim, knifeRoom / 2);
            const usable = region.reduce((sum, ring) => sum + area(ring), 0);
            const room = { length: usable, width: 1, ground: groundOfCells(region) };
            for (const sheet of laid) {
              const bodies = pieces.flatMap(({ ring, quality = 1 }, kind) => {
                const count = sheet.filter(({ piece }) => piece === kind).length;
                return quality <= needed ? [{ ring, count, area: letOutArea(ring, knifeRoom / 2) }] : [];
              });
              for (const { weight, hold } of weighingsByCells(bodies, room, knifeRoom)) {
                expect(weight).toBeLessThanOrEqual(hold(room));
                const plain = bodies.reduce((sum, body) => sum + body.count * body.area, 0);
                if (plain > 0 && weight / hold(room) > plain / usable) nearer++;
              }
            }
          }
        },
      ),
      { numRuns: 40, seed: 8 },
    );
    expect(nearer).toBeGreaterThan(50);
  });
});
