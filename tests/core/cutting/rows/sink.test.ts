import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Front } from '../../../../src/core/cutting/rows/front';
import { Lays } from '../../../../src/core/cutting/rows/lay';
import { clearance } from '../../../../src/core/cutting/rows/reach';
import { sink } from '../../../../src/core/cutting/rows/sink';
import { evenly } from '../../../evenly';
import { anyOutline, rectangle } from '../outlines';

describe('sink', () => {
  it('lets a row down between the pieces below, where it has room to be shifted there (derived)', () => {
    const front = new Front(0, 100);
    const post = Lays.of(rectangle(10, 30), 0).at(0);
    front.raise(post.sides.top, 40, 0);
    const lay = Lays.of(rectangle(50, 20), 0).at(0);
    const row = { items: [{ kind: 0, lay, u: 0, v: 0 }] };
    expect(sink(row, front, 0)).toEqual({ shift: 0, rise: 30 });
    expect(sink(row, front, 50)).toEqual({ shift: 50, rise: 0 });
  });

  it('says that a row is of no use that rises further than it may, wherever it is shifted to', () => {
    const front = new Front(0, 100);
    front.raise(Lays.of(rectangle(100, 30), 0).at(0).sides.top, 0, 0);
    const lay = Lays.of(rectangle(50, 20), 0).at(0);
    const row = { items: [{ kind: 0, lay, u: 0, v: 0 }] };
    for (const slack of [0, 50]) {
      expect(sink(row, front, slack, 29)).toBeUndefined();
      expect(sink(row, front, slack, 30)).toEqual({ shift: 0, rise: 30 });
    }
  });

  it('rises as far as the pieces of the row need where it is shifted to, and no further than unshifted', () => {
    const place = evenly(0, 200);
    const some = fc.array(fc.tuple(anyOutline, place), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(some, some, evenly(0, 80), (below, above, slack) => {
        const front = new Front(-300, 600);
        for (const [ring, u] of below) front.raise(Lays.of(ring, 1).at(0).sides.top, u, 50);
        const items = above.map(([ring, u]) => ({ kind: 0, lay: Lays.of(ring, 1).at(0), u, v: 100 }));
        const { shift, rise } = sink({ items }, front, slack) ?? { shift: NaN, rise: NaN };
        const needed = (by: number) =>
          Math.max(0, ...items.map(({ lay, u, v }) => clearance(front, lay.sides.bottom, u + by) - v));
        expect(rise).toBeCloseTo(needed(shift), 6);
        expect(rise).toBeLessThanOrEqual(needed(0) + 1e-9);
        expect(shift).toBeGreaterThanOrEqual(0);
        expect(shift).toBeLessThanOrEqual(slack);
      }),
      { seed: 15, numRuns: 200 },
    );
  });
});
