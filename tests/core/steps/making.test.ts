import { describe, expect, it } from 'vitest';
import { makingOf, stayOnLast } from '../../../src/core/steps/making';
import { timesOfSteps } from '../../../src/core/steps/steps';
import type { Named } from '../samples';
import { bench, type Built, built } from './samples';

/** In no order: what waits for what is found by the rules of the bench. */
const stepsFor = ({ bottom, style }: Built, ...rates: readonly Named[]) => timesOfSteps(bottom, style, bench(...rates));

const BLOCK: Named = {
  Raise: 'heel',
  Lifts: 'Cork 6, Cork 4',
  Laying: 'block',
  Sole: 'Bend 4',
  'Top piece': 'Rubber 6',
  'Heel core': 'leather',
  Adhesive: 'polyurethane',
};
const MINUTES: readonly Named[] = [
  { Item: 'Flash-off', Value: 20, Unit: 'minutes waited' },
  { Item: 'Cure', Value: 600, Unit: 'minutes waited' },
  { Item: 'Drying', Value: 720, Unit: 'minutes waited' },
];

describe('the time that a pair is in the making', () => {
  it('has the nights of heel and of sole beside each other: 2 nights, 120 minutes (worked by hand)', () => {
    // The sole: dries (night), two coats 40, then the heel's 40, the top piece's 40, the last cure (night).
    // The heel: two coats 40, its cure and its core's (2 nights), the heel's 40, the top piece's 40, the last cure (night).
    const cored = makingOf(stepsFor(built(BLOCK), ...MINUTES));
    expect(cored).toEqual({ nights: 3, waits: 120 });
    // Without a core the heel has one night of its own, beside the sole's.
    expect(makingOf(stepsFor(built({ ...BLOCK, 'Heel core': 'none' }), ...MINUTES))).toEqual({ nights: 2, waits: 120 });
  });

  it('has the sole mellow while the insole dries, and dry when it is lasted over: 2 nights, a third for the seam (worked by hand)', () => {
    const welted = built({ Insole: 'Bend 4', Welt: 'Bend 4', Sole: 'Bend 4' }, 20);
    // Insole (night), lasted and welted, sole bent (night), two coats 40, stitched, its seam dries (night), cure 45.
    expect(makingOf(stepsFor(welted))).toEqual({ nights: 3, waits: 2 * 10 + 45 });
    // A sole that mellows for two days of 11 hours is in no other's way either: its own chain is as long.
    const slow = { Item: 'Mellowing', Value: 660, Unit: 'minutes waited' };
    expect(makingOf(stepsFor(welted, slow)).nights).toBe(3);
  });

  it('adds up what does wait for one another: foam layers bent one on the other by day', () => {
    const bent = built({ Raise: 'wedge', Lifts: 'Foam 10', Laying: 'bent', 'Most rasping': 8 }, 18);
    const layers = bent.bottom.layers.length;
    // The first cools for 10 while others do; lasted bottom's two coats 20, then one coat of 10 for the second layer, and the cure of 45.
    const { nights, waits } = makingOf(stepsFor(bent));
    expect(layers).toBe(2);
    expect(nights).toBe(0);
    expect(waits).toBe(10 + 20 + 10 * (layers - 1) + 45);
  });
});

describe('the time that a pair stays on its last', () => {
  it('is from the sole’s bending until the heel is fixed from inside: a night, 80 minutes, 40 of work (worked by hand)', () => {
    const joints = { Value: 10, Unit: 'minutes a joint' };
    const stay = stayOnLast(stepsFor(built({ ...BLOCK, 'Heel core': 'none' }), ...MINUTES, joints));
    // The heel is glued and cures before; sole and heel have two coats each, and a joint each on both feet.
    expect(stay).toEqual({ nights: 1, waits: 80, minutes: 2 * 2 * 10 });
  });

  it('of a shoe that is fixed by adhesive is until its edges are finished', () => {
    const flat = stayOnLast(stepsFor(built({ Sole: 'Bend 4' }, 0)));
    expect(flat).toEqual({ nights: 0, waits: 20 + 45, minutes: 0 });
  });
});
