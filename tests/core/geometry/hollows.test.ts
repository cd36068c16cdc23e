import { describe, expect, it } from 'vitest';
import { hollows } from '../../../src/core/geometry/hollows';
import type { Point } from '../../../src/core/geometry/ring';

/** A comb of teeth 10 mm wide and as far apart. */
const comb = (teeth: number, deep: number): Point[] => [
  [0, 0],
  [20 * teeth, 0],
  ...Array.from({ length: teeth }, (_, i): Point[] => {
    const x = 20 * (teeth - i);
    return [
      [x, 30],
      [x - 10, 30],
      [x - 10, 30 - deep],
      [x - 20, 30 - deep],
    ];
  }).flat(),
];

/** Bottom of a last with a waist, its points off by up to `rough` mm. */
const sole = (points: number, rough = 0): Point[] =>
  Array.from({ length: points }, (_, i): Point => {
    const t = (2 * Math.PI * i) / points;
    const off = rough * (i % 2 === 0 ? 1 : -1);
    return [130 * Math.cos(t), (45 + off) * Math.sin(t) * (1 - 0.6 * Math.sin(t) ** 2) + off];
  });

describe('hollows of an outline', () => {
  it('are none of a convex one, two of a waist, and one beside every tooth', () => {
    expect(
      hollows(
        [
          [0, 0],
          [9, 0],
          [9, 5],
          [0, 5],
        ],
        0.5,
      ),
    ).toBe(0);
    expect(hollows(sole(100), 0.5)).toBe(2);
    // The last tooth ends in a step at the back.
    for (const teeth of [3, 40, 119]) expect(hollows(comb(teeth, 20), 0.5)).toBe(teeth);
  });

  it('go by their depth: a rough edge has no more than a smooth one, and not by where the ring begins', () => {
    expect(hollows(sole(400, 0.2), 1)).toBe(2);
    expect(hollows(comb(40, 0.3), 0.5)).toBe(0);
    const ring = comb(7, 20);
    for (let at = 0; at < ring.length; at++) expect(hollows([...ring.slice(at), ...ring.slice(0, at)], 0.5)).toBe(7);
  });
});
