import { itemAt } from '../item-at';
import type { Layer } from '../bottom/layer';
import { does, overlap, sameFace } from './operation';
import type { Act, Face, Operation } from './step';

/** An operation with what the rules ask of it, found out once. */
export interface Ruled {
  readonly operation: Operation;
  readonly pieces: readonly Layer[];
  readonly faces: readonly Face[];
  /** How late it is of what is done at one face, and in one joint; -1 where it is none of it. */
  readonly atFace: number;
  readonly inJoint: number;
  /** How late it is in each of the sequences. */
  readonly inSequence: readonly number[];
  /** How late it is in the bending of a piece; -1 where it is no part of it. */
  readonly bending: number;
  /** Off the last, or on it. */
  readonly apart: boolean;
  /** Whether it brings faces together or presses them. */
  readonly joins: boolean;
  /** Pieces that its joint adds, that are on the last with it, and whose faces lie above. */
  readonly adds: readonly Layer[];
  readonly brings: readonly Layer[];
  readonly above: readonly Layer[];
  /** Whether its joint meets the lasted bottom, the seat, a flap. */
  readonly meets: { readonly lasted: boolean; readonly seat: boolean; readonly flap: boolean };
  readonly coats: boolean;
  /** Whether it is done to the lasted bottom before anything lies on it. */
  readonly lasting: boolean;
  readonly sewing: boolean;
  /** Whether it waits until all is joined. */
  readonly end: boolean;
}

const LASTING: readonly Act[] = [
  'block insole',
  'cut holdfast',
  'last upper',
  'sew welt',
  'trim seam',
  'fit shank',
  'pack seat',
  'fill cavity',
];
const SEWING: readonly Act[] = ['trim round', 'open channel', 'stitch', 'hammer seam', 'close channel'];
const END: readonly Act[] = ['trim edge', 'check height', 'sand edge', 'sock'];

function isShaped({ kind }: Operation): boolean {
  return kind === 'rasp' || kind === 'saw';
}

/** What is done at a face, in this order. */
const AT_A_FACE: readonly ((one: Operation) => boolean)[] = [
  (one) => does(one, 'thin'),
  ({ kind }) => kind === 'skive',
  (one) => (isShaped(one) && !does(one, 'thin')) || does(one, 'cut breast'),
  (one) => does(one, 'turn under'),
  (one) => one.kind === 'prepare' && !does(one, 'fill margins'),
  (one) => does(one, 'fill margins'),
  ({ coated }) => coated !== undefined,
];

/** What is done for a joint, in this order. */
const IN_A_JOINT: readonly ((one: Operation) => boolean)[] = [
  ({ kind }) => kind === 'skive',
  (one) => does(one, 'rasp to last', 'grind toe', 'fold edge'),
  (one) => does(one, 'try on last'),
  ({ kind }) => kind === 'prepare',
  ({ coated }) => coated !== undefined,
  (one) => does(one, 'join'),
  (one) => does(one, 'press', 'turn under', 'turn tab'),
];

/** Bending a piece, and drying it where it is wetted and not bent: soaked, beaten, bent and dried. */
function bendingOf(one: Operation): number {
  if (one.joint || !(one.kind === 'bend' || does(one, 'block insole', 'beat') || one.acts[0] === 'dry')) return -1;
  return does(one, 'soak') && !does(one, 'dry') ? 0 : does(one, 'beat') ? 1 : 2;
}

/** Acts of which each comes before all that stand after it. */
const SEQUENCES: readonly (readonly Act[])[] = [
  // A welt sews to the insole; shank, filler and sole hide its seam.
  [...LASTING.slice(0, 5), 'trim margin', ...LASTING.slice(5), 'lay rand'],
  ['skive ends', 'sew welt'],
  // A blocked insole has the last to itself, and what lies below is bent to the lasted shoe.
  ['block insole', 'last upper', 'bend'],
  // A channel is closed when the thread lies dry in it; the heel hides the seam at the seat.
  [...SEWING, 'nail seat', 'lay rand'],
  // The insole must be reached; a last holds the shoe again for what is done to its ground.
  ['last out', 'nail from inside', 'filler last in', 'cut breast'],
  ['bore core', 'cure core', 'saw', 'rasp to last', 'grind toe', 'rasp edge'],
  // The saw brings a block to its height.
  ['saw', 'level'],
  ['fit shank', 'fill cavity', 'try on last'],
  ['trim edge', 'check height', 'sand edge', 'sock'],
];

export function ruled(operation: Operation): Ruled {
  const { joint, pieces, faces, acts } = operation;
  const apart = operation.apart === true;
  const end = operation.whole === true || does(operation, ...END);
  const latest = (list: readonly ((one: Operation) => boolean)[]) => list.findLastIndex((is) => is(operation));
  return {
    operation,
    pieces,
    faces,
    atFace: latest(AT_A_FACE),
    inJoint: joint ? latest(IN_A_JOINT) : -1,
    bending: bendingOf(operation),
    // The last that comes out at the end is no step before the heel's nails.
    inSequence: SEQUENCES.map((sequence) =>
      // The breast of a heel that is covered off the last is cut there; and a platform on it is none of the heel built off it.
      end === sequence.includes('sock') &&
      !(apart && acts.includes('cut breast')) &&
      !(!apart && acts.includes('rasp edge'))
        ? sequence.findLastIndex((act) => acts.includes(act))
        : -1,
    ),
    apart,
    joins: joint !== undefined && does(operation, 'join', 'press', 'turn tab'),
    adds: joint?.adds ?? [],
    brings: joint?.brings ?? [],
    above: joint?.above.flatMap(({ piece }) => piece ?? []) ?? [],
    meets: {
      lasted: joint?.above.some(({ piece }) => !piece) === true,
      seat: joint?.above.some(({ zone }) => zone === 'seat') === true,
      flap: joint?.below.some(({ zone }) => zone === 'flap') === true,
    },
    coats: operation.coated !== undefined,
    lasting: !joint && (does(operation, ...LASTING) || faces.some(({ piece }) => !piece)),
    sewing: does(operation, ...SEWING),
    end,
  };
}

/** Says of two operations whether the first must come before the other. */
interface Rule {
  /** Whether it says anything of an operation as the first: asked once, not for each of the others. */
  of(first: Ruled): boolean;
  /** Whether such an operation must come before another. */
  bids(first: Ruled, then: Ruled): boolean;
}

const doing = (one: Ruled, ...acts: readonly Act[]) => does(one.operation, ...acts);
const readies = ({ coats, operation: { kind } }: Ruled) => coats || kind === 'prepare';
const readiesSeat = ({ operation: { kind, faces } }: Ruled) =>
  kind === 'prepare' && faces.some(({ piece, side, zone }) => piece && side === 'lower' && zone === 'seat');
const covers = ({ adds }: Ruled) => adds.some(({ part }) => part === 'cover');
const within = (pieces: readonly Layer[], others: readonly Layer[]) => pieces.every((piece) => others.includes(piece));
const sameJoint = (first: Ruled, then: Ruled) =>
  first.operation.joint !== undefined && first.operation.joint === then.operation.joint;
const onLast = ({ operation: { joint } }: Ruled) => joint?.apart === false;
const offLast = ({ operation: { joint } }: Ruled) => joint?.apart === true;

/** All that must come before something else, by what it is for. */
const RULES: readonly Rule[] = [
  // A piece is cut before all else.
  {
    of: (first) => doing(first, 'cut'),
    bids: (first, then) => !doing(then, 'cut') && overlap(first.pieces, then.pieces),
  },

  // Knife and rasp take a coat off: a face is shaped, then made ready, then coated.
  {
    of: ({ atFace }) => atFace >= 0,
    bids: (first, then) =>
      first.atFace < then.atFace && first.faces.some((one) => then.faces.some((other) => sameFace(one, other))),
  },

  // For a joint its faces are tried, made ready, coated, brought together, pressed.
  {
    of: ({ inJoint }) => inJoint >= 0,
    bids: (first, then) => first.inJoint < then.inJoint && sameJoint(first, then),
  },

  // A piece is skived while it is flat, soaked, beaten, bent and dry before it is coated.
  {
    of: ({ bending, operation: { kind } }) => bending >= 0 || kind === 'skive',
    bids: (first, then) =>
      ((first.operation.kind === 'skive' && (then.operation.kind === 'bend' || doing(then, 'block insole'))) ||
        (first.bending >= 0 && (first.bending < then.bending || then.operation.joint !== undefined))) &&
      overlap(first.pieces, then.pieces),
  },

  // On the last each piece is the ground of the next.
  {
    of: (first) => first.joins && onLast(first),
    bids: (first, then) => onLast(then) && !sameJoint(first, then) && overlap(first.brings, then.above),
  },

  // Off the last a pile is joined before the next is put to it.
  {
    of: (first) => first.joins && offLast(first),
    bids: (first, then) => offLast(then) && !sameJoint(first, then) && overlap(first.adds, then.above),
  },

  // What is built off the last is joined before it is cured, shaped, tried.
  {
    of: (first) => first.joins && offLast(first) && !covers(first),
    bids: (first, then) => then.apart && !offLast(then) && within(first.pieces, then.pieces),
  },

  // All that is done off the last is done before it is put on.
  {
    of: ({ apart }) => apart,
    bids: (first, then) => then.coats && onLast(then) && overlap(first.pieces, then.brings),
  },

  // A joint has cured before it is bored, sawn, hollowed or rasped at its edge.
  {
    of: (first) => doing(first, 'cure') && !first.end,
    bids: (first, then) =>
      doing(then, 'bore core', 'saw', 'rasp to last', 'grind toe', 'rasp edge', 'cut breast') &&
      within(first.pieces, then.pieces),
  },

  // A stack is levelled when it is whole.
  {
    of: ({ joins }) => joins,
    bids: (first, then) =>
      doing(then, 'level') &&
      offLast(first) === then.apart &&
      then.faces.some(
        ({ piece, side }) => side === 'lower' && piece && (first.adds.includes(piece) || first.brings.includes(piece)),
      ),
  },

  // A face is levelled before its edge is rasped, and what is shaped before it is covered.
  {
    of: ({ operation }) => isShaped(operation),
    bids: (first, then) =>
      first.apart === then.apart &&
      overlap(first.pieces, then.pieces) &&
      ((doing(first, 'level') && doing(then, 'rasp edge')) || (readies(then) && covers(then))),
  },

  // A wall on the last is whole before it is cured and rasped.
  {
    of: (first) => first.joins && onLast(first),
    bids: (first, then) =>
      !then.apart && !then.end && doing(then, 'cure', 'rasp edge') && overlap(first.adds, then.pieces),
  },

  // A cover is on and its margins turned before what lies on them.
  {
    of: ({ operation: { kind } }) => kind === 'cover',
    bids: (first, then) =>
      !sameJoint(first, then) &&
      onLast(then) &&
      (overlap(then.brings, first.pieces)
        ? first.apart && readies(then)
        : (readies(then) || doing(then, 'rasp to last')) && overlap(then.above, first.pieces)),
  },

  // The lasted bottom is made ready before anything lies on it.
  {
    of: ({ lasting }) => lasting,
    bids: (_, then) => onLast(then) && then.meets.lasted,
  },

  // The lasted bottom is dusted off when its hollow is filled.
  {
    of: ({ lasting }) => lasting,
    bids: (_, then) => then.lasting && then.operation.acts[0] === 'dust',
  },

  // Some things follow one another in every shoe.
  {
    of: ({ inSequence }) => inSequence.some((place) => place >= 0),
    bids: (first, then) => first.inSequence.some((place, i) => place >= 0 && place < itemAt(then.inSequence, i)),
  },

  // A sole is joined before it is stitched, and stitched before what hides the seam.
  {
    of: (first) => first.sewing || (first.joins && onLast(first)),
    bids: (first, then) =>
      (first.joins && onLast(first) && then.sewing && overlap(first.adds, then.pieces)) ||
      (first.sewing &&
        onLast(then) &&
        !overlap(then.adds, first.pieces) &&
        (then.meets.flap || overlap(then.above, first.pieces) || then.brings.some(({ part }) => part === 'lift'))),
  },

  // A seat is joined before it is nailed, and made ready before the heel lies on it.
  {
    of: (first) => first.joins || doing(first, 'nail seat', 'lay rand') || readiesSeat(first),
    bids: (first, then) =>
      (first.joins && doing(then, 'nail seat') && overlap(first.brings, then.pieces)) ||
      (doing(first, 'nail seat') && (then.meets.seat || readiesSeat(then))) ||
      // A rand holds on roughened grain.
      (readiesSeat(first) && doing(then, 'lay rand')) ||
      (doing(first, 'lay rand') && then.meets.seat && !readiesSeat(then)) ||
      (doing(first, 'nail seat') &&
        onLast(then) &&
        then.operation.joint?.above.some(({ piece, zone }) => piece && !zone && first.pieces.includes(piece)) === true),
  },

  // A heel is on before it is fixed from inside, and fixed before its ground is levelled or a flap laid on it.
  {
    of: (first) => first.joins || doing(first, 'nail from inside', 'filler last in'),
    bids: (first, then) =>
      (first.joins && doing(then, 'last out', 'nail from inside') && overlap(first.brings, heelOf(then))) ||
      (doing(first, 'nail from inside', 'filler last in') &&
        ((doing(then, 'level') && !then.apart && overlap(heelOf(first), then.pieces)) ||
          (then.joins && onLast(then) && then.meets.flap))),
  },

  // A heel stands before its breast is cut for the flap.
  {
    of: (first) => first.joins && onLast(first) && !covers(first) && !first.meets.flap,
    bids: (first, then) => doing(then, 'cut breast') && !then.apart && overlap(first.brings, then.pieces),
  },

  // All else is joined and level before the top piece is tried.
  {
    of: (first) => !first.end || doing(first, 'try on ground'),
    bids: (first, then) =>
      (doing(then, 'try on ground') &&
        !first.end &&
        (first.joins || first.sewing || doing(first, 'level', 'nail from inside', 'filler last in', 'cut breast')) &&
        !overlap(first.adds, then.pieces)) ||
      (doing(first, 'try on ground') && onLast(then) && overlap(then.adds, first.pieces)),
  },

  // All is joined and cured before edges are trimmed and finished.
  {
    of: ({ end, operation: { whole } }) => !end || whole === true,
    bids: (first, then) =>
      then.end && (!first.end || (first.operation.whole === true && then.operation.whole !== true)),
  },
];

/** The lifts that an operation waits for, or is done to. */
function heelOf({ operation: { onHeel, pieces } }: Ruled): readonly Layer[] {
  return onHeel ?? pieces;
}

/** The places in a list of all operations that a rule bids one of them come before. */
export function comesBefore(first: Ruled, all: readonly Ruled[]): readonly number[] {
  const rules = RULES.filter((rule) => rule.of(first));
  return all.flatMap((then, i) => (then !== first && rules.some((rule) => rule.bids(first, then)) ? [i] : []));
}
