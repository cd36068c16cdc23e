import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Front } from '../../../../src/core/cutting/rows/front';
import { CELL, clearance, STRETCH } from '../../../../src/core/cutting/rows/reach';
import { sidesOf } from '../../../../src/core/cutting/rows/side';
import { evenly } from '../../../evenly';
import { anyOutline, rectangle } from '../outlines';

describe('Front', () => {
  it('reaches as far as the farthest piece laid, at every place', () => {
    const place = evenly(-60, 160);
    const laid = fc.array(fc.tuple(anyOutline, place, place), { minLength: 1, maxLength: 6 });
    const probe = sidesOf(rectangle(0.01, 1)).bottom;
    fc.assert(
      fc.property(laid, evenly(1, 99), (pieces, at) => {
        const front = new Front(0, 100);
        for (const [ring, u, v] of pieces) front.raise(sidesOf(ring).top, u, v);
        const wanted = Math.max(...pieces.map(([ring, u, v]) => clearance(sidesOf(ring).top, probe, at - u) + v));
        const found = clearance(front, probe, at);
        if (wanted === -Infinity) expect(found).toBe(-Infinity);
        else expect(found).toBeCloseTo(wanted, 3);
      }),
      { seed: 4, numRuns: 300 },
    );
  });

  it('knows for every cell the stretch in which it begins, for one beyond the last begin the last (derived)', () => {
    const place = evenly(-60, 160);
    fc.assert(
      fc.property(fc.array(fc.tuple(anyOutline, place, place), { minLength: 1, maxLength: 6 }), (pieces) => {
        const front = new Front(0, 100);
        for (const [ring, u, v] of pieces) front.raise(sidesOf(ring).top, u, v);
        const ends = Array.from({ length: front.stretches - 1 }, (_, i) => front.line[STRETCH * (i + 1)] ?? NaN);
        const wanted = Array.from({ length: Math.ceil(100 / CELL) }, (_, cell) => {
          return STRETCH * ends.filter((end) => end <= cell * CELL).length;
        });
        expect([...front.begins.subarray(0, wanted.length)]).toEqual(wanted);
      }),
      { seed: 24, numRuns: 300 },
    );
  });

  it('grows alike by pieces that lie clear upon it, whether it is told so or not', () => {
    const along = evenly(-60, 160);
    fc.assert(
      fc.property(fc.array(fc.tuple(anyOutline, along), { minLength: 1, maxLength: 6 }), along, (pieces, at) => {
        const [told, untold] = [new Front(0, 100), new Front(0, 100)];
        for (const [ring, u] of pieces) {
          const { top, bottom } = sidesOf(ring);
          const v = Math.max(0, clearance(untold, bottom, u));
          told.raise(top, u, v, -Infinity);
          untold.raise(top, u, v);
        }
        const probe = sidesOf(rectangle(7, 1)).bottom;
        const [found, wanted] = [told, untold].map((front) => clearance(front, probe, at)) as [number, number];
        if (wanted === -Infinity) expect(found).toBe(-Infinity);
        else expect(found).toBeCloseTo(wanted, 6);
      }),
      { seed: 14, numRuns: 300 },
    );
  });
});
