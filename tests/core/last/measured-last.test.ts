import { describe, expect, it } from 'vitest';
import { area } from '../../../src/core/geometry/area';
import { box } from '../../../src/core/geometry/box';
import type { Point } from '../../../src/core/geometry/ring';
import { measuredLast } from '../../../src/core/last/measured-last';
import { toEdge } from '../cutting/oracle';
import { rectangle } from '../cutting/outlines';

const half: readonly Point[] = [
  [42, 29],
  [105, 24],
  [168, 42],
];

describe('measuredLast', () => {
  it('takes one line of gaps as it is, whichever edge it is of', () => {
    const line: Point[] = [
      [0, 40],
      [160, 0],
    ];
    const gaps = [
      { x: 0, z: 40 },
      { x: 160, z: 0 },
    ];
    expect(measuredLast({ gap: line }, 250)).toMatchObject({ gaps, twist: undefined, outline: undefined });
    expect(measuredLast({ gapInside: line }, 250).gaps).toEqual(gaps);
    expect(measuredLast({ gapOutside: line }, 250).gaps).toEqual(gaps);
  });

  it('takes the mean of both edges at every place that one of them was measured, as far as both reach (derived)', () => {
    const { gaps, twist } = measuredLast(
      {
        gapInside: [
          [0, 40],
          [80, 30],
          [160, 0],
        ],
        gapOutside: [
          [0, 40],
          [40, 30],
          [120, 6],
        ],
      },
      250,
    );
    // At 40: (35 + 30) / 2; at 80: (30 + 18) / 2; at 120: (15 + 6) / 2.
    expect(gaps).toEqual([
      { x: 0, z: 40 },
      { x: 40, z: 32.5 },
      { x: 80, z: 24 },
      { x: 120, z: 10.5 },
    ]);
    expect(twist).toBe(12);
  });

  it('takes a single line before those of the edges', () => {
    const gap: Point[] = [
      [0, 30],
      [100, 0],
    ];
    expect(measuredLast({ gap, gapInside: half, gapOutside: half }, 250).gaps?.[0]).toEqual({ x: 0, z: 30 });
  });

  it('takes a traced bottom in either direction', () => {
    const traced = rectangle(250, 80);
    expect(measuredLast({ bottom: [...traced].reverse() }, 250).outline).toEqual(traced);
    expect(() => measuredLast({ bottom: traced.slice(0, 2) }, 250)).toThrow('measured bottom: an outline needs');
  });

  it('draws an outline through half-widths, inside below and outside above the length line', () => {
    const { outline = [] } = measuredLast({ halfWidthInside: half, halfWidthOutside: half }, 252);
    const { left, right, top, bottom } = box(outline);
    expect(left).toBeCloseTo(0, 0);
    expect(right).toBeCloseTo(252, 0);
    expect(top).toBeGreaterThanOrEqual(41.9);
    expect(bottom).toBeCloseTo(-top, 1);
    expect(area(outline)).toBeGreaterThan(0);
  });

  it('says what is wrong with half-widths', () => {
    const check = (inside: readonly Point[] | undefined, outside: readonly Point[] | undefined, sentence: string) =>
      expect(() => measuredLast({ halfWidthInside: inside, halfWidthOutside: outside }, 252)).toThrow(sentence);
    check(half, undefined, 'half-widths: those of the outside are missing; give both');
    check(undefined, half, 'half-widths: those of the inside are missing; give both');
    check(half.slice(1), half, 'give at least three on each side');
    check([...half, [200, -1]], half, 'the one at 200 mm is negative; measure from the length line outward');
    check([...half, [150, 40]], half, 'the one at 150 mm follows the one at 168 mm; give them in order');
    check(half, [...half, [168, 40]], 'the one at 168 mm follows the one at 168 mm; give them in order');
    check([...half, [260, 10]], half, 'the one at 260 mm lies off the bottom, which is 252 mm long');
    check(half, [[-1, 10], ...half], 'the one at -1 mm lies off the bottom, which is 252 mm long');
    check(half, half.slice(0, 2), 'give at least three on each side, from the seat to the toe');
  });

  it('takes half-widths at the back and at the toe themselves for ends: there the outline closes on its own (derived)', () => {
    const ends = (list: readonly Point[]): Point[] => [[0, 0], ...list, [252, 3]];
    const drawn = measuredLast({ halfWidthInside: half, halfWidthOutside: half }, 252).outline;
    expect(measuredLast({ halfWidthInside: ends(half), halfWidthOutside: ends(half) }, 252).outline).toEqual(drawn);
  });

  it('passes every half-width, below on the inside and above on the outside, and the toe midway between the last two', () => {
    const inside: Point[] = [
      [42, 28],
      [105, 20],
      [168, 44],
      [230, 30],
    ];
    const outside: Point[] = [
      [42, 29],
      [105, 34],
      [168, 41],
      [230, 14],
    ];
    const { outline = [] } = measuredLast({ halfWidthInside: inside, halfWidthOutside: outside }, 252);
    // The toe: (14 − 30) / 2, inward of the length line.
    const places: Point[] = [[0, 0], [252, -8], ...inside.map(([x, y]): Point => [x, -y]), ...outside];
    for (const place of places) expect(toEdge(place, outline)).toBeLessThan(0.06);
  });

  it('measures the edge that reaches less far up to its end only, also where one edge alone was measured at the back (derived)', () => {
    const { gaps, twist } = measuredLast(
      {
        gapInside: [
          [0, 40],
          [50, 36],
          [100, 20],
          [150, 4],
        ],
        gapOutside: [
          [0, 44],
          [100, 26],
        ],
      },
      250,
    );
    // At 50 the outside stands at 35; at 150 it was not measured.
    expect(gaps).toEqual([
      { x: 0, z: 42 },
      { x: 50, z: 35.5 },
      { x: 100, z: 23 },
    ]);
    expect(twist).toBe(6);
  });

  it('says of either edge what is wrong with its gaps', () => {
    const line: Point[] = [
      [0, 40],
      [160, 0],
    ];
    const short: Point[] = [[0, 40]];
    const late: Point[] = [
      [5, 40],
      [160, 0],
    ];
    expect(() => measuredLast({ gap: short }, 250)).toThrow('give at least two gaps');
    expect(() => measuredLast({ gapInside: line, gapOutside: short }, 250)).toThrow('give at least two gaps');
    expect(() => measuredLast({ gapInside: late, gapOutside: line }, 250)).toThrow('the first gap lies at 5 mm');
    // Beside one line those of the edges are not asked for.
    expect(measuredLast({ gap: line, gapOutside: short }, 250).gaps).toHaveLength(2);
  });

  it('measures nothing of nothing', () => {
    expect(measuredLast({}, 250)).toEqual({ gaps: undefined, twist: undefined, outline: undefined });
  });
});
