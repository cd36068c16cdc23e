import { describe, expect, it } from 'vitest';
import { weltStrip } from '../../../src/core/bottom/welt-strip';
import { edgeLength } from '../../../src/core/geometry/edge-length';
import { letOut } from '../../../src/core/geometry/let-out';
import { outlineModel } from '../../../src/core/last/outline-model';
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

  it('from the seat line of a sole is shorter than all round by the edge of the seat', () => {
    const sole = outlineModel({ length: 252, tread: 84, waist: 56, seat: 58, swing: 3 });
    const [part, whole] = [weltStrip(sole, 0, 12, 42).inseam, weltStrip(sole, 0, 12).inseam];
    // Round a seat 58 wide: between a straight back and a square one.
    expect(whole - part).toBeGreaterThan(2 * 42);
    expect(whole - part).toBeLessThan(2 * 42 + 58);
  });
});
