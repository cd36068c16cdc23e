import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { convolution } from '../../../src/core/geometry/convolution';
import { moved } from '../../../src/core/geometry/moved';
import { noFitRegion } from '../../../src/core/geometry/no-fit-region';
import type { Ring } from '../../../src/core/geometry/ring';
import { evenly } from '../../evenly';
import { cornerGap, sharedArea } from '../cutting/oracle';
import { anyOutline, rectangle, regular, tee } from '../cutting/outlines';

describe('noFitRegion', () => {
  it('of two rectangles is a rectangle of both lengths and both widths (derived)', () => {
    const region = noFitRegion(rectangle(100, 50), rectangle(30, 20));
    expect(region.box).toEqual({ left: -30, bottom: -20, right: 100, top: 50 });
    expect(region.has(-29.99, -19.99)).toBe(true);
    expect(region.has(99.99, 49.99)).toBe(true);
    expect(region.has(100, 0)).toBe(false);
    expect(region.has(-30, 0)).toBe(false);
  });

  it('leaves the place free in which one piece fits within another', () => {
    const fork: Ring = [
      [0, 0],
      [60, 0],
      [60, 40],
      [40, 40],
      [40, 10],
      [20, 10],
      [20, 40],
      [0, 40],
    ];
    const region = noFitRegion(fork, rectangle(18, 30));
    expect(region.has(21, 10.5)).toBe(false);
    expect(region.has(19.9, 10.5)).toBe(true);
    expect(region.has(22.1, 10.5)).toBe(true);
  });

  it('is right for outlines all of whose edges run along the axes', () => {
    const cup: Ring = [
      [0, 0],
      [8, 0],
      [8, 8],
      [6, 8],
      [6, 2],
      [2, 2],
      [2, 8],
      [0, 8],
    ];
    const ell: Ring = [
      [0, 0],
      [6, 0],
      [6, 3],
      [3, 3],
      [3, 6],
      [0, 6],
    ];
    for (const [a, b] of [
      [cup, ell],
      [ell, cup],
      [tee, tee],
      [cup, tee],
    ] as const) {
      const region = noFitRegion(a, b);
      for (let x = -20.25; x < 40; x += 1) {
        for (let y = -20.25; y < 40; y += 1) {
          expect(region.has(x, y), `${x} ${y}`).toBe(sharedArea(a, moved(b, 0, x, y)) > 1e-9);
        }
      }
    }
  });

  it('agrees with another library for outlines of any shape', () => {
    const place = evenly(-200, 200);
    fc.assert(
      fc.property(anyOutline, anyOutline, place, place, (a, b, x, y) => {
        const lies = moved(b, 0, x, y);
        if (cornerGap(a, lies) < 1e-4) return;
        expect(noFitRegion(a, b).has(x, y)).toBe(sharedArea(a, lies) > 0);
      }),
      { seed: 21, numRuns: 500 },
    );
  });
});

describe('convolution', () => {
  it('of two convex outlines is one curve with the edges of both (derived)', () => {
    const [curve, ...others] = convolution(regular(5), regular(7));
    expect(others).toEqual([]);
    expect(curve).toHaveLength(12);
  });
});
