import { describe, expect, it } from 'vitest';
import { area } from '../../../src/core/geometry/area';
import { box } from '../../../src/core/geometry/box';
import type { Point } from '../../../src/core/geometry/ring';
import { measuredLast } from '../../../src/core/last/measured-last';
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
    check(undefined, half, 'those of the inside are missing');
    check(half.slice(1), half, 'give at least three on each side');
    check([...half, [200, -1]], half, 'the one at 200 mm is negative; measure from the length line outward');
    check([...half, [150, 40]], half, 'the one at 150 mm follows the one at 168 mm; give them in order');
    check([...half, [260, 10]], half, 'the one at 260 mm lies off the bottom, which is 252 mm long');
  });

  it('measures nothing of nothing', () => {
    expect(measuredLast({}, 250)).toEqual({ gaps: undefined, twist: undefined, outline: undefined });
  });
});
