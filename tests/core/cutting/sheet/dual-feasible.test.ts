import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  besideNothing,
  byParts,
  type DualFeasible,
  functionsFor,
  valueAt,
} from '../../../../src/core/cutting/sheet/dual-feasible';

/** Sizes that fit into a room together. */
const fitting = (room: number) =>
  fc.array(fc.double({ min: 1e-3, max: 1, noNaN: true }), { minLength: 1, maxLength: 12 }).map((sizes) => {
    const kept: number[] = [];
    let sum = 0;
    for (const size of sizes) {
      if (sum + size > room) continue;
      kept.push(size);
      sum += size;
    }
    return kept;
  });

const functions: fc.Arbitrary<DualFeasible> = fc.oneof(
  fc.integer({ min: 1, max: 12 }).map(byParts),
  fc.double({ min: 0.02, max: 0.5, noNaN: true }).map(besideNothing),
);

describe('a dual feasible function', () => {
  it('of sizes that fit together counts no more than it says of their room, and of the whole 1 (derived)', () => {
    fc.assert(
      fc.property(
        functions,
        fc.double({ min: 0.1, max: 2.5, noNaN: true }).chain((room) => fc.tuple(fc.constant(room), fitting(room))),
        (f, [room, sizes]) => {
          const sum = sizes.reduce((all, size) => all + valueAt(f, size), 0);
          expect(sum).toBeLessThanOrEqual(f.most(room) + 1e-9);
          expect(f.most(1)).toBeCloseTo(1, 12);
        },
      ),
      { numRuns: 2000 },
    );
  });

  it('is found for more sizes than a call takes as arguments: by parts, and beside nothing (derived)', () => {
    const sizes = Array.from({ length: 600_000 }, (_, i) => (i + 1) / 6e5);
    expect(() => Math.min(...sizes)).toThrow(RangeError);
    expect([...functionsFor(sizes, 60)]).toHaveLength(60 + 24);
  });

  it('counts what is above a half as a whole, and a third of those above a quarter (derived)', () => {
    expect([0.5, 0.51, 1].map((size) => valueAt(byParts(1), size))).toEqual([0, 1, 1]);
    expect([0.2, 0.26, 0.51, 0.76].map((size) => Math.round(3 * valueAt(byParts(3), size)))).toEqual([0, 1, 2, 3]);
    expect([0.19, 0.2, 0.5, 0.8, 0.81].map((size) => valueAt(besideNothing(0.2), size))).toEqual([0, 0.2, 0.5, 0.8, 1]);
  });
});
