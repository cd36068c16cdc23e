import type { Layer } from '../../../src/core/bottom/layer';
import type { Act, Face, Step } from '../../../src/core/steps/step';

/**
 * What must come before what at the bench, each rule against any list of steps: an order passes if, wherever it holds both
 * steps of a rule, the first comes earlier. The rules are of the trade, gathered from its books and its makers' own pages
 * (beside each its source); nothing here looks at how the steps were put in order.
 */
export interface Precedence {
  readonly says: string;
  readonly source: string;
  /** What is out of order; nothing where the order is sound. */
  check(list: Listed): readonly string[];
}

/** Steps with what of the shoe the rules need to know. */
export interface Listed {
  readonly steps: readonly Step[];
  /** Whether a piece is walked on with a face that was moulded for it. */
  readonly moulded: (piece: Layer) => boolean;
}

const does = (step: Step, ...acts: readonly Act[]) => step.acts.some((act) => acts.includes(act));
const name = (step: Step) => `${step.acts.join(' and ')} (${step.pieces.map(({ item }) => item).join(', ')})`;
const isMargin = ({ zone }: Face) => zone === 'over' || zone === 'under' || zone === 'in';
const touch = (one: Face, other: Face) =>
  one.piece === other.piece &&
  one.side === other.side &&
  (one.zone === undefined || other.zone === undefined || one.zone === other.zone) &&
  !(one.within && isMargin(other)) &&
  !(other.within && isMargin(one));
const meet = <T>(one: readonly T[], other: readonly T[]) => one.some((each) => other.includes(each));
const facesOf = (step: Step) => (step.joint ? [...step.joint.above, ...step.joint.below] : []);
const piecesOf = (faces: readonly Face[]) => faces.flatMap(({ piece }) => piece ?? []);
const joined = (step: Step) => step.joint !== undefined && does(step, 'join');
const isLift = ({ part }: Layer) => part === 'lift';

/** Every pair of steps of which the first should come earlier and comes later. */
function wrong(
  { steps }: Listed,
  first: (step: Step) => boolean,
  then: (step: Step, first: Step) => boolean,
): readonly string[] {
  return steps.flatMap((one, i) =>
    first(one)
      ? steps
          .slice(0, i)
          .flatMap((other) => (other !== one && then(other, one) ? [`${name(one)} after ${name(other)}`] : []))
      : [],
  );
}

/** Acts that follow one another through the whole list, each step's own acts in its order too. */
function inTurn({ steps }: Listed, acts: readonly Act[], of: (step: Step) => boolean = () => true): readonly string[] {
  const done = steps.filter(of).flatMap((step) => step.acts.filter((act) => acts.includes(act)));
  return done.flatMap((act, i) => {
    const later = done.slice(0, i).find((before) => acts.indexOf(before) > acts.indexOf(act));
    return later ? [`${act} after ${later}`] : [];
  });
}

export const PRECEDENCE: Readonly<Record<string, Precedence>> = {
  P1: {
    says: 'a face is skived before it is coated: the knife takes the coat off',
    source: 'common practice',
    check: (list) =>
      wrong(
        list,
        ({ kind }) => kind === 'skive',
        ({ coated = [] }, skive) => coated.some((face) => skive.faces.some((one) => touch(one, face))),
      ),
  },
  P2: {
    says: 'per face: made ready, coated, left to dry, joined, pressed',
    source: 'a maker’s sheet for polychloroprene; common practice',
    check: (list) => [
      ...list.steps.flatMap((step, i) =>
        (step.coated ?? []).flatMap((face) => {
          if (face.side === 'flesh') return [];
          const ready = list.steps
            .slice(0, i)
            .some(({ kind, faces }) => kind === 'prepare' && faces.some((one) => touch(one, face)));
          return ready ? [] : [`${name(step)} without its faces made ready`];
        }),
      ),
      ...list.steps.flatMap((step) =>
        step.coated && step.coats.some((coats) => !(coats >= 1)) ? [`${name(step)} without a coat`] : [],
      ),
      ...list.steps.flatMap((step) =>
        step.kind === 'cement' && !step.wait ? [`${name(step)} without time to dry`] : [],
      ),
      ...wrong(
        list,
        ({ kind }) => kind === 'cement',
        (other, coat) => joined(other) && other.joint === coat.joint,
      ),
      ...wrong(
        list,
        (step) => joined(step),
        (other, join) => other.kind === 'press' && other.joint === join.joint && join.joint !== undefined,
      ),
      ...list.steps.flatMap(({ acts }) =>
        meet(acts, ['dust', 'roughen']) && acts.indexOf('roughen') > acts.indexOf('dust') && acts.includes('dust')
          ? ['dusted before it is roughened']
          : [],
      ),
    ],
  },
  P3: {
    says: 'both faces are coated before they are joined; past the open time the films are warmed',
    source: 'Bespoke Shoes Unlaced, 2013',
    check: ({ steps }) =>
      steps.flatMap((step, i) => {
        if (!joined(step)) return [];
        const before = steps.slice(0, i + 1);
        return facesOf(step).flatMap((face) => {
          if (face.area <= 0) return [];
          const at = before.findLastIndex(({ coated = [] }) => coated.some((one) => touch(one, face)));
          if (at < 0) return [`${name(step)} with a face that has no film`];
          const open = steps[at]?.open?.value ?? Infinity;
          const since = before
            .slice(at + 1, -1)
            .reduce((sum, { minutes, wait }) => sum + minutes + (wait?.value ?? 0), 0);
          return since > open && !step.warm ? [`${name(step)} past the open time`] : [];
        });
      }),
  },
  P4: {
    says: 'foam and cork are bent warm, leather wet and then dried, before they are coated',
    source: 'Rees, The Art and Mystery of a Cordwainer, 1813: cork is bent at the fire first',
    check: (list) => [
      ...wrong(
        list,
        ({ kind }) => kind === 'bend',
        ({ coated = [] }, bend) => meet(piecesOf(coated), bend.pieces),
      ),
      ...list.steps.flatMap((step, i) => {
        if (!does(step, 'damp', 'soak') || step.kind !== 'bend') return [];
        const later = list.steps.slice(i);
        const coated = later.findIndex(({ coated: faces = [] }) => meet(piecesOf(faces), step.pieces));
        const dry = later
          .slice(0, coated < 0 ? undefined : coated)
          .some((one) => one.acts.at(-1) === 'dry' && one.wait && meet(one.pieces, step.pieces));
        return dry ? [] : [`${name(step)} and not dried`];
      }),
    ],
  },
  P5: {
    says: 'on the last the inner layer comes before the outer',
    source: 'derived: each is the next one’s ground',
    check: ({ steps }) => {
      const on = new Set<Layer>();
      return steps.flatMap((step) => {
        const { joint } = step;
        if (does(step, 'sew welt')) for (const piece of step.pieces) on.add(piece);
        if (!joint || joint.apart || !joined(step)) return [];
        const missing = piecesOf(joint.above).filter((piece) => !on.has(piece) && !joint.adds.includes(piece));
        for (const piece of [...joint.adds, ...joint.brings]) on.add(piece);
        return missing.map(({ item }) => `${name(step)} before ${item} is on the last`);
      });
    },
  },
  P6: {
    says: 'the top is hollowed to the last and tried dry before it is joined',
    source: 'a learner’s diary, 2013; Rees, 1813',
    check: (list) => [
      ...inTurn(list, ['rasp to last', 'try on last']),
      ...wrong(
        list,
        (step) => does(step, 'rasp to last', 'try on last'),
        (other, hollow) => other.joint?.apart === false && joined(other) && meet(other.joint.brings, hollow.pieces),
      ),
    ],
  },
  P7: {
    says: 'a ground face is levelled before the piece below is joined',
    source: 'Bespoke Shoes Unlaced, 2009; A Manual of Shoemaking, 1912, chapter VIII',
    check: (list) =>
      wrong(
        list,
        (step) => does(step, 'level'),
        (other, level) =>
          joined(other) && (other.joint?.above ?? []).some((face) => level.faces.some((one) => touch(one, face))),
      ),
  },
  P8: {
    says: 'a joint cures before its edge is sawn or rasped, and edges are rasped before they are covered or sealed',
    source: 'notes on a repair trade’s bonding class; common practice',
    check: (list) => [
      ...list.steps.flatMap((step, i) => {
        if (!does(step, 'saw', 'rasp edge', 'bore core', 'trim edge')) return [];
        const before = list.steps.slice(0, i);
        const green = before.findLastIndex(
          (one) =>
            joined(one) &&
            one.kind !== 'cover' &&
            piecesOf(facesOf(one)).filter((p) => step.pieces.includes(p)).length > 1,
        );
        const cured = before.findLastIndex((one) => does(one, 'cure') && meet(one.pieces, step.pieces));
        return green > cured ? [`${name(step)} on a green joint`] : [];
      }),
      ...wrong(
        list,
        (step) => does(step, 'rasp edge', 'trim edge'),
        (other, rasp) =>
          meet(other.pieces, rasp.pieces) &&
          (does(other, 'seal', 'ink') || (does(rasp, 'rasp edge') && other.kind === 'cover' && does(other, 'join'))),
      ),
    ],
  },
  P9: {
    says: 'a cover whose margin is turned over goes on before the join to the upper; one that is folded after it',
    source: 'derived: where the margin lies',
    check: (list) => [
      ...wrong(
        list,
        (step) => step.kind === 'cover' && list.steps.some((one) => does(one, 'turn over') && one.joint === step.joint),
        (other, cover) => joined(other) && other.joint?.apart === false && meet(other.joint.brings, cover.pieces),
      ),
      ...wrong(
        list,
        (step) => does(step, 'fold edge'),
        (other, fold) => other.kind === 'cover' && does(other, 'join') && other.joint === fold.joint,
      ),
      ...wrong(
        list,
        (step) => joined(step) && step.kind !== 'cover',
        (other, join) =>
          other.kind === 'cover' &&
          does(other, 'join') &&
          list.steps.some((one) => does(one, 'fold edge') && one.joint === other.joint) &&
          (join.joint?.adds ?? []).some((piece) => other.pieces.includes(piece)),
      ),
    ],
  },
  P10: {
    says: 'a cover is turned under before the outsole or top piece is joined',
    source: 'Montage California construction, as an encyclopaedia has it; derived',
    check: (list) =>
      wrong(
        list,
        (step) => step.kind === 'cover',
        (other, cover) =>
          joined(other) &&
          other.kind !== 'cover' &&
          other.joint?.apart === false &&
          !meet(other.joint.adds, cover.pieces) &&
          piecesOf(other.joint.above).some((piece) => cover.pieces.includes(piece)),
      ),
  },
  P11: {
    says: 'pleats are pared and the grain of the turned margins alone roughened before they are coated',
    source: 'a course unit on sole preparation; derived',
    check: (list) => {
      const grain = (faces: readonly Face[]) => faces.filter(({ side }) => side === 'grain');
      return [
        ...list.steps.flatMap((step, i) =>
          grain(step.coated ?? []).flatMap((face) => {
            const before = list.steps.slice(0, i);
            const ready = before.some((one) => does(one, 'roughen') && one.faces.some((own) => touch(own, face)));
            const pared = before.some((one) => does(one, 'pare pleats') && one.pieces.some((p) => p === face.piece));
            return [
              ...(ready || face.piece?.material !== 'leather' ? [] : [`${name(step)} on a smooth grain`]),
              ...(pared ? [] : [`${name(step)} over pleats`]),
            ];
          }),
        ),
        ...list.steps.flatMap((step) =>
          step.kind === 'prepare' && grain(step.faces).some((face) => !isMargin(face))
            ? [`${name(step)} on grain that is seen`]
            : [],
        ),
      ];
    },
  },
  P12: {
    says: 'insole, lasting, welt, its seam trimmed, shank, filler, midsole, sole',
    source: 'A Manual of Shoemaking, 1912, chapters VI and VIII; Bespoke Shoes Unlaced, 2014',
    check: (list) => [
      ...inTurn(list, ['block insole', 'last upper', 'sew welt', 'trim seam', 'fit shank', 'pack seat', 'fill cavity']),
      // Filler leaves dust and crumbs (common practice).
      ...wrong(
        list,
        (step) => does(step, 'trim margin', 'fit shank', 'pack seat', 'fill cavity'),
        (other) => does(other, 'dust') && other.faces.some(({ piece }) => !piece),
      ),
      ...wrong(
        list,
        (step) =>
          does(step, 'block insole', 'last upper', 'sew welt', 'trim seam', 'fit shank', 'pack seat', 'fill cavity'),
        (other) => joined(other) && other.joint?.apart === false && other.kind !== 'cover',
      ),
      ...wrong(
        list,
        (step) => joined(step) && (step.joint?.adds ?? []).some(({ part }) => part === 'midsole'),
        (other, join) =>
          joined(other) &&
          other.joint?.apart === join.joint?.apart &&
          !join.joint?.apart &&
          (other.joint?.adds ?? []).some(({ part }) => part === 'sole'),
      ),
    ],
  },
  P13: {
    says: 'a shank is fitted before the sole that covers it',
    source: 'A Manual of Shoemaking, 1912, chapter IX',
    check: (list) =>
      wrong(
        list,
        (step) => does(step, 'fit shank'),
        (other) => joined(other) && facesOf(other).some(({ piece }) => !piece),
      ),
  },
  P14: {
    says: 'a sole is soaked, mellowed and beaten, then cemented, rounded, channelled, stitched, hammered, dried, its channel closed',
    source: 'Bespoke Shoes Unlaced, 2014 to 2018',
    check: (list) => {
      const sole = list.steps.find((step) => does(step, 'stitch'))?.pieces ?? [];
      return [
        ...inTurn(
          list,
          ['soak', 'mellow', 'beat', 'trim round', 'open channel', 'stitch', 'hammer seam', 'close channel'],
          (step) => meet(step.pieces, sole),
        ),
        ...list.steps.flatMap((step) =>
          does(step, 'mellow') && !step.wait ? [`${name(step)} without time to mellow`] : [],
        ),
        ...wrong(
          list,
          (step) => does(step, 'soak', 'mellow', 'beat') && meet(step.pieces, sole),
          ({ coated = [] }, wet) => meet(piecesOf(coated), wet.pieces),
        ),
        ...wrong(
          list,
          (step) => joined(step) && (step.joint?.adds ?? []).some((piece) => sole.includes(piece)),
          (other) => does(other, 'trim round', 'open channel', 'stitch'),
        ),
        ...list.steps.flatMap((step) =>
          does(step, 'hammer seam') && !step.wait ? ['the channel is closed on a wet seam'] : [],
        ),
      ];
    },
  },
  P15: {
    says: 'the sole is stitched, then the seat nailed, then the rand and the lifts laid',
    source: 'Bespoke Shoes Unlaced, 2011',
    check: (list) => [
      ...inTurn(list, ['stitch', 'nail seat', 'lay rand']),
      // What lies on grain holds where it is roughened (common practice).
      ...wrong(
        list,
        (step) => does(step, 'roughen') && step.faces.some(({ piece, zone }) => piece && zone === 'seat'),
        (other) => does(other, 'lay rand'),
      ),
      ...wrong(
        list,
        (step) => does(step, 'stitch', 'nail seat', 'lay rand'),
        (other) => joined(other) && other.joint?.apart === false && (other.joint.adds ?? []).some(isLift),
      ),
    ],
  },
  P16: {
    says: 'each lift: pasted, nailed, nails punched under, trimmed, peened, skived level, before the next',
    source: 'Bespoke Shoes Unlaced, 2009 and 2012',
    check: ({ steps }) => {
      const cycle: readonly Act[] = ['paste', 'join', 'nail', 'punch under', 'trim lift', 'peen', 'skive level'];
      const lifts = steps.filter((step) => does(step, 'nail'));
      return [
        ...lifts.flatMap((step) =>
          step.acts.join() === cycle.join() ? [] : [`${name(step)} is not ${cycle.join(', ')}`],
        ),
        ...lifts.slice(1).flatMap((step, i) => {
          const before = (lifts[i] as Step).pieces[0] as Layer;
          return (step.pieces[0] as Layer).item < before.item ? [] : [`${name(step)} after ${before.item}`];
        }),
      ];
    },
  },
  P17: {
    says: 'nails and screws are driven before the top piece hides their heads',
    source: 'A Manual of Shoemaking, 1912, chapters VI and VIII',
    check: (list) =>
      wrong(
        list,
        (step) => does(step, 'nail', 'nail seat'),
        (other) => joined(other) && (other.joint?.adds ?? []).some(({ part }) => part === 'topPiece'),
      ),
  },
  P18: {
    says: 'the last is out before the heel is fixed from inside; then the ground is levelled and the top piece fixed',
    source: '"Heels", My Life with Boots, 2012; notes of a boot school accept the top piece beforehand',
    check: (list) => {
      const fixes = list.steps.filter((step) => does(step, 'nail from inside'));
      return fixes.flatMap((fix) => {
        const before = list.steps.slice(0, list.steps.indexOf(fix));
        return [
          ...(before.some((step) => does(step, 'last out')) ? [] : ['fixed from inside with the last in']),
          ...(before.some((step) => joined(step) && meet(step.joint?.brings ?? [], fix.pieces))
            ? []
            : ['fixed before the heel is on']),
          ...before.flatMap((step) =>
            does(step, 'level') && !step.apart && meet(step.pieces, fix.pieces) ? ['levelled before it is fixed'] : [],
          ),
          ...wrong(
            list,
            (step) => does(step, 'level') && meet(step.pieces, fix.pieces),
            (other) => joined(other) && (other.joint?.adds ?? []).some(({ part }) => part === 'topPiece'),
          ),
        ];
      });
    },
  },
  P19: {
    says: 'the shoe is tried on a flat board with its top piece loose before that is fixed',
    source: 'Bespoke Shoes Unlaced, 2011; Rees, 1813',
    check: (list) => [
      ...wrong(
        list,
        (step) => does(step, 'try on ground'),
        (other) =>
          (joined(other) || other.coated !== undefined) &&
          (other.joint?.adds ?? []).some(({ part }) => part === 'topPiece'),
      ),
      ...wrong(
        list,
        (step) =>
          joined(step) && step.joint?.apart === false && !step.joint.adds.some(({ part }) => part === 'topPiece'),
        (other) => does(other, 'try on ground'),
      ),
    ],
  },
  P20: {
    says: 'a heel that is built apart is covered before it is joined to the sole and before its top piece',
    source: 'derived: margins lie in both joints',
    check: (list) =>
      wrong(
        list,
        (step) => step.kind === 'cover' && step.apart === true,
        (other, cover) =>
          joined(other) &&
          other.joint?.apart === false &&
          (meet(other.joint.brings, cover.pieces) || meet(piecesOf(other.joint.above), cover.pieces)),
      ),
  },
  P21: {
    says: 'the heel is fixed, its breast cut and roughened, then the flap joined, its tab turned, the top piece fixed',
    source: '"Women’s Fitted Soles: Louis Heels"',
    check: (list) => {
      const flap = (step: Step) => (step.joint?.below ?? []).some(({ zone }) => zone === 'flap');
      return [
        // A breast that a cover's ends are turned in on to is cut before that, which is off the last.
        ...wrong(
          list,
          (step) => does(step, 'cut breast'),
          (other) => other.kind === 'cover' && does(other, 'join', 'turn in') && other.pieces.some(isLift),
        ),
        ...wrong(
          list,
          (step) =>
            does(step, 'nail', 'nail from inside') ||
            (joined(step) && !flap(step) && step.joint?.apart === false && step.joint.adds.some(isLift)),
          (other) => (does(other, 'cut breast') && !other.apart) || (joined(other) && flap(other)),
        ),
        ...wrong(
          list,
          (step) => does(step, 'cut breast'),
          (other) => flap(other) && (joined(other) || other.coated !== undefined),
        ),
        ...wrong(
          list,
          (step) => joined(step) && flap(step),
          (other) => does(other, 'turn tab'),
        ),
        ...wrong(
          list,
          (step) => does(step, 'turn tab'),
          (other) => joined(other) && (other.joint?.adds ?? []).some(({ part }) => part === 'topPiece'),
        ),
      ];
    },
  },
  P22: {
    says: 'all is joined before edges are trimmed, sanded, inked, ironed and waxed',
    source: 'Bespoke Shoes Unlaced, 2011 and 2012',
    check: (list) => [
      ...wrong(
        list,
        (step) => joined(step) || step.kind === 'press' || step.kind === 'sew',
        (other) => does(other, 'trim edge', 'sand edge', 'ink', 'seal', 'iron and wax'),
      ),
      ...inTurn(list, ['trim edge', 'sand edge']),
    ],
  },
  P23: {
    says: 'the heel is on before the last comes out, the sock goes in after it; a filler last holds the shoe in between',
    source: 'A Manual of Shoemaking, 1912, chapter VII; Bespoke Shoes Unlaced, 2012',
    check: (list) => [
      ...inTurn(list, ['last out', 'nail from inside', 'filler last in', 'filler last out', 'sock']),
      ...wrong(
        list,
        (step) => joined(step) && (step.joint?.brings ?? []).some(isLift),
        (other) => does(other, 'last out'),
      ),
    ],
  },
  P24: {
    says: 'a face that is moulded to be walked on is never roughened, coated, rasped or sanded',
    source: 'common practice',
    check: ({ steps, moulded }) =>
      steps.flatMap((step) =>
        [...step.faces, ...(step.coated ?? [])].some(
          // Under a wedge or heel the face is not walked on.
          ({ piece, side, zone }) => piece && side === 'lower' && zone !== 'seat' && moulded(piece),
        )
          ? [`${name(step)} on a moulded face`]
          : [],
      ),
  },
};

/** All rules that a list of steps breaks, with what is out of order. */
export function broken(list: Listed): readonly string[] {
  return Object.entries(PRECEDENCE).flatMap(([id, rule]) => rule.check(list).map((what) => `${id}: ${what}`));
}
