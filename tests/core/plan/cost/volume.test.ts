import { describe, expect, it } from 'vitest';
import { type Bottom, buildBottom } from '../../../../src/core/bottom/bottom';
import { inside } from '../../../../src/core/geometry/inside';
import type { Point, Ring } from '../../../../src/core/geometry/ring';
import { lastInSize } from '../../../../src/core/last/last-in-size';
import { atGround, type Profile } from '../../../../src/core/last/profile';
import { volume } from '../../../../src/core/plan/cost/volume';
import { rampLast } from '../../ramp';
import { findSample, lastOf, type Named, styleOf } from '../../samples';

const BARE = { 'Lasted substance': 0, Projection: 0, 'Rounding allowance': 0, 'Skive to': 0.1, Outsole: 'Rubber 4' };
const WEDGE = { ...BARE, Raise: 'wedge', Lifts: 'Cork 6, Cork 4', 'Most rasping': 3 };
const liftsOf = ({ layers }: Bottom) => layers.filter(({ part }) => part === 'lift');
const volumeOf = (bottom: Bottom) => liftsOf(bottom).reduce((sum, lift) => sum + volume(lift), 0);

/** Grid cells under the last's bottom within the longest lift, by the height there: the slanted front runs across it. */
function integrated(ring: Ring, face: Profile, height: number, slant: number, whole: Ring): number {
  const step = 0.5;
  const lean = Math.tan((slant * Math.PI) / 180);
  const ys = whole.map(([, y]) => y);
  const middle = (Math.min(...ys) + Math.max(...ys)) / 2;
  let sum = 0;
  for (let x = step / 2; x < 260; x += step) {
    for (let y = -60 + step / 2; y < 60; y += step) {
      if (inside(ring, x, y)) sum += Math.min(height, atGround(face, x + lean * (y - middle)).z) * step * step;
    }
  }
  return sum;
}

describe('volume', () => {
  it('of the lifts of a ramp wedge is 307.8 cm³ but for its setback and kept edges (derived: 5,130 mm² × 60 mm)', () => {
    const bottom = buildBottom(
      styleOf({ ...WEDGE, Lifts: 'Cork 11, Cork 6', 'Front slant': 0, 'Most rasping': 0 }),
      rampLast,
      findSample,
    );
    // Before the wedge's front, 5 mm behind the tread, stand ½ × 5 × 25 / 12 mm².
    expect(volumeOf(bottom)).toBeCloseTo(60 * (5130 - 5), -2);
  });

  it.each([
    [10, 'flat', 0],
    [20, 'flat', 12],
    [40, 'flat', 0],
    [40, 'flat', 12],
    [40, 'block', 12],
    [50, 'flat', -20],
  ])(
    'of lifts under a heel of %i, laid %s, front slanted %i°, is that of integration within 1 %%',
    (heel, laying, slant) => {
      const last = lastInSize(lastOf({ 'Heel height': heel }), 38, 'EU');
      const bottom = buildBottom(styleOf({ ...WEDGE, Laying: laying, 'Front slant': slant }), last, findSample);
      const longest = liftsOf(bottom).reduce((best, lift) => (lift.length > best.length ? lift : best));
      const outsole = bottom.layers.find(({ part }) => part === 'outsole');
      const under = integrated(longest.ring, bottom.face, bottom.liftHeight, slant, outsole?.ring ?? []);
      expect(volumeOf(bottom) / under).toBeGreaterThan(0.99);
      expect(volumeOf(bottom) / under).toBeLessThan(1.01);
    },
  );

  it.each([20, 40, 50])('of bent layers under a heel of %i is that of flat lifts within 2 %%', (heel) => {
    const last = lastInSize(lastOf({ 'Heel height': heel }), 38, 'EU');
    const of = (Laying: string) => volumeOf(buildBottom(styleOf({ ...WEDGE, Laying }), last, findSample));
    expect(of('bent') / of('flat')).toBeGreaterThan(0.98);
    expect(of('bent') / of('flat')).toBeLessThan(1.02);
  });

  const plain: Named = { ...BARE, Outsole: '', Sole: 'Bend 4' };
  // Outlines are rounded to a millionth of a mm, so volumes hold to some nine digits.
  const soleOf = (named: Named) => buildBottom(styleOf({ ...plain, ...named }), rampLast, findSample).layers[0];

  it('of a plain sole is area × thickness, of one with a skived edge that less a triangle all along it (derived)', () => {
    const [square, skived] = [soleOf({}), soleOf({ 'Sole skive': 20, 'Sole skive to': 2 })];
    if (!square || !skived) throw new Error('There is no sole.');
    const length = rampLast.length;
    expect(volume(square)).toBeCloseTo(60 * length * 4, 3);
    const width = 2 / Math.tan(Math.PI / 9);
    expect(volume(skived)).toBeCloseTo(60 * length * 4 - (2 * (60 + length) * width * 2) / 2, 3);
  });

  it('is less by what is rasped off the ground face', () => {
    const sole = soleOf({});
    if (!sole) throw new Error('There is no sole.');
    expect(volume(sole) - volume({ ...sole, rasped: 0.5 })).toBeCloseTo(0.5 * 60 * rampLast.length, 4);
  });

  it('takes off a front what is seen from the side times the width, straight or slanted (derived)', () => {
    const ring: readonly Point[] = [
      [0, 0],
      [100 + 10, 0],
      [100 - 10, 50],
      [0, 50],
    ];
    const sole = soleOf({});
    if (!sole) throw new Error('There is no sole.');
    const slant = (Math.atan(20 / 50) * 180) / Math.PI;
    const skive = { at: 'front', face: 'upper', width: 20, angle: 0, edge: 1 } as const;
    const skived = volume({ ...sole, ring, thickness: 5, skive, removed: 40, frontSlant: slant });
    expect(skived).toBeCloseTo(100 * 50 * 5 - 40 * 50, 6);
  });

  it('of a block that goes on under the tread is what stands under the last, to a fiftieth (cells of half a millimetre)', () => {
    const named = {
      ...BARE,
      Raise: 'wedge',
      Laying: 'block',
      Lifts: 'Cork 11',
      'Most rasping': 12,
      'Finished heel': 70,
    };
    const bottom = buildBottom(styleOf(named), lastInSize(lastOf(), 38, 'EU'), (code) =>
      code === 'Cork 11' ? { ...findSample(code), thickness: 72 } : findSample(code),
    );
    const [block] = liftsOf(bottom);
    const { ring } = block!;
    expect(block!.thickness - block!.rasped!).toBeCloseTo(66, 9);
    // Before the tread its underside rises with the last.
    const { face } = bottom;
    const z = face.z.map((at, i) => (face.s[i]! > face.tread ? bottom.through : at));
    const under = integrated(ring, { ...face, z }, 66, 0, ring);
    expect(Math.abs(volumeOf(bottom) / under - 1)).toBeLessThan(0.02);
  });
});
