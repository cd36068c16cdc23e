import { describe, expect, it } from 'vitest';
import { rootOfRising } from '../../../src/core/numerics/root-of-rising';

describe('rootOfRising', () => {
  it('finds where a function passes nought', () => {
    expect(rootOfRising((t) => t * t - 2, 0, 2)).toBeCloseTo(Math.SQRT2, 12);
    expect(rootOfRising((t) => Math.tan(t) - 50, 0, 1.57)).toBeCloseTo(Math.atan(50), 12);
    expect(rootOfRising((t) => (t - 0.3) ** 9, 0, 1)).toBeCloseTo(0.3, 12);
  });

  it('finds one at either end', () => {
    expect(rootOfRising((t) => t, 0, 1)).toBeCloseTo(0, 12);
    expect(rootOfRising((t) => t - 1, 0, 1)).toBeCloseTo(1, 12);
  });

  it('asks a smooth function less often than halving would', () => {
    let asked = 0;
    const root = rootOfRising((t) => (asked++, Math.sin(t) - 0.2), 0, 1.5);
    expect(root).toBeCloseTo(Math.asin(0.2), 14);
    expect(asked).toBeLessThan(20);
  });

  it('is undefined where there is none between', () => {
    expect(rootOfRising((t) => t + 1, 0, 1)).toBeUndefined();
    expect(rootOfRising((t) => t - 2, 0, 1)).toBeUndefined();
  });
});
