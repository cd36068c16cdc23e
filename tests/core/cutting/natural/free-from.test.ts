import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { freeFrom } from '../../../../src/core/cutting/natural/free-from';
import { mirror } from '../../../../src/core/geometry/mirror';
import { moved } from '../../../../src/core/geometry/moved';
import { noFitRegion } from '../../../../src/core/geometry/no-fit-region';
import type { Ring } from '../../../../src/core/geometry/ring';
import { evenly } from '../../../evenly';
import { sharedArea } from '../oracle';
import { anyOutline, hook, longTee, rectangle, tee } from '../outlines';

/** What two outlines may share by rounding, mm². */
const NOTHING = 1e-5;
const step = fc.constantFrom<1 | -1>(1, -1);

/** Outlines on a grid, turned by quarters and seen from below, whose edges meet edges all along. */
const squared: fc.Arbitrary<Ring> = fc
  .tuple(fc.constantFrom(tee, longTee, hook, rectangle(20, 10)), fc.constantFrom(0, 90, 180, 270), fc.boolean())
  .map(([ring, turn, over]) =>
    moved(over ? mirror(ring) : ring, turn, 0, 0).map(([x, y]) => [Math.round(x), Math.round(y)] as const),
  );

/** Holds a place that is said to be free, and the way to it, against another library's shared areas. */
function check(a: Ring, b: Ring, x: number, y: number, to: 1 | -1): void {
  const shared = (at: number) => sharedArea(a, moved(b, 0, at, y));
  const place = freeFrom(noFitRegion(a, b), x, y, to);
  expect(to * (place - x), 'goes its way').toBeGreaterThanOrEqual(0);
  expect(shared(place), `at ${place}`).toBeLessThan(NOTHING);
  for (const share of [0.003, 0.21, 0.37, 0.52, 0.68, 0.83, 0.997]) {
    const between = x + share * (place - x);
    if (Math.abs(place - x) > 1e-3) expect(shared(between), `${between} on the way to ${place}`).toBeGreaterThan(0);
  }
}

describe('freeFrom', () => {
  it('is the first place at which outlines of any shape share nothing, by another library', () => {
    fc.assert(fc.property(anyOutline, anyOutline, evenly(-200, 200), evenly(-200, 200), step, check), {
      seed: 31,
      numRuns: 150,
    });
  });

  it('is so for outlines on a grid too, on the lines of the grid and between them', () => {
    const line = fc.integer({ min: -180, max: 180 }).map((n) => n / 2);
    fc.assert(fc.property(squared, squared, line, line, step, check), { seed: 32, numRuns: 300 });
  });
});
