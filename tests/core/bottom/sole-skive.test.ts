import { describe, expect, it } from 'vitest';
import { built } from '../steps/samples';
import type { Named } from '../samples';

const faces = (named: Named, heel = 0) =>
  built({ 'Sole skive': 15, 'Sole skive to': 2, ...named }, heel)
    .bottom.layers.filter(({ skive }) => skive?.at === 'edge')
    .map(({ part, skive }) => `${part} ${skive?.face}${skive?.from === undefined ? '' : ' before the heel'}`);

describe('the skive of a sole’s edge', () => {
  it('is taken off the flesh of a sole alone, which lies to the shoe', () => {
    expect(faces({ Sole: 'Bend 4' })).toEqual(['sole upper']);
    expect(faces({ Sole: 'Bend 4', Outsole: 'Rubber 4' })).toEqual(['sole upper']);
  });

  it('opens no joint between two: the upper one from above, the lower one from below (derived)', () => {
    expect(faces({ Midsole: 'Bend 4', Sole: 'Bend 4' })).toEqual(['midsole upper', 'sole lower']);
    expect(faces({ Sole: 'Bend 4', Outsole: 'Bend 4' })).toEqual(['sole upper', 'outsole lower']);
    expect(faces({ Midsole: 'Foam 10', Sole: 'Bend 4' })).toEqual(['sole lower']);
  });

  it('is left off a piece between two others, which either side would open', () => {
    expect(faces({ Midsole: 'Bend 4', Sole: 'Bend 4', Outsole: 'Bend 4' })).toEqual(['midsole upper', 'outsole lower']);
  });

  it('from below ends before what raises the heel', () => {
    const HEEL = { Midsole: 'Bend 4', Sole: 'Bend 4', Raise: 'heel', Lifts: 'Lift 3', 'Top piece': 'Rubber 6' };
    expect(faces(HEEL, 25)).toEqual(['midsole upper', 'sole lower before the heel']);
    const WEDGE = { Midsole: 'Bend 4', Sole: 'Bend 4', Raise: 'wedge', Lifts: 'Cork 6, Cork 4' };
    expect(faces(WEDGE, 25)).toEqual(['midsole upper', 'sole lower before the heel']);
  });
});
