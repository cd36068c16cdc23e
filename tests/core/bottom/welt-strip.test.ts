import { itemRound } from '../../../src/core/item-at';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { weltStrip } from '../../../src/core/bottom/welt-strip';
import { edgeLength } from '../../../src/core/geometry/edge-length';
import { letOut } from '../../../src/core/geometry/let-out';
import { outlineModel } from '../../../src/core/last/outline-model';
import { evenly } from '../../evenly';
import { anyOutline } from '../cutting/outlines';
import { ellipse } from '../ovals';

describe('weltStrip', () => {
  it('all round is the inseam and the lap, its outer edge 2πw longer, as the let-out outline is (Steiner, convex)', () => {
    const oval = ellipse(130, 42);
    const { length, inseam, outer } = weltStrip(oval, 15, 12);
    expect(inseam).toBeCloseTo(edgeLength(oval), 9);
    expect(length).toBeCloseTo(inseam + 15, 9);
    expect(outer).toBeCloseTo(edgeLength(letOut(oval, 12)), 1);
  });

  it('from the seat turns by half a turn: of an oval half the edge and half of 2πw', () => {
    const oval = ellipse(130, 42);
    const half = weltStrip(oval, 0, 12, 0);
    expect(half.inseam).toBeCloseTo(edgeLength(oval) / 2, 3);
    expect(half.outer).toBeCloseTo(edgeLength(letOut(oval, 12)) / 2, 1);
  });

  it('cuts edges that cross the place where it begins', () => {
    const square = [
      [0, 0],
      [100, 0],
      [100, 80],
      [0, 80],
    ] as const;
    expect(weltStrip(square, 0, 12, 40).inseam).toBeCloseTo(60 + 80 + 60, 9);
    expect(weltStrip(square, 0, 12, 101).inseam).toBe(0);
  });

  it('counts an edge that lies on the place where it begins, and each end of one that crosses it, in either direction', () => {
    // A kite: from its middle line forward there are two edges of 50; its upright edge at 0 counts, as it lies there.
    const kite = [
      [0, -30],
      [40, 0],
      [0, 30],
    ] as const;
    expect(weltStrip(kite, 0, 12, 0).inseam).toBeCloseTo(50 + 50 + 60, 9);
    // At 16 of 40 mm three fifths of both slanting edges lie ahead.
    expect(weltStrip(kite, 0, 12, 16).inseam).toBeCloseTo(2 * 30, 9);
    expect(weltStrip([...kite].reverse(), 0, 12, 16).inseam).toBeCloseTo(2 * 30, 9);
  });

  it('is the length of the part ahead, by counting small steps along the edge, for outlines of any shape', () => {
    fc.assert(
      fc.property(anyOutline, evenly(-100, 100), (ring, from) => {
        const STEPS = 2000;
        let [counted, edge] = [0, 0];
        ring.forEach(([ax, ay], i) => {
          const [bx, by] = itemRound(ring, i + 1);
          const step = Math.hypot(bx - ax, by - ay) / STEPS;
          for (let k = 0; k < STEPS; k++) if (ax + ((k + 0.5) / STEPS) * (bx - ax) > from) counted += step;
          edge += STEPS * step;
        });
        expect(Math.abs(weltStrip(ring, 0, 12, from).inseam - counted)).toBeLessThan(edge / STEPS);
      }),
      { seed: 14, numRuns: 60 },
    );
  });

  it('from the seat line of a sole is shorter than all round by the edge of the seat', () => {
    const sole = outlineModel({ length: 252, tread: 84, waist: 56, seat: 58, swing: 3 });
    const [part, whole] = [weltStrip(sole, 0, 12, 42).inseam, weltStrip(sole, 0, 12).inseam];
    // Round a seat 58 wide: between a straight back and a square one.
    expect(whole - part).toBeGreaterThan(2 * 42);
    expect(whole - part).toBeLessThan(2 * 42 + 58);
  });
});
