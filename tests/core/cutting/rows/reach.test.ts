import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clearance, type Reach } from '../../../../src/core/cutting/rows/reach';
import { sidesOf } from '../../../../src/core/cutting/rows/side';
import { moved } from '../../../../src/core/geometry/moved';
import type { Ring } from '../../../../src/core/geometry/ring';
import { evenly } from '../../../evenly';
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

  it('tells no sums apart below what is enough', () => {
    const { top, bottom } = sidesOf(rectangle(10, 10));
    expect(clearance(top, bottom, 0, Infinity, 12)).toBe(12);
    expect(clearance(top, bottom, 0, Infinity, 8)).toBe(10);
    expect(clearance(top, bottom, 10, Infinity, 12)).toBe(12);
  });

  it('is the greatest sum at any place, whatever the cells show', () => {
    const shift = evenly(-200, 200);
    const reachAt = ({ line, stretches }: Reach, place: number) => {
      for (let i = 0; i < 3 * stretches; i += 3) {
        const [at, from, slope, end] = line.slice(i, i + 4) as unknown as [number, number, number, number];
        if (place >= at && place < end) return from + slope * (place - at);
      }
      return -Infinity;
    };
    fc.assert(
      fc.property(anyOutline, anyOutline, shift, fc.nat(1000), (below, above, along, step) => {
        const [{ top }, { bottom }] = [sidesOf(below), sidesOf(above)];
        const found = clearance(top, bottom, along);
        const places = [...top.line].filter((_, i) => i % 3 === 0).flatMap((at) => [at - 1e-6, at, at + step / 100]);
        const others = [...bottom.line]
          .filter((_, i) => i % 3 === 0)
          .flatMap((at) => [at + along - 1e-6, at + along + 1e-6]);
        const sums = [...places, ...others].map((at) => reachAt(top, at) + reachAt(bottom, at - along));
        const most = Math.max(...sums.filter((sum) => !Number.isNaN(sum)));
        if (most === -Infinity) return;
        expect(found).toBeGreaterThan(most - 1e-6);
        expect(found).toBeLessThan(most + 1e-2);
      }),
      { seed: 12, numRuns: 500 },
    );
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
    const shift = evenly(-100, 100);
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
