import { describe, expect, it } from 'vitest';
import { minimise } from '../../../src/core/numerics/minimise';

const FINE = { places: 32, steps: 40 };

describe('minimise', () => {
  it('finds the place where a parabola is least, and its value (derived)', () => {
    const { best, value } = minimise((x) => (x - 1.7) ** 2 + 3, -5, 5, FINE);
    expect(best).toBeCloseTo(1.7, 6);
    expect(value).toBeCloseTo(3, 12);
  });

  it('finds the lower of two hollows (derived: x⁴ − 4x² + x has its minimum at x = −1.473)', () => {
    const { best } = minimise((x) => x ** 4 - 4 * x ** 2 + x, -2, 2, FINE);
    expect(4 * best ** 3 - 8 * best + 1).toBeCloseTo(0, 5);
    expect(best).toBeLessThan(0);
  });

  it('is a place that was looked at where no steps are asked for', () => {
    expect(minimise((x) => Math.abs(x - 3), 0, 10, { places: 10, steps: 0 })).toEqual({ best: 3, value: 0 });
  });
});
