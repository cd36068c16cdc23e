import { expect, it } from 'vitest';
import { pathLength } from '../../../src/core/geometry/path-length';

it('is the sum of the steps, and 0 of a point or of nothing', () => {
  expect(
    pathLength([
      [0, 0],
      [3, 4],
      [3, 10],
    ]),
  ).toBe(11);
  expect([pathLength([[1, 1]]), pathLength([])]).toEqual([0, 0]);
});
