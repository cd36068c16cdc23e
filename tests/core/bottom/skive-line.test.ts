import { describe, expect, it } from 'vitest';
import { skiveLine } from '../../../src/core/bottom/skive-line';
import type { Ring } from '../../../src/core/geometry/ring';
import { demoPlan } from '../../drawing/demo-plan';

const ring: Ring = [
  [0, -30],
  [110, -30],
  [90, 30],
  [0, 30],
];
const skive = { face: 'upper', angle: 20, edge: 1 } as const;

describe('the line of a skive', () => {
  it('lies its width behind a slanted front, parallel to it', () => {
    // By hand: the front from (110, −30) to (90, 30), moved 15 mm toward the heel.
    const { points, closed } = skiveLine({ ring, skive: { ...skive, at: 'front', width: 15 } })!;
    expect(closed).toBe(false);
    expect(points.map(([x, y]) => [Math.round(x * 1e6) / 1e6, y])).toEqual([
      [95, -30],
      [75, 30],
    ]);
  });

  it('lies its width within an edge, all round or from a line forward', () => {
    const round = skiveLine({ ring, skive: { ...skive, at: 'edge', width: 8 } })!;
    expect(round.closed).toBe(true);
    expect(Math.max(...round.points.map(([, y]) => y))).toBeCloseTo(22, 3);
    const forward = skiveLine({ ring, skive: { ...skive, at: 'edge', width: 8, from: 60 } })!;
    expect(forward.closed).toBe(false);
    expect(forward.points[0]?.[0]).toBeCloseTo(60, 6);
    expect(forward.points.at(-1)?.[0]).toBeCloseTo(60, 6);
    expect(Math.min(...forward.points.map(([x]) => x))).toBeCloseTo(60, 6);
  });

  it('is there for every skived piece of the demo and for no other', () => {
    for (const { layer } of demoPlan().plan.pieces) {
      expect(skiveLine(layer) !== undefined).toBe(layer.skive !== undefined);
    }
  });
});
