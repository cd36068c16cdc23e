import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Front } from '../../../../src/core/cutting/rows/front';
import { clearance, quarterTurned, reversed, sidesOf } from '../../../../src/core/cutting/rows/reach';
import { moved } from '../../../../src/core/geometry/moved';
import type { Ring } from '../../../../src/core/geometry/ring';
import { sharedArea } from '../oracle';
import { anyOutline, rectangle } from '../outlines';

const wedge: Ring = [
  [0, 0],
  [30, 0],
  [30, 30],
];

describe('clearance', () => {
  it('is how far one piece must stand over another, wherever it is shifted (derived)', () => {
    const { top } = sidesOf(wedge);
    const { bottom } = sidesOf(rectangle(10, 10));
    expect(clearance(top, bottom, 0)).toBeCloseTo(10);
    expect(clearance(top, bottom, 5)).toBeCloseTo(15);
    expect(clearance(top, bottom, 20)).toBeCloseTo(30);
    expect(clearance(top, bottom, 25)).toBeCloseTo(30);
  });

  it('is none for pieces that pass each other', () => {
    const { top, bottom } = sidesOf(rectangle(10, 10));
    expect(clearance(top, bottom, 10)).toBe(-Infinity);
    expect(clearance(top, bottom, -10)).toBe(-Infinity);
  });

  it('stops once it is above a limit', () => {
    const { top, bottom } = sidesOf(rectangle(10, 10));
    expect(clearance(top, bottom, 0, 9)).toBe(Infinity);
    expect(clearance(top, bottom, 0, 10)).toBe(10);
  });

  it('is not misled by edges that lean by less than rounding', () => {
    const leaning: Ring = [
      [0, 0],
      [50, 0],
      [50 + 2e-14, 20],
      [50 - 3e-14, 40],
      [1e-14, 40],
      [-1e-14, 10],
    ];
    const { right } = sidesOf(leaning);
    const { left } = sidesOf(rectangle(17, 53));
    for (const along of [-60, -52.999, -20.5, 0, 13, 39.99]) {
      const beside = clearance(right, left, along);
      if (along > -53 && along < 40) expect(beside).toBeCloseTo(50, 6);
      else expect(beside).toBe(-Infinity);
    }
  });

  it('lets outlines of any shape touch and not overlap', () => {
    const shift = fc.double({ min: -100, max: 100, noNaN: true });
    fc.assert(
      fc.property(anyOutline, anyOutline, shift, (below, above, along) => {
        const rise = clearance(sidesOf(below).top, sidesOf(above).bottom, along);
        if (rise === -Infinity) return;
        expect(sharedArea(below, moved(above, 0, along, rise + 1e-6))).toBeLessThan(1e-3);
        const beside = clearance(sidesOf(below).right, sidesOf(above).left, along);
        if (beside === -Infinity) return;
        expect(sharedArea(below, moved(above, 0, beside + 1e-6, along))).toBeLessThan(1e-3);
      }),
      { seed: 2 },
    );
  });
});

describe('sidesOf', () => {
  it('is turned by quarters as the ring is', () => {
    const turned = quarterTurned(sidesOf(wedge));
    const direct = sidesOf(moved(wedge, 90));
    for (const side of ['top', 'right', 'bottom', 'left'] as const) {
      for (const at of [-29, -12.5, 3, 17]) {
        const probe = sidesOf(rectangle(0.5, 1)).bottom;
        expect(clearance(turned[side], probe, at)).toBeCloseTo(clearance(direct[side], probe, at), 9);
      }
    }
  });

  it('reads the same from the other end', () => {
    const { top } = sidesOf(wedge);
    expect(reversed(reversed(top))).toEqual(top);
  });
});

describe('Front', () => {
  it('reaches as far as the farthest piece laid, at every place', () => {
    const place = fc.double({ min: -60, max: 160, noNaN: true });
    const laid = fc.array(fc.tuple(anyOutline, place, place), { minLength: 1, maxLength: 6 });
    const probe = sidesOf(rectangle(0.01, 1)).bottom;
    fc.assert(
      fc.property(laid, fc.double({ min: 1, max: 99, noNaN: true }), (pieces, at) => {
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
});
