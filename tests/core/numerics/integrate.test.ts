import { describe, expect, it } from 'vitest';
import { integrate } from '../../../src/core/numerics/integrate';

describe('integrate', () => {
  it('is exact for what is smooth: sine over half a turn, powers up to 15 (Gauss–Legendre of 8 points)', () => {
    expect(integrate(Math.sin, 0, Math.PI)).toBeCloseTo(2, 12);
    expect(integrate((t) => t ** 15, 0, 2)).toBeCloseTo(2 ** 16 / 16, 6);
  });

  it('counts backward as negative and nothing over no span', () => {
    expect(integrate((t) => t, 2, 0)).toBeCloseTo(-2, 12);
    expect(integrate((t) => t, 2, 2)).toBe(0);
  });
});
