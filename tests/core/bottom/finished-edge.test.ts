import { describe, expect, it } from 'vitest';
import { PieceEdges } from '../../../src/core/bottom/edge';
import { finishedEdge, finishedWidth } from '../../../src/core/bottom/finished-edge';
import { area } from '../../../src/core/geometry/area';
import { box } from '../../../src/core/geometry/box';
import { edgeLength } from '../../../src/core/geometry/edge-length';
import { edgeBeyond } from '../../../src/core/geometry/edge-beyond';
import { pointToEdge } from '../../../src/core/geometry/point-to-edge';
import type { Point, Ring } from '../../../src/core/geometry/ring';
import { groundOutline } from '../../../src/core/last/ground-outline';
import { demoPlan } from '../../drawing/demo-plan';

const { plan } = demoPlan();

/** The greatest distance of a ring's points from another ring. */
function apart(ring: Ring, other: Ring): number {
  const toOther = ([x, y]: Point) =>
    Math.min(...other.map(([ax, ay], i) => pointToEdge(x, y, ax, ay, ...(other[(i + 1) % other.length] as Point))));
  return Math.sqrt(Math.max(...ring.map(toOther)));
}

describe('the finished edge', () => {
  it('of a square all of whose edges are straight cuts is its outline', () => {
    const square: Ring = [
      [0, 0],
      [100, 0],
      [100, 100],
      [0, 100],
    ];
    expect(area(finishedEdge(square, 3) ?? [])).toBeCloseTo(10_000, 1);
  });

  it('of a half disc stays at the cut and is taken in on the curve', () => {
    const half: Ring = Array.from({ length: 91 }, (_, i): Point => {
      const angle = ((i * 2 - 90) * Math.PI) / 180;
      return [50 * Math.cos(angle), 50 * Math.sin(angle)];
    });
    const finished = finishedEdge(half, 3) ?? [];
    const { left, right, bottom, top } = box(finished);
    // A disc of radius 47, cut in two (worked by hand).
    expect([left, right, bottom, top].map((value) => Math.round(value * 10) / 10)).toEqual([0, 47, -47, 47]);
    expect(area(finished)).toBeCloseTo((Math.PI * 47 ** 2) / 2, -1);
    expect(edgeBeyond(finished, 1)).toBeGreaterThan(140);
  });

  it('is as wide as the widest of the pieces that are rasped as one: of discs of 100 and 104 with 3 and 6 a side 94 (worked by hand)', () => {
    const disc = (radius: number): Ring =>
      Array.from({ length: 180 }, (_, i): Point => {
        const angle = (i * 2 * Math.PI) / 180;
        return [radius * Math.cos(angle), radius * Math.sin(angle)];
      });
    const piece = (radius: number, rounding: number) => ({ ring: disc(radius), width: 2 * radius, rounding });
    expect(finishedWidth([piece(52, 6), piece(50, 3)])).toBeCloseTo(94, 1);
    expect(finishedWidth([piece(50, 0)])).toBeCloseTo(100, 6);
    expect(finishedWidth([])).toBeUndefined();
  });

  it('of a platform is its edge without what is left for rasping', () => {
    const run = plan.runs.styles.find(({ style }) => style.code === 'Betony')!;
    const { bottom } = run.sizes[0]!;
    const platform = bottom.layers.find(({ part }) => part === 'platform')!;
    const allowance = platform.rounding;
    expect(allowance).toBeGreaterThan(1);
    const ground = groundOutline(bottom.last.outline, bottom.last.profile);
    const wanted = new PieceEdges(run.style, bottom.last).of(ground, 0, 0);
    expect(apart(finishedEdge(platform.ring, allowance) ?? [], wanted)).toBeLessThan(0.05);
  });

  it('of a lift keeps its front, and of every piece of the demo something', () => {
    for (const { run, layer } of plan.pieces) {
      const allowance = layer.rounding;
      if (allowance === 0) continue;
      const finished = finishedEdge(layer.ring, allowance) ?? [];
      expect(finished.length, `${run.style.code} ${layer.item}`).toBeGreaterThan(10);
      expect(apart(finished, layer.ring)).toBeCloseTo(allowance, 1);
      // What is taken off is a band along the curved edge (derived): a good part of the edge is curved.
      const band = area(layer.ring) - area(finished);
      expect(band).toBeLessThan(1.01 * allowance * edgeLength(layer.ring));
      expect(band).toBeGreaterThan(0.4 * allowance * edgeLength(layer.ring));
      const [whole, left] = [box(layer.ring), box(finished)];
      if (layer.part === 'lift' && layer.frontSlant === undefined) expect(left.right).toBeCloseTo(whole.right, 1);
      if (layer.part !== 'lift' && layer.underSeat && !layer.flap)
        expect(left.left).toBeCloseTo(whole.left + allowance, 1);
    }
  });
});
