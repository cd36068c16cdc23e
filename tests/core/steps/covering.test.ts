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

describe('a covered heel under a covered platform', () => {
  const shoe = built({ ...HEEL, Sole: '', Platform: 'Foam 10', Outsole: 'Rubber 4' }, 60);
  const steps = stepsFor(shoe);
  const [ofPlatform, ofHeel] = shoe.bottom.layers.filter(({ part }) => part === 'cover') as [Layer, Layer];
  const at = (is: (step: (typeof steps)[number]) => boolean) => steps.findIndex(is);
  const covered = (cover: Layer, act: 'join' | 'turn under') =>
    at(({ kind, acts, pieces }) => kind === 'cover' && acts.includes(act) && pieces.includes(cover));
  const added = (part: Layer['part']) =>
    at(
      ({ kind, joint }) => kind === 'join' && joint?.apart === false && joint.adds.some((piece) => piece.part === part),
    );

  it('has the platform on the last, its edge rasped and covered, turned under, then outsole and heel put on (P9, P10)', () => {
    const order = [
      added('platform'),
      at(({ acts, pieces }) => acts.includes('rasp edge') && pieces.some(({ part }) => part === 'platform')),
      at(({ acts, pieces }) => acts.includes('fold edge') && pieces.includes(ofPlatform)),
      covered(ofPlatform, 'join'),
      covered(ofPlatform, 'turn under'),
    ];
    const after = [added('outsole'), added('lift')];
    expect([...order, ...after].every((place) => place >= 0)).toBe(true);
    expect(order).toEqual(order.toSorted((a, b) => a - b));
    expect(Math.min(...after)).toBeGreaterThan(covered(ofPlatform, 'turn under'));
    // The heel is covered off the last, with what is turned over in its joint with the platform.
    expect(covered(ofHeel, 'turn under')).toBeLessThan(added('lift'));
    expect(steps.filter(({ acts }) => acts.includes('fold edge'))).toHaveLength(1);
    expect(steps.filter(({ acts }) => acts.includes('turn over'))).toHaveLength(1);
  });

  it('shares what is turned under the platform between heel and outsole, and leaves them the rest of its face (derived)', () => {
    const faces = [...new Set(steps.flatMap(({ joint }) => joint ?? []))].flatMap(({ above, below }) => [
      ...above,
      ...below,
    ]);
    const sum = (is: (face: Face) => boolean) => faces.filter(is).reduce((all, { area }) => all + area, 0);
    const platform = shoe.bottom.layers.find(({ part }) => part === 'platform') as Layer;
    const under = (ofPlatform.cover?.under ?? 0) * shoe.style.turnUnder;
    const turned = ({ piece, side, zone }: Face) => piece === ofPlatform && side === 'grain' && zone === 'under';
    const lain = sum(({ piece, side, zone }) => piece === platform && side === 'lower' && zone === 'under');
    expect(lain).toBeCloseTo(under, 6);
    // Heel and outsole together are as large as the platform but for what is rasped off them.
    expect(sum(turned) / under).toBeGreaterThan(0.9);
    expect(sum(turned)).toBeLessThanOrEqual(under + 1e-6);
    for (const [zone, meets] of [
      ['seat', Math.max(...shoe.bottom.layers.filter(({ part }) => part === 'lift').map(({ ring }) => area(ring)))],
      ['forepart', area((shoe.bottom.layers.find(({ part }) => part === 'outsole') as Layer).ring)],
    ] as const) {
      const grain = sum((face) => turned(face) && face.beneath === zone);
      const rest = sum(({ piece, side, zone: own }) => piece === platform && side === 'lower' && own === zone);
      expect(grain).toBeGreaterThan(100);
      expect(grain + rest).toBeCloseTo(meets, 6);
    }
  });

  it('leaves no edge to be sanded and sealed but those of outsole and top piece; of a bare platform its own', () => {
    const finished = (named: Named) =>
      stepsFor(built({ ...HEEL, Sole: '', Platform: 'Cork 6', Outsole: 'Rubber 4', ...named }, 60)).flatMap((step) =>
        step.kind === 'finish' && step.faces.length > 0 ? step.pieces.map(({ part }) => part) : [],
      );
    expect(new Set(finished({}))).toEqual(new Set(['outsole', 'topPiece']));
    expect(finished({ Covered: 'heel' })).toContain('platform');
    expect(finished({ Covered: 'platform' })).not.toContain('platform');
    expect(finished({ Covered: 'platform' })).toContain('lift');
  });

  it('is not stitched through where the shoe is welted: the thread would go through the cover', () => {
    const welted: Named = { ...HEEL, Welt: 'Bend 4', Sole: 'Bend 4', Platform: 'Bend 4', Outsole: 'Rubber 4' };
    const stitched = (named: Named) =>
      stepsFor(built({ ...welted, ...named }, 25)).flatMap(({ acts, pieces }) =>
        acts.includes('stitch') ? pieces.map(({ part }) => part) : [],
      );
    expect(stitched({ Covered: 'heel' })).toContain('platform');
    expect(stitched({})).toEqual(['sole', 'welt']);
  });
});
