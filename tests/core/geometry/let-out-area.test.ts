import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { area } from '../../../src/core/geometry/area';
import { edgeLength } from '../../../src/core/geometry/edge-length';
import { letOut } from '../../../src/core/geometry/let-out';
import { letOutArea } from '../../../src/core/geometry/let-out-area';
import { moved } from '../../../src/core/geometry/moved';
import type { Ring } from '../../../src/core/geometry/ring';
import { anyOutline, rectangle, regular } from '../cutting/outlines';

describe('letOutArea', () => {
  it('is area + edge × distance + π distance² for convex pieces (Steiner)', () => {
    for (const ring of [rectangle(200, 90), regular(7, 60), regular(90, 40)]) {
      expect(letOutArea(ring, 3)).toBeCloseTo(area(ring) + edgeLength(ring) * 3 + Math.PI * 9, 6);
    }
  });

  it('takes d² (tan φ/2 − φ/2) away at each hollow corner, also of a piece that comes back twice, lying straight or turned (derived)', () => {
    // A cup that lies on its side: two hollow corners of 90° in an inlet 30 wide.
    const cup: Ring = [
      [0, 0],
      [60, 0],
      [60, 10],
      [10, 10],
      [10, 40],
      [60, 40],
      [60, 50],
      [0, 50],
    ];
    const wanted = 60 * 50 - 50 * 30 + (2 * (60 + 50) + 2 * 50) * 3 + 9 * Math.PI - 2 * 9 * (1 - Math.PI / 4);
    for (const turn of [0, 20, 90, 200]) expect(letOutArea(moved(cup, turn, 0, 0), 3)).toBeCloseTo(wanted, 6);
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
