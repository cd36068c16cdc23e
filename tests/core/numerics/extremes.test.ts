import { describe, expect, it } from 'vitest';
import { greatestOf, leastOf } from '../../../src/core/numerics/extremes';

describe('leastOf and greatestOf', () => {
  it('find the least and the greatest of more numbers than a call takes as arguments (derived)', () => {
    const many = Array.from({ length: 1_000_000 }, (_, i) => ((i * 7919) % 1_000_003) - 5);
    expect(() => Math.min(...many)).toThrow(RangeError);
    expect([leastOf(many), greatestOf(many)]).toEqual([-5, 999_997]);
  });

  it('say of none what Math.min and Math.max say', () => {
    expect([leastOf([]), greatestOf(new Set<number>())]).toEqual([Math.min(), Math.max()]);
  });
});
