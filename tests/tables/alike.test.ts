import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isDeepStrictEqual } from 'node:util';
import { alike } from '../../src/tables/alike';

/** Values as they are read from cells: small ones, so that two of them are often the same. */
const leaf = fc.constantFrom<unknown>(undefined, null, '', 'a', 0, 1, 'B', true, NaN);
const value = fc.letrec<{ any: unknown }>((tie) => ({
  any: fc.oneof(
    { maxDepth: 3, depthSize: 'small' },
    leaf,
    fc.array(tie('any'), { maxLength: 2 }),
    fc.dictionary(fc.constantFrom('x', 'y'), tie('any'), { maxKeys: 2, noNullPrototype: true }),
    fc.array(fc.tuple(fc.constantFrom(38, 39), tie('any')), { maxLength: 2 }).map((pairs) => new Map(pairs)),
  ),
})).any;

describe('alike', () => {
  it('finds what the engine’s own deep comparison finds', () => {
    let same = 0;
    fc.assert(
      fc.property(value, value, (a, b) => {
        const wanted = isDeepStrictEqual(a, b);
        expect(alike(a, b)).toBe(wanted);
        expect(alike(a, structuredClone(a))).toBe(true);
        if (wanted) same += 1;
      }),
      { seed: 4, numRuns: 3000 },
    );
    expect(same).toBeGreaterThan(50);
  });

  it('tells a list, a record and a map apart that hold the same', () => {
    expect([alike([], {}), alike(new Map(), {}), alike(new Map(), []), alike({ 0: 1 }, [1])]).toEqual([
      false,
      false,
      false,
      false,
    ]);
  });
});
