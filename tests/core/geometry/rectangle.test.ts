import { describe, expect, it } from 'vitest';
import { area } from '../../../src/core/geometry/area';
import { box } from '../../../src/core/geometry/box';
import { rectangle, rectangleAbout } from '../../../src/core/geometry/rectangle';

describe('rectangle', () => {
  it('runs counter-clockwise from the origin', () => {
    expect(rectangle(30, 20)).toEqual([
      [0, 0],
      [30, 0],
      [30, 20],
      [0, 20],
    ]);
    expect(area(rectangle(30, 20))).toBe(600);
  });
});

describe('rectangleAbout', () => {
  it('is the ring of which the box is the box', () => {
    const about = { left: -3, bottom: 2, right: 5, top: 9 };
    expect(box(rectangleAbout(about))).toEqual(about);
    expect(area(rectangleAbout(about))).toBe(56);
  });
});
