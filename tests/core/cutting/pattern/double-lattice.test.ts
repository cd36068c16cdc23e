import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { itemAt } from '../../../../src/core/item-at';
import { densestPattern } from '../../../../src/core/cutting/pattern/densest-pattern';
import { DoubleLattice } from '../../../../src/core/cutting/pattern/double-lattice';
import { densestRows } from '../../../../src/core/cutting/pattern/densest-rows';
import { cuttingArea, type Pattern } from '../../../../src/core/cutting/pattern/pattern';
import { area } from '../../../../src/core/geometry/area';
import { crossesItself } from '../../../../src/core/geometry/crosses-itself';
import { moved } from '../../../../src/core/geometry/moved';
import type { Point, Ring } from '../../../../src/core/geometry/ring';
import { cornerGap, farApart, sharedArea } from '../oracle';
import { anyOutline, hook, longTee, regular, soleLike, tee } from '../outlines';

const density = (ring: Ring) => area(ring) / cuttingArea(new DoubleLattice(ring, 0).densest());

/** All pieces of a pattern about its middle cell, which comes first. */
function patch({ members, pitch, slant, rise }: Pattern, ring: Ring): readonly Ring[] {
  const cells = [0, -1, 1, -2, 2];
  return cells.flatMap((row) =>
    cells.flatMap((place) =>
      members.map(({ lay, x, y }) => moved(ring, lay.turn, x + row * slant + place * pitch, y + row * rise)),
    ),
  );
}

describe('DoubleLattice', () => {
  it('fills the plane with the T of four and of five squares, which tile it by half turns (derived)', () => {
    expect(density(tee)).toBeCloseTo(1, 5);
    expect(density(longTee)).toBeCloseTo(1, 5);
  });

  it('fills the plane with outlines that meet the criterion of Conway for tiling by half turns (Schattschneider 1980)', () => {
    // Two opposite edges alike by a shift, the others halved by a point about which they are symmetric.
    const tile: Ring = [
      [0, 0],
      [20, 8],
      [40, -8],
      [60, 0],
      [66, 20],
      [54, 30],
      [60, 50],
      [45, 58],
      [15, 42],
      [0, 50],
      [-4, 30],
      [4, 20],
    ];
    expect(density(tile)).toBeCloseTo(1, 4);
  });

  it('finds the densest packing of regular pentagons, (5 − √5) / 3 (Hales and Kusner 2016), to four digits', () => {
    expect(density(regular(5))).toBeCloseTo((5 - Math.sqrt(5)) / 3, 4);
  });

  it('hooks pieces into each other as no rows do', () => {
    const rows = area(hook) / cuttingArea(densestRows(hook, 0, { kind: 'any' }));
    expect(density(hook)).toBeGreaterThan(rows + 0.1);
  });

  it('comes within a thousandth of the rows of a sole-like piece, or beyond', () => {
    const rows = area(soleLike()) / cuttingArea(densestRows(soleLike(), 0, { kind: 'any' }));
    expect(density(soleLike())).toBeGreaterThan(rows - 1e-3);
  });
});

describe('densestPattern', () => {
  it('keeps the knife room between outlines of any shape by another library', { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(anyOutline, fc.constantFrom(0, 3), (ring, knifeRoom) => {
        const pattern = densestPattern(ring, knifeRoom, { kind: 'any' });
        const copies = patch(pattern, ring);
        const middle = itemAt(copies, 0);
        for (const other of copies.slice(1)) {
          if (farApart(middle, other, knifeRoom)) continue;
          expect(sharedArea(middle, other)).toBeLessThan(0.2);
          expect(cornerGap(middle, other)).toBeGreaterThan(knifeRoom - 2e-3);
        }
      }),
      { numRuns: 12, seed: 5, endOnFailure: true },
    );
  });

  it('is never less dense than rows', () => {
    fc.assert(
      fc.property(anyOutline, (ring) => {
        const rows = cuttingArea(densestRows(ring, 0, { kind: 'endForEnd' }));
        expect(cuttingArea(densestPattern(ring, 0, { kind: 'endForEnd' }))).toBeLessThanOrEqual(rows);
      }),
      { numRuns: 5, seed: 6 },
    );
  });

  it('leaves a piece that may lie one way alone', () => {
    expect(densestPattern(hook, 0, { kind: 'oneWay' }).members).toHaveLength(1);
  });

  it('is the same for outlines whose points are moved together', () => {
    const shifted = hook.map(([x, y]): Point => [x + 137.3, y - 41.9]);
    expect(crossesItself(shifted)).toBe(false);
    const ground = (ring: Ring) => cuttingArea(densestPattern(ring, 0, { kind: 'any' }));
    expect(ground(shifted)).toBeCloseTo(ground(hook), 2);
  });
});
