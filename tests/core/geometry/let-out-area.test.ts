import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { area } from '../../../src/core/geometry/area';
import { edgeLength } from '../../../src/core/geometry/edge-length';
import { letOut } from '../../../src/core/geometry/let-out';
import { letOutArea } from '../../../src/core/geometry/let-out-area';
import type { Ring } from '../../../src/core/geometry/ring';
import { anyOutline, rectangle, regular } from '../cutting/outlines';

describe('letOutArea', () => {
  it('is area + edge × distance + π distance² for convex pieces (Steiner)', () => {
    for (const ring of [rectangle(200, 90), regular(7, 60), regular(90, 40)]) {
      expect(letOutArea(ring, 3)).toBeCloseTo(area(ring) + edgeLength(ring) * 3 + Math.PI * 9, 6);
    }
  });

  it('counts once what the edges of an inlet both cover', () => {
    const fork: Ring = [
      [0, 0],
      [60, 0],
      [60, 40],
      [32, 40],
      [32, 10],
      [28, 10],
      [28, 40],
      [0, 40],
    ];
    const plain = area(fork) + edgeLength(fork) * 3 + Math.PI * 9;
    expect(letOutArea(fork, 3)).toBeLessThan(plain - 60);
    expect(letOutArea(fork, 3)).toBeCloseTo(area(letOut(fork, 3)), 0);
  });

  it('is hardly more than that of the let-out outline, for outlines of any shape', () => {
    fc.assert(
      fc.property(anyOutline, (ring) => {
        const outline = area(letOut(ring, 1));
        expect(letOutArea(ring, 1)).toBeLessThan(outline + 0.01 * (edgeLength(ring) + 10));
      }),
      { seed: 9 },
    );
  });
});
