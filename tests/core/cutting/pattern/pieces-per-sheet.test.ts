import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Feet, piecesPerSheet } from '../../../../src/core/cutting/pattern/pieces-per-sheet';
import type { Way } from '../../../../src/core/cutting/sheet/way';
import { mirror } from '../../../../src/core/geometry/mirror';
import { complaints } from '../oracle';
import { anyOutline, hook, longTee, rectangle, soleLike } from '../outlines';

const CORK = { length: 950, width: 640, knifeRoom: 4, edgeTrim: 10 };
const BARE = { length: 900, width: 600, knifeRoom: 0, edgeTrim: 0 };

describe('piecesPerSheet', () => {
  it('counts 18 rectangles end for end and 20 with quarter turns in the rest (derived)', () => {
    expect(piecesPerSheet(rectangle(266, 96), CORK, { kind: 'endForEnd' }).count).toBe(18);
    expect(piecesPerSheet(rectangle(266, 96), CORK, { kind: 'any' }).count).toBe(20);
  });

  it('lays at least 25 sole-like pieces any way and 24 end for end where a long search lays 26 (derived)', () => {
    const sole = soleLike(270, 60);
    const free = piecesPerSheet(sole, BARE, { kind: 'any' });
    expect(free.count).toBeGreaterThanOrEqual(25);
    expect(free.bound).toBeGreaterThanOrEqual(26);
    expect(piecesPerSheet(sole, BARE, { kind: 'endForEnd' }).count).toBeGreaterThanOrEqual(24);
  });

  it('reaches the bound where pieces tile the sheet', () => {
    const { count, bound } = piecesPerSheet(rectangle(90, 60), BARE, { kind: 'oneWay' });
    expect(count).toBe(100);
    expect(bound).toBe(100);
  });

  it('keeps two blocks apart where rows run across the first', () => {
    expect(piecesPerSheet(hook, BARE, { kind: 'endForEnd' }).count).toBeGreaterThanOrEqual(284);
  });

  it('puts rows in whatever sequence holds the most: more than rows one way in turn with rows the other way hold', () => {
    const sole = soleLike(240, 40);
    const format = { length: 1000, width: 700, knifeRoom: 4, edgeTrim: 10 };
    expect(piecesPerSheet(sole, format, { kind: 'endForEnd' }).count).toBeGreaterThanOrEqual(39);
    expect(piecesPerSheet(sole, format, { kind: 'oneWay' }).count).toBeGreaterThanOrEqual(33);
    expect(piecesPerSheet(sole, format, { kind: 'oneWay' }, 'outline', 'both').count).toBeGreaterThanOrEqual(35);
  });

  it('hooks pieces into each other', () => {
    expect(piecesPerSheet(longTee, BARE, { kind: 'endForEnd' }).count).toBeGreaterThanOrEqual(1000);
  });

  it('throws a problem for a piece larger than the sheet', () => {
    expect(() => piecesPerSheet(rectangle(960, 30), CORK, { kind: 'oneWay' }, 'outline')).toThrow(/outline.*960 × 30/);
  });

  it('stands the check of another library for outlines of any shape', { timeout: 60_000 }, () => {
    const way = fc.constantFrom<Way>(
      { kind: 'any' },
      { kind: 'endForEnd' },
      { kind: 'oneWay' },
      { kind: 'within', degrees: 5 },
    );
    const room = fc.constantFrom(0, 3);
    fc.assert(
      fc.property(anyOutline, way, room, fc.constantFrom<Feet>('one', 'both'), (ring, lies, knifeRoom, feet) => {
        const format = { length: 420, width: 330, knifeRoom, edgeTrim: 5 };
        const { count, placements, bound } = piecesPerSheet(ring, format, lies, 'outline', feet);
        expect(placements).toHaveLength(count);
        expect(count).toBeLessThanOrEqual(bound);
        if (count > 60) return;
        const pieces = [ring, mirror(ring)].map((own, i) => ({
          key: `piece ${i}`,
          ring: own,
          count: placements.filter(({ piece }) => piece === i).length,
          way: lies,
        }));
        expect(complaints(pieces, format, [placements])).toEqual([]);
      }),
      { numRuns: 20, seed: 11, endOnFailure: true },
    );
  });
});
