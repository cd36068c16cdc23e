import { describe, expect, it } from 'vitest';
import { moved } from '../../../src/core/geometry/moved';
import { overlap } from '../../../src/core/geometry/overlap';
import { rectangle } from '../cutting/outlines';

const block = rectangle(100, 50);

describe('overlap', () => {
  it('is nought for pieces apart or edge on edge', () => {
    expect(overlap(block, moved(block, 0, 101, 0))).toBe(0);
    expect(overlap(block, moved(block, 0, 100, 10))).toBe(0);
  });

  it('is about the width of a sliver (derived)', () => {
    expect(overlap(block, moved(block, 0, 99.9, 0))).toBeCloseTo(0.1, 3);
  });
});
