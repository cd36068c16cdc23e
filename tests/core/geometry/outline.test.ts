import { describe, expect, it } from 'vitest';
import { area } from '../../../src/core/geometry/area';
import { outline } from '../../../src/core/geometry/outline';
import type { Point } from '../../../src/core/geometry/ring';
import { rectangle } from '../cutting/outlines';

const square = rectangle(10, 10);

describe('outline', () => {
  it('takes points in either direction and hands them over counter-clockwise', () => {
    expect(outline(square, 'outline')).toEqual(square);
    expect(outline([...square].reverse(), 'outline')).toEqual(square);
  });

  it('takes a first point that is repeated at the end, and any other repeated one, as one', () => {
    expect(area(outline([...square, [0, 0]], 'outline'))).toBe(100);
    expect(outline([...square, [0, 0]], 'outline')).toHaveLength(4);
    const doubled = [...square, ...square].sort((p, q) => square.indexOf(p) - square.indexOf(q));
    expect(outline(doubled, 'outline')).toHaveLength(4);
  });

  it('refuses fewer than three different points', () => {
    const few: readonly (readonly Point[])[] = [
      [],
      [[1, 1]],
      [
        [1, 1],
        [1, 1],
      ],
      [
        [0, 0],
        [5, 5],
        [0, 0],
      ],
    ];
    for (const points of few) {
      expect(() => outline(points, 'outline')).toThrow('outline: an outline needs at least three different points');
    }
  });

  it('refuses points that are not in order round the edge', () => {
    expect(() =>
      outline(
        [
          [0, 0],
          [10, 10],
          [10, 0],
          [0, 10],
        ],
        'piece',
      ),
    ).toThrow('piece: the outline crosses or touches itself; list its points in order round the edge');
  });

  it('refuses points on one line, which fold back', () => {
    expect(() =>
      outline(
        [
          [0, 0],
          [5, 0],
          [10, 0],
        ],
        'outline',
      ),
    ).toThrow('crosses or touches itself');
  });

  it('refuses what encloses next to nothing', () => {
    expect(() =>
      outline(
        [
          [0, 0],
          [10, 0],
          [10, 1e-5],
        ],
        'outline',
      ),
    ).toThrow('the outline encloses nothing');
  });

  it('refuses points further out than 100 m, and what is no number', () => {
    expect(() =>
      outline(
        [
          [0, 0],
          [100_001, 0],
          [0, 10],
        ],
        'outline',
      ),
    ).toThrow('give millimetres');
    expect(() =>
      outline(
        [
          [0, 0],
          [Infinity, 0],
          [0, 10],
        ],
        'outline',
      ),
    ).toThrow('give millimetres');
  });
});
