import { describe, expect, it } from 'vitest';
import { area } from '../../../src/core/geometry/area';
import type { Part } from '../../../src/core/bottom/layer';
import { Rates } from '../../../src/core/plan/cost/rates';
import type { Act, Step } from '../../../src/core/steps/step';
import { stepsOf } from '../../../src/core/steps/steps';
import { built as inDemo, demoPlan } from '../../drawing/demo-plan';
import { LIMITS } from './samples';

/**
 * The constructions of the demo against the order in which makers' books and pages have them built, with their heights and
 * numbers worked by hand.
 */
const { plan } = demoPlan();

function stepsIn(style: string, size: number): readonly Step[] {
  const { run, sizeRun } = inDemo(plan, style, size);
  return stepsOf(sizeRun.bottom, run.style, {
    rates: new Rates(plan.input.rates),
    limits: LIMITS,
    mouldedFace: (code) => plan.input.stock.find((stock) => stock.code === code)?.mouldedFace === true,
  });
}

/** An act: joining is of what its joint adds, all else of the pieces that it is done to. */
type Point = Act | readonly [Act, Part];

function is(point: Point): (step: Step) => boolean {
  if (typeof point === 'string') return ({ acts }) => acts.includes(point);
  const [act, part] = point;
  return ({ acts, joint, pieces }) =>
    acts.includes(act) && (act === 'join' && joint ? joint.adds : pieces).some((piece) => piece.part === part);
}

/** The points that are not met in this order, each after the one before; none where all are. */
function missed(steps: readonly Step[], points: readonly Point[]): readonly Point[] {
  let at = -1;
  return points.filter((point) => {
    const next = steps.findIndex((step, i) => i > at && is(point)(step));
    if (next < 0) return true;
    at = next;
    return false;
  });
}

function the(steps: readonly Step[], point: Point, place = 0): Step {
  const found = steps.filter(is(point))[place];
  if (!found) throw new Error(`There is no step ${String(point)}.`);
  return found;
}

const height = ({ height: after }: Step) => [after?.back, after?.tread].map((mm) => mm && Number(mm.toFixed(2)));

describe('a cork wedge on a foam platform with a leather outsole, natural edge', () => {
  const steps = stepsIn('Betony', 38);

  it('is laminated, levelled, put on its platform, hollowed, rasped as one, joined to the upper, soled, trimmed', () => {
    expect(
      missed(steps, [
        'skive front',
        ['coat', 'lift'],
        ['join', 'lift'],
        'level',
        ['join', 'platform'],
        'cure',
        'rasp to last',
        'try on last',
        'rasp edge',
        ['join', 'lift'],
        'level',
        ['roughen', 'outsole'],
        ['join', 'outsole'],
        'cure',
        'trim edge',
        'check height',
        'seal',
        'sock',
      ]),
    ).toEqual([]);
  });

  it('rasps lift 1 of 5.9 to 5.6 mm: 7 × 5.9 + 4 is 45.3, the last’s heel 45 (derived)', () => {
    expect(height(the(steps, ['join', 'lift']))).toEqual([45.3, undefined]);
    const [level, later] = [the(steps, 'level'), the(steps, 'level', 1)];
    expect(level.left).toBeCloseTo(5.6, 9);
    expect(level.pieces.at(-1)?.item).toBe(1);
    expect(height(level)).toEqual([45, undefined]);
    // Its platform is trued on the last: of its thickness nothing is to come off.
    expect(later.pieces.at(-1)?.item).toBe(9);
    expect(later.left).toBeUndefined();
  });

  it('stands 55 and 10 with its platform of 10, 59.1 and 14.1 with its outsole of 4.1 (derived)', () => {
    expect(height(the(steps, ['join', 'platform']))).toEqual([55, 10]);
    expect(height(the(steps, 'check height'))).toEqual([59.1, 14.1]);
  });

  it('adds up to each height from the pieces under it, as thick as they then are (derived)', () => {
    for (const { height: after } of steps) {
      if (!after) continue;
      for (const place of ['back', 'breast', 'tread'] as const) {
        if (after[place] === undefined) continue;
        expect(after.parts[place].reduce((sum, { adds }) => sum + adds, 0)).toBeCloseTo(after[place], 9);
      }
    }
    const parts = the(steps, ['join', 'platform']).height?.parts.back.map(({ piece, adds }) => [
      piece.item,
      Number(adds.toFixed(9)),
    ]);
    expect(parts).toEqual([
      [9, 10],
      [1, 5.6],
      [2, 5.9],
      [3, 5.9],
      [4, 5.9],
      [5, 5.9],
      [6, 5.9],
      [7, 5.9],
      [8, 4],
    ]);
  });

  it('skives lift 1 while it is 5.9 thick: what is rasped later is left at its front, the angle is the same (derived)', () => {
    const own = inDemo(plan, 'Betony', 38).sizeRun.bottom.layers.find(({ item }) => item === 1)?.skive;
    const { skive } = the(steps, 'skive front', 7);
    expect(skive?.thickness).toBe(5.9);
    expect(skive?.edge).toBeCloseTo((own?.edge ?? 0) + 0.3, 9);
    expect(skive?.angle).toBeCloseTo(own?.angle ?? 0, 9);
    expect(Math.tan(((skive?.angle ?? 0) * Math.PI) / 180) * (skive?.width ?? 0)).toBeCloseTo(
      5.9 - (skive?.edge ?? 0),
      9,
    );
  });
});

describe('a slab of foam on a rubber outsole', () => {
  const steps = stepsIn('Teasel', 39);

  it('is joined flat, then to the upper, its edge trimmed flush with the rubber after the cure', () => {
    expect(
      missed(steps, [
        ['prime', 'sole'],
        ['degrease', 'outsole'],
        ['join', 'outsole'],
        ['join', 'sole'],
        'cure',
        'trim edge',
        'check height',
        'last out',
      ]),
    ).toEqual([]);
    expect(steps.some(is('rasp edge'))).toBe(false);
    expect(the(steps, ['join', 'outsole']).apart).toBe(true);
  });

  it('stands 17.5 + 4 all along: the foam has lost 0.5 to sanding (derived)', () => {
    expect(height(the(steps, 'check height'))).toEqual([21.5, 21.5]);
  });

  it('has no hollow to fill under a bare sandal', () => {
    expect(steps.some(is('fill cavity'))).toBe(false);
  });
});

describe('welted, a double sole, a stacked heel', () => {
  const steps = stepsIn('Yarrow', 41);

  it('is lasted, welted, filled, soled twice, stitched, its seat nailed, its lifts nailed on, its top piece last', () => {
    expect(
      missed(steps, [
        'block insole',
        'cut holdfast',
        'last upper',
        'sew welt',
        'trim seam',
        'pack seat',
        'fill cavity',
        ['join', 'midsole'],
        'mellow',
        'beat',
        ['dry', 'sole'],
        ['join', 'sole'],
        'trim round',
        'open channel',
        'stitch',
        'hammer seam',
        'close channel',
        'nail seat',
        'lay rand',
        'nail',
        'nail',
        'level',
        'try on ground',
        ['join', 'topPiece'],
        'trim edge',
        'ink',
        'last out',
      ]),
    ).toEqual([]);
  });

  it('stitches through midsole and sole to the welt', () => {
    expect(the(steps, 'stitch').pieces.map(({ part }) => part)).toEqual(['midsole', 'sole', 'welt']);
  });

  it('bevels midsole from above and sole from below, before the heel alone, so that their joint stays shut', () => {
    const [midsole, sole] = ['midsole', 'sole'].map((part) =>
      the(steps, ['skive edge', part as Part]).pieces.find((piece) => piece.part === part),
    );
    expect(midsole?.skive?.face).toBe('upper');
    expect(sole?.skive?.face).toBe('lower');
    expect(sole?.skive?.from).toBeCloseTo((1 / 4) * inDemo(plan, 'Yarrow', 41).sizeRun.bottom.last.length, 9);
  });

  it('grows 3 welt, 7.1, 11.2 sole, 17.2 with two lifts of 3.1 levelled to 6, 23.2 with rubber of 6 (derived)', () => {
    // The welt ends at the seat, which stands as high when it is packed.
    const grown: readonly Point[] = ['sew welt', 'pack seat', ['join', 'midsole'], ['join', 'sole']];
    expect(grown.map((point) => height(the(steps, point)))).toEqual([
      [undefined, 3],
      [3, 3],
      [7.1, 7.1],
      [11.2, 11.2],
    ]);
    expect(
      [the(steps, 'nail'), the(steps, 'nail', 1), the(steps, 'level'), the(steps, 'check height')].map(height),
    ).toEqual([
      [14.3, 11.2],
      [17.4, 11.2],
      [17.2, 11.2],
      [23.2, 11.2],
    ]);
    expect(the(steps, 'level').left).toBeCloseTo(3.1 - 0.2, 9);
  });

  it('pastes its lifts, which are nailed at once: no coats, no wait, no adhesive (Bespoke Shoes Unlaced, 2013)', () => {
    for (const step of steps.filter(is('nail'))) {
      expect(step.acts[0]).toBe('paste');
      expect(step).toMatchObject({ coats: [], adhesive: 0, wait: undefined, open: undefined });
    }
  });

  it('roughens the flesh of its welt with the lasted bottom, whose margin is trimmed where the welt leaves the seat open', () => {
    const ready = steps.find(({ faces }) => faces.some(({ piece }) => !piece));
    expect(ready?.faces.map(({ piece, side }) => [piece?.part, side])).toEqual([
      [undefined, 'lower'],
      ['welt', 'lower'],
    ]);
    expect(ready?.acts).toContain('trim margin');
    expect(
      steps.filter(is('roughen')).flatMap(({ faces }) => faces.filter(({ piece }) => piece?.part === 'welt')),
    ).toHaveLength(1);
  });

  it('coats the welt’s flesh with the lasted bottom: of the midsole what lies beyond the last’s edge (derived)', () => {
    const { joint } = the(steps, ['join', 'midsole']);
    const { bottom } = inDemo(plan, 'Yarrow', 41).sizeRun;
    const [midsole, welt] = (['midsole', 'welt'] as const).map((part) =>
      area(bottom.layers.find((layer) => layer.part === part)?.ring ?? []),
    ) as [number, number];
    const of = (part: Part | undefined) =>
      joint?.above.reduce((sum, { piece, area: size }) => (piece?.part === part ? sum + size : sum), 0) ?? NaN;
    expect(of('welt')).toBeCloseTo(Math.min(welt, midsole - area(bottom.last.outline)), 6);
    expect(of('welt') + of(undefined)).toBeCloseTo(midsole, 6);
  });

  it('is fixed by its own nails, so that the last comes out at the end', () => {
    expect(steps.filter(is('last out'))).toHaveLength(1);
    expect(steps.at(-1)?.acts).toEqual(['last out', 'sock']);
    expect(the(steps, 'nail').fixing).toMatchObject({ nails: 3 });
  });
});

describe('foam bent round the last, covered, on rubber', () => {
  const steps = stepsIn('Bracken', 38);

  it('is bent and joined from the last down, levelled, rasped, covered with its edge folded, turned under, soled', () => {
    expect(
      missed(steps, [
        'trim margin',
        'warm',
        ['join', 'lift'],
        'warm',
        ['join', 'lift'],
        ['join', 'lift'],
        ['join', 'lift'],
        'level',
        'cure',
        'rasp edge',
        'fold edge',
        ['coat', 'cover'],
        ['join', 'cover'],
        'turn under',
        'fill margins',
        ['join', 'outsole'],
        'trim edge',
      ]),
    ).toEqual([]);
    expect(steps.some(is('turn over'))).toBe(false);
  });

  it('tapers each layer from below, before it is bent', () => {
    for (const step of steps.filter(is('skive front'))) expect(step.faces[0]?.side).toBe('lower');
    expect(missed(steps, ['skive front', 'warm'])).toEqual([]);
  });

  it('rasps the outer layer by what four of 6 are more than 24 cos(24 / 4.5) (derived): 5.90 is left, so that 24.0 comes out', () => {
    const wanted = 24 * Math.cos((24 / 4.5) * (Math.PI / 180));
    // Four of 6 stand 24 / cos(24 / 4.5) upright until then.
    expect(height(the(steps, ['join', 'lift'], 3))[0]).toBeCloseTo(24 / Math.cos((24 / 4.5) * (Math.PI / 180)), 1);
    const level = the(steps, 'level');
    expect(level.left).toBeCloseTo(wanted - 18, 1);
    expect(height(level)[0]).toBeCloseTo(24, 1);
    expect(height(the(steps, 'check height'))).toEqual([28, 4]);
  });

  it('coats the flesh of its cover all over and roughens its grain under the outsole alone', () => {
    const cover = the(steps, ['coat', 'cover']);
    const strip = inDemo(plan, 'Bracken', 38).sizeRun.bottom.layers.find(({ part }) => part === 'cover')?.cover;
    expect(cover.coated?.find(({ side }) => side === 'flesh')?.area).toBe(strip?.area);
    const grain = steps.flatMap(({ kind, faces }) =>
      kind === 'prepare' ? faces.filter(({ side, piece }) => side === 'grain' && piece?.part === 'cover') : [],
    );
    expect(new Set(grain.map(({ zone }) => zone))).toEqual(new Set(['under']));
  });
});

describe('a cork block on a platform, all covered, on rubber', () => {
  const steps = stepsIn('Fennel', 38);

  it('is laminated, cured, sawn, put on its platform, levelled, hollowed, rasped, covered, joined, soled', () => {
    expect(
      missed(steps, [
        ['join', 'lift'],
        'press',
        'cure',
        'saw',
        ['join', 'platform'],
        'level',
        'cure',
        'rasp to last',
        'try on last',
        'rasp edge',
        ['join', 'cover'],
        'turn over',
        'fill margins',
        ['join', 'lift'],
        ['join', 'outsole'],
        'trim edge',
      ]),
    ).toEqual([]);
    expect(steps.some(is('skive front'))).toBe(false);
  });

  it('saws lift 1 to 5.6 and rasps the lowest of the platforms, 10 + 10 + 6 + 6, to 9: 45 + 31 + 4 are the 80 asked for (derived)', () => {
    expect(the(steps, 'saw').left).toBeCloseTo(5.6, 9);
    expect(the(steps, 'saw').height?.back).toBeCloseTo(45, 9);
    expect(the(steps, 'level').left).toBeUndefined();
    expect(the(steps, 'level', 1).left).toBeCloseTo(9, 9);
    expect(the(steps, 'level', 1).pieces.at(-1)?.item).toBe(12);
    expect(height(the(steps, 'level', 1))).toEqual([76, 31]);
    expect(height(the(steps, 'check height'))).toEqual([80, 35]);
  });

  it('roughens the grain of both margins, for both lie in a joint', () => {
    const zones = steps.flatMap(({ acts, faces }) =>
      acts.includes('roughen') ? faces.flatMap(({ side, zone }) => (side === 'grain' ? [zone] : [])) : [],
    );
    expect(zones).toEqual(['over', 'under']);
  });
});

describe('a stacked heel, its sole down the breast', () => {
  const steps = stepsIn('Tansy', 38);

  it('is stiffened, its lifts nailed to the seat, its breast cut, the sole and its tab joined, its top piece last', () => {
    expect(
      missed(steps, [
        'block insole',
        'last upper',
        'fit shank',
        'fill cavity',
        'lay rand',
        'nail',
        'level',
        'cut breast',
        'damp',
        ['coat', 'sole'],
        ['join', 'sole'],
        'turn tab',
        'try on ground',
        ['join', 'topPiece'],
        'last out',
      ]),
    ).toEqual([]);
    // No sole lies between seat and heel.
    expect(steps.some(is('nail seat'))).toBe(false);
    expect(missed(steps, ['skive flap', 'damp'])).toEqual([]);
  });

  it('nails 19 lifts with three nails each and a row through every second and the last, 58.9 levelled to 58.1 (derived)', () => {
    const nailed = steps.filter(is('nail'));
    expect(nailed).toHaveLength(19);
    expect(nailed.map(({ pieces }) => pieces[0]?.item)).toEqual(Array.from({ length: 19 }, (_, i) => 19 - i));
    expect(nailed.every(({ fixing }) => fixing?.nails === 3)).toBe(true);
    expect(nailed.map(({ fixing }) => fixing?.rowIn !== undefined)).toEqual(
      nailed.map((_, i) => i % 2 === 1 || i === 18),
    );
    expect(height(nailed.at(-1) as Step)).toEqual([58.9, undefined]);
    expect(the(steps, 'level').left).toBeCloseTo(3.1 - 0.8, 9);
    expect(height(the(steps, 'check height'))).toEqual([64.1, 4.1]);
  });

  it('lets the flap lie on every lift’s breast', () => {
    const { joint } = the(steps, ['join', 'sole']);
    expect(joint?.above.filter(({ side }) => side === 'breast')).toHaveLength(19);
  });
});

describe('a stacked wedge under a full sole, on rubber', () => {
  const steps = stepsIn('Mallow', 39);

  it('has its sole on first, the wedge hollowed to it, its grain roughened where wedge and outsole lie', () => {
    expect(
      missed(steps, [
        'skive edge',
        'skive front',
        'last upper',
        ['join', 'lift'],
        ['join', 'sole'],
        'rasp to last',
        'try on last',
        ['join', 'lift'],
        'level',
        ['join', 'outsole'],
        'trim edge',
      ]),
    ).toEqual([]);
    const grain = steps
      .flatMap(({ acts, faces }) => (acts.includes('roughen') ? faces : []))
      .filter(({ piece, side }) => piece?.part === 'sole' && side === 'lower');
    expect(grain.map(({ zone }) => zone)).toEqual(['seat', 'forepart']);
  });

  it('is 8 × 3.1 = 24.8 laminated, 24 levelled: lift 1 is left 2.3; 28.1 on the sole, 32.1 on rubber (derived)', () => {
    expect(height(the(steps, ['join', 'lift']))).toEqual([24.8, undefined]);
    const level = the(steps, 'level');
    expect(level.left).toBeCloseTo(2.3, 9);
    expect(height(level)).toEqual([28.1, 4.1]);
    expect(height(the(steps, 'check height'))).toEqual([32.1, 8.1]);
  });

  it('bevels its one sole from the flesh, which lies to the shoe', () => {
    expect(the(steps, 'skive edge').pieces[0]?.skive?.face).toBe('upper');
  });
});

describe('foam with a moulded face', () => {
  const steps = stepsIn('Clover', 37);

  it('is roughened, primed and coated on its upper face alone, joined, cured, trimmed', () => {
    expect(
      missed(steps, [
        ['prime', 'sole'],
        ['coat', 'sole'],
        ['join', 'sole'],
        'press',
        'cure',
        'trim edge',
        'check height',
      ]),
    ).toEqual([]);
    for (const { faces } of steps) expect(faces.every(({ piece, side }) => !piece || side !== 'lower')).toBe(true);
    expect(height(the(steps, 'check height'))).toEqual([12, 12]);
  });
});

describe('a high covered heel on a sole that goes to the back', () => {
  const steps = stepsIn('Comfrey', 38);

  it('is built and covered apart, joined, fixed from inside with the last out, then given its top piece', () => {
    expect(
      missed(steps, [
        'block insole',
        'last upper',
        ['join', 'lift'],
        'cure',
        'saw',
        'fit shank',
        ['join', 'sole'],
        'nail seat',
        'rasp to last',
        'try on last',
        'rasp edge',
        ['join', 'cover'],
        'turn over',
        ['join', 'lift'],
        'last out',
        'nail from inside',
        'filler last in',
        'level',
        'try on ground',
        ['join', 'topPiece'],
        'trim edge',
        'filler last out',
      ]),
    ).toEqual([]);
  });

  it('lets the joint of its core cure before it is sawn, rasped to its height before it is covered, level once more when it is fixed', () => {
    expect(
      missed(steps, ['glue core', 'cure core', 'saw', 'level', ['join', 'cover'], 'nail from inside', 'level']),
    ).toEqual([]);
    expect(the(steps, 'cure core').wait?.value).toBe(45);
    // What is asked for is the piece that a height comes off; here nothing is built too high.
    expect(steps.filter(is('level')).map(({ left }) => left)).toEqual([undefined, undefined]);
  });

  it('takes five nails and a screw above 50 mm ("Heels", My Life with Boots, 2012; screw from memory)', () => {
    expect(the(steps, 'nail from inside').fixing).toEqual({ nails: 5, screws: 1 });
  });

  it('is 79 laminated and levelled, 83.1 on the sole, 89.1 with its top piece (derived)', () => {
    expect(height(the(steps, ['join', 'lift']))).toEqual([79, undefined]);
    expect(height(the(steps, 'level'))).toEqual([79, undefined]);
    expect(height(the(steps, ['join', 'lift'], 1))).toEqual([83.1, 4.1]);
    expect(height(the(steps, 'check height'))).toEqual([89.1, 4.1]);
  });

  it('roughens the sole’s grain under the heel alone', () => {
    const grain = steps
      .flatMap(({ acts, faces }) => (acts.includes('roughen') ? faces : []))
      .filter(({ piece, side }) => piece?.part === 'sole' && side === 'lower');
    expect(grain.map(({ zone }) => zone)).toEqual(['seat']);
  });

  it('asks for care with a high build where it is fixed, tried and checked', () => {
    for (const act of ['nail from inside', 'try on ground', 'check stand'] as const) {
      expect(the(steps, act).cares).toContain('high build');
    }
  });
});
