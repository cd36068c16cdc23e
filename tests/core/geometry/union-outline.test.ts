import { union } from 'polyclip-ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { area } from '../../../src/core/geometry/area';
import { moved } from '../../../src/core/geometry/moved';
import { unionOutline } from '../../../src/core/geometry/union-outline';
import { anyOutline, rectangle } from '../cutting/outlines';

const total = (rings: readonly (readonly (readonly [number, number])[])[]) =>
  rings.reduce((sum, ring) => sum + area(ring), 0);

describe('unionOutline', () => {
  it('counts once what two pieces share (derived)', () => {
    expect(total(unionOutline([rectangle(10, 10), moved(rectangle(10, 10), 0, 5, 0)]))).toBeCloseTo(150, 6);
  });

  it('leaves pieces apart that lie apart, and takes no heed of their direction', () => {
    const apart = unionOutline([rectangle(10, 10), [...moved(rectangle(10, 10), 0, 50, 0)].reverse()]);
    expect(apart).toHaveLength(2);
    expect(total(apart)).toBeCloseTo(200, 6);
  });

  it('leaves out the edge of a hole that pieces make together', () => {
    const frame = [
      rectangle(30, 10),
      moved(rectangle(30, 10), 0, 0, 20),
      moved(rectangle(10, 30), 0, 0, 0),
      moved(rectangle(10, 30), 0, 20, 0),
    ];
    expect(total(unionOutline(frame))).toBeCloseTo(900, 6);
  });

  it('is nothing of nothing', () => {
    expect(unionOutline([])).toEqual([]);
  });

  it('encloses what another library says, for two pieces of any shape', () => {
    fc.assert(
      fc.property(anyOutline, anyOutline, (a, b) => {
        const close = (ring: typeof a) => [[...ring, ring[0]] as [number, number][]];
        const wanted = union(close(a), close(b)).reduce(
          (sum, [outer]) => sum + Math.abs(area((outer as [number, number][]).slice(0, -1))),
          0,
        );
        expect(total(unionOutline([a, b]))).toBeCloseTo(wanted, 0);
      }),
      { seed: 10, numRuns: 60 },
    );
  });
});
