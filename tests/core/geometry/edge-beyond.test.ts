import { describe, expect, it } from 'vitest';
import { edgeBeyond } from '../../../src/core/geometry/edge-beyond';
import type { Ring } from '../../../src/core/geometry/ring';

describe('the edge of a ring beyond a place', () => {
  const sheet: Ring = [
    [0, 0],
    [100, 0],
    [100, 40],
    [0, 40],
  ];

  it('of a rectangle is its end and what its sides have left (derived)', () => {
    expect(edgeBeyond(sheet, -10)).toBe(280);
    expect(edgeBeyond(sheet, 70)).toBe(30 + 40 + 30);
    expect(edgeBeyond(sheet, 100)).toBe(40);
    expect(edgeBeyond(sheet, 101)).toBe(0);
  });

  it('of a slanting edge is the share that lies beyond (derived: a triangle of 3, 4 and 5)', () => {
    const triangle: Ring = [
      [0, 0],
      [40, 0],
      [40, 30],
    ];
    // Half of the level side and of the slanting one, 40 and 50, and all of the upright one.
    expect(edgeBeyond(triangle, 20)).toBeCloseTo(20 + 30 + 25, 9);
  });

  it('is the same whichever way round the ring goes and wherever it begins', () => {
    const turned: Ring = [...sheet.slice(1), sheet[0]!].reverse();
    expect(edgeBeyond(turned, 70)).toBeCloseTo(edgeBeyond(sheet, 70), 9);
  });
});
