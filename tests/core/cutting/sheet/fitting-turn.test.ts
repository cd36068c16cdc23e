import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fittingTurn } from '../../../../src/core/cutting/sheet/fitting-turn';
import { TOLERANCE } from '../../../../src/core/cutting/sheet/sheet';
import { boxMoved } from '../../../../src/core/geometry/box';
import type { Ring } from '../../../../src/core/geometry/ring';
import { rectangle } from '../outlines';

const wedge: Ring = [
  [0, 0],
  [240, 20],
  [250, 60],
  [10, 90],
];

describe('fittingTurn', () => {
  it('finds the very turn that is found by trying one after the other (derived)', () => {
    const sides = fc.integer({ min: 40, max: 300 });
    fc.assert(
      fc.property(sides, sides, fc.integer({ min: 1, max: 60 }), (length, width, degrees) => {
        const fits = (turn: number, more: number) => {
          const { left, bottom, right, top } = boxMoved(wedge, turn);
          return right - left <= length + more && top - bottom <= width + more;
        };
        const turns = Array.from({ length: 4 * degrees }, (_, i) => (i + 1) / 4).flatMap((turn) => [turn, -turn]);
        const wanted = fits(0, TOLERANCE / 2)
          ? 0
          : [-10 * TOLERANCE, TOLERANCE / 2].flatMap((more) => turns.filter((turn) => fits(turn, more)))[0];
        const format = { length: length + 10, width: width + 10, knifeRoom: 2, edgeTrim: 5 };
        expect(fittingTurn(wedge, format, { kind: 'within', degrees })).toBe(wanted);
      }),
      { numRuns: 300 },
    );
  });

  it('lays a strip across the corners of a sheet that is shorter, and none that is longer than they are apart (derived)', () => {
    const format = { length: 100, width: 100, knifeRoom: 0, edgeTrim: 0 };
    const turn = fittingTurn(rectangle(130, 5), format, { kind: 'any' }) ?? NaN;
    const { left, right, bottom, top } = boxMoved(rectangle(130, 5), turn);
    expect(Math.max(right - left, top - bottom)).toBeLessThanOrEqual(100);
    expect(fittingTurn(rectangle(145, 5), format, { kind: 'any' })).toBeUndefined();
  });
});
