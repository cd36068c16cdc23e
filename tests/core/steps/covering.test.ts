import { describe, expect, it } from 'vitest';
import type { Layer } from '../../../src/core/bottom/layer';
import { area } from '../../../src/core/geometry/area';
import type { Face } from '../../../src/core/steps/step';
import type { Named } from '../samples';
import { built, stepsFor } from './samples';

const HEEL: Named = {
  Raise: 'heel',
  Lifts: 'Cork 6, Cork 4',
  Laying: 'block',
  Sole: 'Bend 4',
  'Top piece': 'Rubber 6',
  'Heel taper': 5,
  'Heel core': 'wood',
  Cover: 'Calf 1',
};
const actsOf = (named: Named) => stepsFor(built({ ...HEEL, ...named })).flatMap(({ acts }) => acts);

describe('covering a heel', () => {
  it('closes the seam in the breast where the sole goes to the back (maker’s page, 2013)', () => {
    const acts = actsOf({});
    expect(acts).toContain('close seam');
    expect(acts).not.toContain('turn in');
  });

  it('turns the ends in on to the breast where a flap of the sole hides them, and has no seam', () => {
    const acts = actsOf({ 'Sole ends': 'down the breast' });
    expect(acts).toContain('turn in');
    expect(acts).not.toContain('close seam');
  });
});

describe('ends of a cover that are turned in on to a breast', () => {
  const shoe = built({ ...HEEL, 'Sole ends': 'down the breast' }, 85);
  const steps = stepsFor(shoe);
  const at = (is: (step: (typeof steps)[number]) => boolean) => steps.findIndex(is);
  const isIn = ({ zone }: Face) => zone === 'in';

  it('lie on a breast that was cut before them, off the last; their grain is roughened before the flap is coated', () => {
    const cut = at(({ acts }) => acts.includes('cut breast'));
    const turned = at(({ acts }) => acts.includes('turn in'));
    const on = at(({ acts, joint }) => acts.includes('join') && joint?.apart === false && joint.brings.length > 1);
    const ready = at(
      ({ acts, faces }) => acts.includes('roughen') && faces.some((one) => isIn(one) && one.side === 'grain'),
    );
    const flap = at(({ coated = [] }) => coated.some(({ zone }) => zone === 'flap'));
    expect([cut, turned, on, ready, flap].every((place) => place >= 0)).toBe(true);
    expect([cut, turned, on, ready, flap]).toEqual([cut, turned, on, ready, flap].toSorted((a, b) => a - b));
    expect(steps[cut]?.apart).toBe(true);
  });

  it('cover of the breast twice their width, and leave the rest to the flap (derived)', () => {
    const { bottom, style } = shoe;
    const flap = bottom.layers.find((layer) => layer.flap)?.flap;
    if (!flap) throw new Error('There is no flap.');
    const sum = (faces: readonly Face[]) => faces.reduce((all, { area }) => all + area, 0);
    const coated = steps.flatMap(({ coated: faces = [] }) => faces);
    const lain = coated.filter((one) => isIn(one) && one.side === 'breast');
    const left = coated.filter(({ side, within }) => side === 'breast' && within);
    expect(sum(lain)).toBeCloseTo(2 * style.turnUnder * (flap.length - style.breastAllowance), 6);
    expect(sum(coated.filter((one) => isIn(one) && one.side === 'grain'))).toBeCloseTo(sum(lain), 6);
    expect(sum(lain) + sum(left)).toBeCloseTo(flap.width * flap.length + flap.tabWidth * flap.tabLength, 6);
  });
});

const WEDGE: Named = {
  Raise: 'wedge',
  Lifts: 'Cork 6, Cork 4',
  Laying: 'block',
  Platform: 'Foam 10',
  Outsole: 'Rubber 4',
  Cover: 'Calf 1',
};

describe('the faces that a cover’s margins are turned on to', () => {
  /** Places in the list where a face of a zone, or what margins leave, is made ready, coated or filled. */
  const places = (steps: ReturnType<typeof stepsFor>, is: (step: (typeof steps)[number]) => boolean) =>
    steps.flatMap((step, i) => (is(step) ? [i] : []));

  for (const [what, named, heel] of [
    ['a wedge on its platform', WEDGE, 40],
    ['a heel', HEEL, 85],
  ] as const) {
    it(`of ${what} are made ready and coated before they are covered, the rest after it, then filled (common practice)`, () => {
      const steps = stepsFor(built(named, heel));
      const turned = steps.findIndex(({ acts }) => acts.includes('turn under'));
      for (const zone of ['over', 'under'] as const) {
        const bare = (face: Face) => face.zone === zone && face.side === (zone === 'over' ? 'upper' : 'lower');
        const [ready] = places(steps, ({ kind, faces }) => kind === 'prepare' && faces.some(bare));
        const [coated] = places(steps, (step) => (step.coated ?? []).some(bare));
        expect(ready).toBeLessThan(coated as number);
        expect(coated).toBeLessThan(turned);
      }
      const within = ({ within: left }: Face) => left === true;
      const filled = places(steps, ({ acts }) => acts.includes('fill margins'));
      const readied = places(
        steps,
        ({ kind, acts, faces }) => kind === 'prepare' && !acts.includes('fill margins') && faces.some(within),
      );
      expect(filled).toHaveLength(2);
      expect(Math.min(...readied)).toBeGreaterThan(turned);
      for (const at of filled) {
        const own = steps[at]?.joint;
        expect(readied.some((i) => i < at && steps[i]?.joint === own)).toBe(true);
        // A filled face is not roughened once more.
        expect(readied.some((i) => i > at && steps[i]?.joint === own)).toBe(false);
      }
    });
  }

  it('are as large as the margins, which the rest of each face is smaller by (derived)', () => {
    const shoe = built(WEDGE);
    const joints = [...new Set(stepsFor(shoe).flatMap(({ joint }) => joint ?? []))];
    const sum = (faces: readonly Face[]) => faces.reduce((all, { area }) => all + area, 0);
    const faces = joints.flatMap(({ above, below }) => [...above, ...below]);
    for (const [zone, side] of [
      ['over', 'upper'],
      ['under', 'lower'],
    ] as const) {
      const margin = faces.filter((face) => face.zone === zone && face.side === side);
      const grain = faces.filter((face) => face.zone === zone && face.side === 'grain');
      expect(sum(margin)).toBeGreaterThan(100);
      expect(sum(margin)).toBeCloseTo(sum(grain), 6);
    }
    // The margin and what it leaves of the ground face are all that the outsole is glued to.
    const [platform, outsole] = ['platform', 'outsole'].map(
      (part) => shoe.bottom.layers.find((layer) => layer.part === part) as Layer,
    ) as [Layer, Layer];
    const ground = faces.filter(({ piece, side }) => piece === platform && side === 'lower');
    expect(sum(ground)).toBeCloseTo(area(outsole.ring), 6);
  });
});
