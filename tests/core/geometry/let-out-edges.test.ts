import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { area } from '../../../src/core/geometry/area';
import { box } from '../../../src/core/geometry/box';
import { crossesItself } from '../../../src/core/geometry/crosses-itself';
import { letOutEdges } from '../../../src/core/geometry/let-out-edges';
import { letOutSmooth } from '../../../src/core/geometry/let-out-smooth';
import { evenly } from '../../evenly';
import { anyOutline, rectangle } from '../cutting/outlines';
import { ellipse } from '../ovals';

describe('letOutEdges', () => {
  it('lets each edge out by its own amount (derived)', () => {
    expect(box(letOutEdges(rectangle(100, 50), [1, 2, 3, 4]))).toEqual({ left: -4, bottom: -1, right: 102, top: 53 });
  });

  it('is letOutSmooth where all are the same and the outline is smooth', () => {
    const ring = ellipse(130, 45, 180);
    const all = letOutEdges(
      ring,
      ring.map(() => 5),
    );
    expect(area(all)).toBeCloseTo(area(letOutSmooth(ring, 5)), -1);
  });

  it('never crosses itself', () => {
    fc.assert(
      fc.property(anyOutline, fc.array(evenly(0, 30), { minLength: 40, maxLength: 40 }), (ring, list) => {
        const out = letOutEdges(
          ring,
          ring.map((_, i) => list[i % list.length]!),
        );
        expect(crossesItself(out)).toBe(false);
      }),
      { seed: 3, numRuns: 60 },
    );
  });
});
