import { describe, expect, it } from 'vitest';
import { integrate, rootOfRising, smoothStep } from '../../../src/core/last/slope-curve';

describe('smoothStep', () => {
  it('goes from 0 to 1, half way at a half, level at both ends and beyond', () => {
    expect([-3, 0, 0.5, 1, 7].map(smoothStep)).toEqual([0, 0, 0.5, 1, 1].map((y) => expect.closeTo(y, 12)));
    expect(smoothStep(0.001)).toBeLessThan(1e-5);
    expect(1 - smoothStep(0.999)).toBeLessThan(1e-5);
  });
});

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

describe('rootOfRising', () => {
  it('finds where a function passes nought', () => {
    expect(rootOfRising((t) => t * t - 2, 0, 2)).toBeCloseTo(Math.SQRT2, 12);
  });

  it('finds one at either end', () => {
    expect(rootOfRising((t) => t, 0, 1)).toBeCloseTo(0, 12);
    expect(rootOfRising((t) => t - 1, 0, 1)).toBeCloseTo(1, 12);
  });

  it('is undefined where there is none between', () => {
    expect(rootOfRising((t) => t + 1, 0, 1)).toBeUndefined();
    expect(rootOfRising((t) => t - 2, 0, 1)).toBeUndefined();
  });
});
