import { describe, expect, it } from 'vitest';
import { breastLine } from '../../../src/core/bottom/raise';
import { atLength } from '../../../src/core/last/profile';
import type { Act } from '../../../src/core/steps/step';
import type { Named } from '../samples';
import { type Built, built, stepsFor } from './samples';

/** A heel of 40 from seven sheets of 6, of which 2 come off (derived), as a block. */
const block = (named: Named = {}): Built =>
  built({ Raise: 'wedge', Laying: 'block', Lifts: 'Cork 6', 'Most rasping': 2, ...named });
const ground = (one: Built) =>
  stepsFor(one).filter(({ left, acts }) => left !== undefined || acts.includes('level') || acts.includes('saw'));

describe('a block', () => {
  it('comes to its height by the saw, which takes off what it is built too high: 42 to 40, the lowest sheet 6 to 4', () => {
    const [saw, ...later] = ground(block());
    expect(saw?.acts).toEqual(['saw']);
    expect(saw?.left).toBeCloseTo(4, 9);
    expect(saw?.height?.back).toBeCloseTo(40, 9);
    expect(later.every(({ left }) => left === undefined)).toBe(true);
  });

  it('is as high at a heel’s breast as the last stands there once it is sawn; a wedge’s has no breast', () => {
    expect(stepsFor(block()).filter(({ height }) => height?.breast !== undefined)).toEqual([]);
    const one = block({ Raise: 'heel' });
    const [saw] = ground(one);
    const { face, last } = one.bottom;
    expect(saw?.height?.breast).toBeCloseTo(atLength(face, breastLine(last)).z, 9);
  });

  it('is sawn before its ground face is levelled, also where a platform or a cover waits for that', () => {
    for (const more of [{ Platform: 'Foam 10' }, { Cover: 'Calf 1' }, { Platform: 'Foam 10', Cover: 'Calf 1' }]) {
      expect(ground(block(more)).map(({ acts }) => acts[0])[0]).toBe('saw');
      expect(ground(block(more)).length).toBeGreaterThan(1);
    }
  });

  it('of a moulded sheet loses what is too much to the saw as well, its ground face untouched', () => {
    const one = block({ Lifts: 'Foam 12 M', 'Most rasping': 8 });
    expect(ground(one).map(({ acts }) => acts[0])).toEqual(['saw']);
    expect(ground(one)[0]?.left).toBeCloseTo(4, 9);
  });

  it('leaves lifts that are laid one by one to the rasp', () => {
    expect(ground(block({ Laying: 'flat' })).map(({ acts, left }) => [acts[0], left])).toEqual([['level', 4]]);
  });
});

describe('a block that goes on under the tread', () => {
  const unit = (named: Named = {}) => block({ 'Most rasping': 4, 'Finished heel': 62, Outsole: 'Rubber 4', ...named });

  it('is sawn to 58 at the back and 18 under the tread, and stands 62 and 22 on its outsole: 62 − 40 − 4 (derived)', () => {
    const steps = stepsFor(unit());
    const at = (act: Act) => steps.find(({ acts }) => acts.includes(act))?.height;
    expect([at('saw')?.back, at('saw')?.tread].map((mm) => Number(mm?.toFixed(6)))).toEqual([58, 18]);
    expect([at('check height')?.back, at('check height')?.tread].map((mm) => Number(mm?.toFixed(6)))).toEqual([62, 22]);
    const { seatStack, treadStack, last } = unit().bottom;
    expect(seatStack - treadStack).toBeCloseTo(last.heelHeight, 9);
  });

  it('meets the whole of the lasted bottom at once, and its outsole nothing else', () => {
    const joints = stepsFor(unit()).flatMap(({ kind, joint }) =>
      kind === 'join' && joint && !joint.apart ? [joint] : [],
    );
    expect(joints).toHaveLength(2);
    const [up, outsole] = joints;
    expect(up?.above.map(({ piece, zone }) => [piece?.part, zone])).toEqual([[undefined, undefined]]);
    expect(outsole?.above.map(({ piece, side }) => [piece?.part, side])).toEqual([['lift', 'lower']]);
  });

  it('is neither bent up to the toe nor ground to it: the saw makes it so', () => {
    const steps = stepsFor(unit({ 'Finished heel': 74 }));
    expect(steps.some(({ acts }) => acts.includes('grind toe') || acts.includes('bend'))).toBe(false);
  });

  it('has a cover all round, as high before the tread as the block is thick there', () => {
    const { bottom } = unit({ Cover: 'Calf 1' });
    const cover = bottom.layers.find(({ part }) => part === 'cover')?.cover;
    const heights = cover?.unturned.map(([, y]) => y) ?? [];
    expect(cover?.closes).toBe(true);
    expect(Math.max(...heights)).toBeCloseTo(58, 1);
    expect(Math.min(...heights.filter((y) => y > 0))).toBeCloseTo(18, 1);
  });
});
