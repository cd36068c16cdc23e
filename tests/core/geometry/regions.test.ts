import { difference as differenceElsewhere, intersection as intersectionElsewhere } from 'polyclip-ts';
import { polygonArea } from 'd3-polygon';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { area } from '../../../src/core/geometry/area';
import { edgeLength } from '../../../src/core/geometry/edge-length';
import { outline } from '../../../src/core/geometry/outline';
import { difference, enclosed, grown, grownMitred, intersection, union } from '../../../src/core/geometry/regions';
import { Problem } from '../../../src/core/problem';
import type { Ring } from '../../../src/core/geometry/ring';
import { evenly } from '../../evenly';
import { toEdge } from '../cutting/oracle';
import { anyOutline, rectangle, regular } from '../cutting/outlines';

const at = (ring: Ring, x: number, y: number): Ring => ring.map(([u, v]) => [u + x, v + y]);
const hole = (ring: Ring): Ring => [...ring].reverse();

/** Area of a region: what runs clockwise does not belong to it. */
const areaOf = (region: readonly Ring[]) => region.reduce((sum, ring) => sum + area(ring), 0);

const elsewhere = (region: readonly (readonly (readonly [number, number])[])[][]) =>
  region.reduce(
    (sum, rings) =>
      sum + rings.reduce((rest, ring, i) => rest + (i ? -1 : 1) * Math.abs(polygonArea([...ring] as never)), 0),
    0,
  );
const closed = (ring: Ring) => [[...ring, ...ring.slice(0, 1)].map(([x, y]): [number, number] => [x, y])];

describe('difference', () => {
  it('takes away what both share, and leaves a hole where the second lies within the first (derived)', () => {
    expect(areaOf(difference([rectangle(100, 50)], [at(rectangle(100, 50), 60, 0)]))).toBeCloseTo(60 * 50, 6);
    const frame = difference([rectangle(100, 50)], [at(rectangle(20, 10), 40, 20)]);
    expect(frame.map(area).sort((a, b) => a - b)).toEqual([-200, 5000]);
    expect(difference([rectangle(10, 10)], [rectangle(20, 20)])).toEqual([]);
  });

  it('keeps what lies in a hole of the region that is taken away (derived)', () => {
    const ring = [rectangle(100, 50), hole(at(rectangle(20, 10), 40, 20))];
    expect(areaOf(difference([rectangle(100, 50)], ring))).toBeCloseTo(200, 6);
  });

  it('leaves what another library leaves, for outlines of any shape', () => {
    fc.assert(
      fc.property(anyOutline, anyOutline, (a, b) => {
        const other = elsewhere(differenceElsewhere(closed(a), closed(b)));
        expect(areaOf(difference([a], [b]))).toBeCloseTo(other, 0);
      }),
      { seed: 3, numRuns: 60 },
    );
  });
});

describe('intersection', () => {
  it('is what both share, less what is a hole in either (derived)', () => {
    expect(areaOf(intersection([rectangle(100, 50)], [at(rectangle(100, 50), 60, 30)]))).toBeCloseTo(40 * 20, 6);
    const frame = [rectangle(100, 50), hole(at(rectangle(20, 10), 40, 20))];
    expect(areaOf(intersection(frame, [rectangle(50, 50)]))).toBeCloseTo(2500 - 100, 6);
    expect(intersection([rectangle(10, 10)], [at(rectangle(10, 10), 20, 0)])).toEqual([]);
  });

  it('is what another library shares, for outlines of any shape', () => {
    fc.assert(
      fc.property(anyOutline, anyOutline, (a, b) => {
        const other = elsewhere(intersectionElsewhere(closed(a), closed(b)));
        expect(areaOf(intersection([a], [b]))).toBeCloseTo(other, 0);
      }),
      { seed: 4, numRuns: 60 },
    );
  });
});

describe('grown', () => {
  it('adds edge × distance + π distance² to a convex region (Steiner), and takes as much from a hole as its own corners leave', () => {
    expect(areaOf(grown([regular(40, 60)], 4))).toBeCloseTo(
      area(regular(40, 60)) + 4 * edgeLength(regular(40, 60)) + 16 * Math.PI,
      0,
    );
    // The hole loses a border all round and keeps its corners: 20 × 10 becomes 14 × 4.
    const frame = [rectangle(100, 50), hole(at(rectangle(20, 10), 40, 20))];
    expect(areaOf(grown(frame, 3))).toBeCloseTo(5000 + 3 * 300 + 9 * Math.PI - 14 * 4, 0);
  });

  it('takes in by a negative distance, where nothing may be left or two parts (derived)', () => {
    expect(areaOf(grown([rectangle(100, 50)], -5))).toBeCloseTo(90 * 40, 6);
    expect(grown([rectangle(100, 50)], -25)).toEqual([]);
    const dumbbell = [...[0, 80].map((x) => at(rectangle(40, 40), x, 0)), at(rectangle(40, 4), 40, 18)];
    expect(grown(intersection([rectangle(200, 200)], dumbbell), -3)).toHaveLength(2);
  });

  it('is the region itself at no distance, and nothing of nothing', () => {
    const region = [rectangle(10, 5)];
    expect(grown(region, 0)).toBe(region);
    expect(grown([], 3)).toEqual([]);
    expect(grownMitred(region, 0)).toBe(region);
    expect(grownMitred([], 3)).toEqual([]);
  });
});

describe('grownMitred', () => {
  it('keeps square corners: a rectangle grows by twice the distance each way (derived)', () => {
    expect(areaOf(grownMitred([rectangle(100, 50)], 3))).toBeCloseTo(106 * 56, 6);
  });

  it('holds all that lies within the distance, with few corners, for outlines of any shape', () => {
    fc.assert(
      fc.property(anyOutline, evenly(0.5, 5), (ring, distance) => {
        const mitred = grownMitred([ring], distance);
        expect(mitred.length).toBeGreaterThan(0);
        for (const corner of mitred.flat()) expect(toEdge(corner, ring)).toBeGreaterThan(distance - 1e-3);
        expect(areaOf(mitred)).toBeGreaterThan(areaOf(grown([ring], distance)) - 0.01 * edgeLength(ring));
      }),
      { seed: 6, numRuns: 100 },
    );
  });
});

/** Rings with corners on a lattice of eleven by eleven points: edges cross, touch and lie on one another all over. */
const onLattice = (side: number, sound: boolean) => {
  const coordinate = fc.integer({ min: 0, max: 10 }).map((at) => at * side);
  const ring = fc.array(fc.tuple(coordinate, coordinate), { minLength: 3, maxLength: 14 });
  return fc.array(sound ? ring.map((points) => accepted(points)).filter((one) => one !== undefined) : ring, {
    minLength: 1,
    maxLength: 4,
  });
};

/** What a maker may paste: the points in turn about their middle, as far as they are taken for an outline. */
function accepted(points: readonly (readonly [number, number])[]): Ring | undefined {
  const [x, y] = [0, 1].map((k) => points.reduce((sum, point) => sum + point[k as 0 | 1], 0) / points.length) as [
    number,
    number,
  ];
  try {
    return outline(
      [...points].sort((a, b) => Math.atan2(a[1] - y, a[0] - x) - Math.atan2(b[1] - y, b[0] - x)),
      'any',
    );
  } catch (error) {
    if (error instanceof Problem) return undefined;
    throw error;
  }
}

// The library's own sweep went to and fro for ever on one of some thousands of these (2.0.1, found by trying).
describe('the work on rings that cross in every way', { timeout: 120_000 }, () => {
  const STEP = 1e-4;

  it('comes to an end where it did not', () => {
    const rings = ['07 06 33 08 12 10 69 43 05 59 62 29 36', '79 60 02', '26 a6 86 a6 16 77 81 a1 23 57 17'].map(
      (ring): Ring => ring.split(' ').map(([x, y]) => [parseInt(x!, 16) * STEP, parseInt(y!, 16) * STEP]),
    );
    // Nothing is shared with nothing.
    expect(intersection(rings, [])).toEqual([]);
    expect(areaOf(difference(rings, rings))).toBeCloseTo(0, 6);
  });

  it('comes to an end with a region, whatever crosses a few steps apart', () => {
    fc.assert(
      fc.property(onLattice(STEP, false), onLattice(STEP, false), fc.integer({ min: -12, max: 12 }), (a, b, by) => {
        for (const region of [difference(a, b), intersection(a, b), union(a), enclosed(a[0]!), grown(a, by * STEP)])
          for (const corner of region.flat()) expect(corner.every(Number.isFinite)).toBe(true);
      }),
      { seed: 21, numRuns: 1000 },
    );
  });

  it('is right for sheets with holes and zones that overlap and share edges, as they are pasted in mm', () => {
    fc.assert(
      fc.property(onLattice(10, true), onLattice(10, true), fc.constantFrom(-12, -5, -1, 1, 5, 12), (a, b, by) => {
        const [all, left, shared] = [union(a), difference(a, b), intersection(a, b)].map(areaOf) as [
          number,
          number,
          number,
        ];
        // What is left and what is shared make up the whole (derived).
        expect(left + shared).toBeCloseTo(all, 1);
        for (const region of [grown(a, by), grownMitred(a, by)]) {
          if (by > 0) expect(areaOf(region)).toBeGreaterThan(all);
          else expect(areaOf(region)).toBeLessThanOrEqual(all + 1e-6);
        }
      }),
      { seed: 22, numRuns: 500 },
    );
  });
});
