import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Lays } from '../../../../src/core/cutting/rows/lay';
import { RowEnd } from '../../../../src/core/cutting/rows/row-end';
import { moved } from '../../../../src/core/geometry/moved';
import { evenly } from '../../../evenly';
import { sharedArea } from '../oracle';
import { anyOutline, rectangle } from '../outlines';

const HEIGHT = 400;

describe('RowEnd', () => {
  it('has a piece lie against whatever reaches farthest where it is slid (derived)', () => {
    const end = new RowEnd();
    const [low, high] = [Lays.of(rectangle(30, 20), 0).at(0), Lays.of(rectangle(50, 100), 0).at(0)];
    end.clear(100);
    expect(end.place(low, 0, Infinity, 7)).toBe(7);
    end.add({ kind: 0, lay: high, u: 0, v: 0 });
    end.add({ kind: 1, lay: low, u: 50, v: 40 });
    expect(end.place(low, 0, Infinity, 0)).toBeCloseTo(50, 9);
    expect(end.place(low, 30, Infinity, 0)).toBeCloseTo(80, 9);
    expect(end.place(low, 60, Infinity, 0)).toBeCloseTo(50, 9);
    expect(end.place(high, 0, Infinity, 0)).toBeCloseTo(80, 9);
    expect(end.place(high, 0, 79, 0)).toBe(Infinity);
    expect(end.place(high, 0, Infinity, 90)).toBe(90);
  });

  it('lets outlines of any shape touch and not overlap, by another library', () => {
    const lain = fc.array(fc.tuple(anyOutline, evenly(150, 250)), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(lain, (pieces) => {
        const end = new RowEnd();
        end.clear(HEIGHT);
        const before: (typeof pieces)[number][0][] = [];
        for (const [kind, [ring, v]] of pieces.entries()) {
          const lay = Lays.of(ring, 0).at(0);
          const u = end.place(lay, v, Infinity, -1000);
          const lies = moved(ring, 0, u, v);
          for (const other of before) expect(sharedArea(other, lies)).toBeLessThan(1e-3);
          const nearer = moved(ring, 0, u - 0.01, v);
          if (kind > 0 && u > -1000) expect(before.some((other) => sharedArea(other, nearer) > 0)).toBe(true);
          end.add({ kind, lay, u, v });
          before.push(lies);
        }
      }),
      { seed: 41, numRuns: 100 },
    );
  });
});
