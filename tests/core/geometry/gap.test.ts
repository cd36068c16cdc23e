import { describe, expect, it } from 'vitest';
import { gap } from '../../../src/core/geometry/gap';
import { moved } from '../../../src/core/geometry/moved';
import { rectangle, regular } from '../cutting/outlines';

const block = rectangle(100, 50);

describe('gap', () => {
  it('measures between edges, from corner to edge and from corner to corner (derived)', () => {
    expect(gap(block, moved(block, 0, 103, 0))).toBe(3);
    expect(gap(block, moved(rectangle(10, 10), 45, 110, 20))).toBeCloseTo(10 - 10 * Math.SQRT1_2, 9);
    expect(gap(block, moved(block, 0, 103, 54))).toBe(5);
  });

  it('is nought where outlines touch, cross or lie within each other', () => {
    expect(gap(block, moved(block, 0, 100, 0))).toBe(0);
    expect(gap(block, moved(block, 0, 50, 25))).toBe(0);
    expect(gap(block, moved(rectangle(10, 10), 0, 20, 20))).toBe(0);
    expect(gap(moved(rectangle(10, 10), 0, 20, 20), block)).toBe(0);
    expect(gap(block, block)).toBe(0);
  });

  it('does not tell distances apart that are large enough', () => {
    expect(gap(block, moved(block, 0, 130, 0), 4)).toBe(4);
    expect(gap(block, moved(block, 0, 101, 0), 4)).toBe(1);
  });

  it('is that of circles for outlines of many corners (derived)', () => {
    const round = regular(720, 50);
    expect(gap(round, moved(round, 0, 90, 60))).toBeCloseTo(Math.hypot(90, 60) - 100, 2);
  });
});
