import { describe, expect, it } from 'vitest';
import { mirror } from '../../../src/core/geometry/mirror';
import { mirrorOnce, ringContent } from '../../../src/core/geometry/ring-content';
import { anyOutline } from '../cutting/outlines';
import fc from 'fast-check';

describe('the content of a ring', () => {
  it('is the same for rings that are equal point for point, and another for any other', () => {
    fc.assert(
      fc.property(anyOutline, (ring) => {
        expect(ringContent(ring.map(([x, y]) => [x, y]))).toBe(ringContent(ring));
        const [[x, y]] = ring as readonly [readonly [number, number]];
        expect(ringContent([[x + 1e-9, y], ...ring.slice(1)])).not.toBe(ringContent(ring));
        expect(ringContent([...ring.slice(1), ring[0]!])).not.toBe(ringContent(ring));
      }),
      { seed: 2, numRuns: 50 },
    );
  });

  it('is mirrored once', () => {
    const ring = [
      [0, 0],
      [10, 0],
      [10, 5],
    ] as const;
    expect(mirrorOnce(ring)).toEqual(mirror(ring));
    expect(mirrorOnce(ring)).toBe(mirrorOnce(ring));
  });
});
