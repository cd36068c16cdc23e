import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { area } from '../../../src/core/geometry/area';
import { box } from '../../../src/core/geometry/box';
import { crossesItself } from '../../../src/core/geometry/crosses-itself';
import { edgeLength } from '../../../src/core/geometry/edge-length';
import { letOut } from '../../../src/core/geometry/let-out';
import { letOutSmooth } from '../../../src/core/geometry/let-out-smooth';
import type { Ring } from '../../../src/core/geometry/ring';
import { evenly } from '../../evenly';
import { ellipse, oval } from '../ovals';
import { anyOutline, rectangle } from '../cutting/outlines';

describe('letOutSmooth', () => {
  it('moves straight edges by exactly the amount and mitres corners (derived)', () => {
    expect(box(letOutSmooth(rectangle(100, 50), 3))).toEqual({ left: -3, bottom: -3, right: 103, top: 53 });
    expect(box(letOutSmooth(rectangle(100, 50), -3))).toEqual({ left: 3, bottom: 3, right: 97, top: 47 });
  });

  it('adds edge × amount + π amount² to a smooth outline, as Steiner says', () => {
    const ring = oval(18_000, 620);
    expect(area(letOutSmooth(ring, 3)) / 100).toBeCloseTo(198.9, 1);
    expect(area(letOutSmooth(ring, 3))).toBeCloseTo(area(letOut(ring, 3)), -1);
  });

  it('keeps the number of points and their order', () => {
    const ring = ellipse(130, 45, 90);
    expect(letOutSmooth(ring, 5)).toHaveLength(90);
  });

  it('lets out by different amounts at different places', () => {
    const wider = letOutSmooth(rectangle(100, 50), ([, y]) => (y > 0 ? 4 : 0));
    expect(Math.max(...wider.map(([, y]) => y))).toBeCloseTo(54, 6);
    expect(Math.min(...wider.map(([, y]) => y))).toBeCloseTo(0, 6);
  });

  it('hands over the number of each point', () => {
    const seen: number[] = [];
    letOutSmooth(rectangle(100, 50), (_point, i) => {
      seen.push(i);
      return 1;
    });
    expect(seen).toEqual([0, 1, 2, 3]);
  });

  it('cuts away the loop that a tight hollow would make', () => {
    const notched: Ring = [
      [0, 0],
      [100, 0],
      [100, 50],
      [52, 50],
      [50, 48],
      [48, 50],
      [0, 50],
    ];
    const out = letOutSmooth(notched, 8);
    expect(crossesItself(out)).toBe(false);
    expect(area(out)).toBeCloseTo(116 * 66, -2);
  });

  it('never crosses itself and is no smaller, for outlines of any shape', () => {
    fc.assert(
      fc.property(anyOutline, evenly(0.1, 10), (ring, amount) => {
        const out = letOutSmooth(ring, amount);
        expect(crossesItself(out)).toBe(false);
        expect(area(out)).toBeGreaterThan(area(ring));
        expect(edgeLength(out)).toBeGreaterThan(0);
      }),
      { seed: 8 },
    );
  });
});
