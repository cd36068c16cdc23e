import { describe, expect, it } from 'vitest';
import { area } from '../../../src/core/geometry/area';
import { crossesItself } from '../../../src/core/geometry/crosses-itself';
import { closedCurve } from '../../../src/core/last/closed-curve';
import { regular, soleLike } from '../cutting/outlines';
import { toEdge } from '../cutting/oracle';

describe('closedCurve', () => {
  it('passes through all its points, within 0.05 mm after thinning', () => {
    const points = soleLike(270, 24);
    for (const point of points) expect(toEdge(point, closedCurve(points))).toBeLessThanOrEqual(0.05);
  });

  it('rounds 16 points of a circle to a hundredth of its area', () => {
    expect(area(closedCurve(regular(16, 100)))).toBeGreaterThan(0.99 * Math.PI * 1e4);
    expect(area(closedCurve(regular(16, 100)))).toBeLessThan(1.001 * Math.PI * 1e4);
  });

  it('has no loop between points that stand at uneven distances (centripetal parameters: Yuksel, Schaefer and Keyser 2011)', () => {
    expect(
      crossesItself(
        closedCurve([
          [0, 0],
          [100, 0],
          [101, 1],
          [101, 2],
          [100, 50],
          [0, 50],
        ]),
      ),
    ).toBe(false);
  });

  it('keeps the direction of its points', () => {
    expect(area(closedCurve([...regular(12)].reverse()))).toBeLessThan(0);
  });
});
