import { describe, expect, it } from 'vitest';
import { Space } from '../../../../src/core/cutting/search/space';

describe('Space', () => {
  const space = new Space([100, 60], [50, 40]);

  it('asks nothing of a box that lies within a rectangle, to the edge', () => {
    expect(space.stickingOut(0, 0, 100, 50)).toBe(0);
    const start = space.start(1);
    expect(space.stickingOut(start, 0, start + 60, 40)).toBe(0);
    expect(space.stickingOut(start, 0, start + 60, 41)).toBeGreaterThan(0);
  });

  it('asks for twice the root of the area outside, and a ten-thousandth of its own', () => {
    // Derived: a box of 20 × 10, of which 5 × 10 lies beyond the left edge.
    expect(space.stickingOut(-5, 10, 15, 20)).toBeCloseTo(2 * Math.sqrt(50 + 0.02), 9);
    // Over a corner: 20 × 10 less 15 × 8.
    expect(space.stickingOut(-5, -2, 15, 8)).toBeCloseTo(2 * Math.sqrt(200 - 120 + 0.02), 9);
  });

  it('asks for more the farther a box lies outside', () => {
    const outside = [1, 30, 60, 200].map((by) => space.stickingOut(10, 50 + by, 30, 60 + by));
    expect(outside).toEqual([...outside].sort((a, b) => a - b));
  });

  it('gives every place to the nearer rectangle', () => {
    const between = (100 + space.start(1)) / 2;
    expect([-40, 5, between - 1, between + 1, space.start(1) + 50, 1e4].map((x) => space.at(x))).toEqual([
      0, 0, 0, 1, 1, 1,
    ]);
    expect(space.end).toBe(space.start(1) + 60);
  });
});
