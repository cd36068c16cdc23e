import { describe, expect, it } from 'vitest';
import { PieceEdges, projectionOf } from '../../../src/core/bottom/edge';
import { area } from '../../../src/core/geometry/area';
import { box } from '../../../src/core/geometry/box';
import { styleOf } from '../samples';
import { rampLast, rampOutline } from '../ramp';

describe('projectionOf', () => {
  const zoned = styleOf({
    Projection: 3,
    'Projection toe': 6,
    'Projection tread': 4,
    'Projection waist': 1,
    'Projection seat': 2,
  });

  it('holds in full at the middle of each zone', () => {
    expect([0.1, 0.2, 0.42, 2 / 3, 0.95, 1].map((share) => projectionOf(zoned)(share))).toEqual([2, 2, 1, 4, 6, 6]);
  });

  it('goes over smoothly and never beyond its neighbours', () => {
    let before = projectionOf(zoned)(0);
    for (let share = 0; share <= 1; share += 0.001) {
      const here = projectionOf(zoned)(share);
      expect(Math.abs(here - before)).toBeLessThan(0.03);
      expect(here >= 1 && here <= 6).toBe(true);
      before = here;
    }
  });

  it('is the style’s own where a zone says nothing', () => {
    const toe = styleOf({ Projection: 3, 'Projection toe': 0 });
    expect(projectionOf(toe)(0.3)).toBe(3);
    expect(projectionOf(toe)(1)).toBe(0);
  });
});

describe('PieceEdges', () => {
  it('adds lasted substance, projection and rounding allowance a side, less what a cover takes (common practice)', () => {
    const style = styleOf({ 'Lasted substance': 2.5, Projection: 3, 'Rounding allowance': 2 });
    const { left, right, bottom, top } = box(new PieceEdges(style, rampLast).of(rampOutline, 1.2));
    expect([-left, -bottom - 30, top - 30, right - rampLast.length]).toEqual(
      new Array(4).fill(expect.closeTo(2.5 + 3 + 2 - 1.2, 6)),
    );
  });

  it('has one ring for pieces that go equally far out', () => {
    const edges = new PieceEdges(styleOf({ 'Rounding allowance': 2 }), rampLast);
    expect(edges.of(rampOutline, 0.5, 2.5)).toBe(edges.of(rampOutline));
    expect(edges.of(rampOutline, 1)).not.toBe(edges.of(rampOutline));
  });

  it('leaves a sandal at its insole edge where nothing is added', () => {
    const style = styleOf({ 'Lasted substance': 0, Projection: 0, 'Rounding allowance': 0 });
    expect(area(new PieceEdges(style, rampLast).of(rampOutline))).toBeCloseTo(area(rampOutline), 4);
  });

  it('reads the zone from the last’s own length, also where the outline stands shorter on the ground', () => {
    const style = styleOf({ 'Lasted substance': 0, 'Rounding allowance': 0, 'Projection toe': 5, Projection: 0 });
    const ground = rampOutline.map(([x, y]) => [x * 0.9, y] as const);
    expect(box(new PieceEdges(style, rampLast).of(ground)).right).toBeCloseTo(0.9 * rampLast.length + 5, 6);
  });
});
