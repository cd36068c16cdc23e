import { areaBetween, chords, heightAbove, type Slab } from '../../geometry/chords';
import { letOutArea } from '../../geometry/let-out-area';
import { OutlineIndex } from '../../geometry/outline-index';
import type { Ring } from '../../geometry/ring';
import { type DualFeasible, functionsFor, valueAt } from './dual-feasible';
import type { Piece } from './piece';
import { type SheetFormat, TOLERANCE } from './sheet';

/** Room on a sheet for pieces let out by half the knife room, mm. */
export interface Room {
  readonly length: number;
  readonly width: number;
}

/** Weights of pieces such that those on one sheet never weigh more than the sheet holds: many pieces need many sheets. */
export interface Weighing {
  /** Of one of each kind of piece. */
  readonly weights: readonly number[];
  /** The most that pieces on a sheet with this room weigh together. */
  hold(room: Room): number;
}

/** More parts than this and nothing is gained over the plain area. */
const PARTS = { area: 60, chords: 12, both: 24 } as const;

/** A piece as it is weighed. */
interface Body {
  readonly area: number;
  readonly along: readonly Slab[];
  readonly across: readonly Slab[];
}

/**
 * Weighings of pieces on a sheet that is no natural one, the plain area among them (derived). By a dual feasible function f
 * of what a piece takes of the sheet's area: that alone bounds what fits. Where pieces lie along the sheet alone, either way
 * round: by f of the length of every chord in the sheet's, added up over the height, since the chords of pieces on one line do
 * not overlap; the same across; and by another such function of that, over the sheet's width.
 */
export function weighings(
  pieces: readonly Piece[],
  room: Room,
  { knifeRoom }: Pick<SheetFormat, 'knifeRoom'>,
): readonly Weighing[] {
  const bodies = bodiesOf(pieces, knifeRoom);
  const straight = pieces.every(({ way }) => way.kind === 'endForEnd' || way.kind === 'oneWay');
  return [
    ...weighingsByArea(
      bodies.map(({ area }) => area),
      room.length * room.width,
    ),
    ...(straight ? [...byChords(bodies, room, 'along'), ...byChords(bodies, room, 'across')] : []),
  ];
}

function bodiesOf(pieces: readonly Piece[], knifeRoom: number): readonly Body[] {
  const outlines = new OutlineIndex();
  const known: Body[] = [];
  return pieces.map(({ ring }) => {
    const { number } = outlines.find(ring);
    return (known[number] ??= {
      area: letOutArea(ring, knifeRoom / 2),
      along: letOutChords(ring, knifeRoom),
      across: letOutChords(
        ring.map(([x, y]) => [y, -x]),
        knifeRoom,
      ),
    });
  });
}

/** Each chord is longer by the knife room once the piece is let out; what is let out above and below it is left out. */
function letOutChords(ring: Ring, knifeRoom: number): readonly Slab[] {
  // Layouts are sound to within the tolerance: nothing may hang on less.
  const more = knifeRoom - 2 * TOLERANCE;
  return chords(ring).map(({ height, from, to }) => ({ height, from: from + more, to: to + more }));
}

/** By a dual feasible function of what a piece takes of an area, mm², that alone bounds what fits in it. */
export function weighingsByArea(areas: readonly number[], whole: number): readonly Weighing[] {
  const size = ({ length, width }: Room) => (Math.max(0, length) * Math.max(0, width)) / whole;
  const shares = areas.map((area) => (area / whole) * (1 - SLACK));
  return [
    { weights: areas.map((area) => area / whole), hold: size },
    ...functionsFor(shares, PARTS.area).map((f): Weighing => ({
      weights: shares.map((share) => valueAt(f, share)),
      hold: (other) => f.most(size(other)),
    })),
  ];
}

/** Areas are sound to this share: the tolerance all round a piece is less. */
const SLACK = 1e-4;

function byChords(bodies: readonly Body[], room: Room, direction: 'along' | 'across'): readonly Weighing[] {
  const [long, wide] = direction === 'along' ? (['length', 'width'] as const) : (['width', 'length'] as const);
  const whole = room[long];
  const longest = bodies.flatMap((body) => body[direction].map(({ from, to }) => Math.max(from, to) / whole));
  return functionsFor(longest, PARTS.chords).flatMap((f): readonly Weighing[] => {
    const weights = bodies.map((body) => weighed(body[direction], f, whole));
    const hold = (other: Room) => Math.max(0, other[wide]) * f.most(Math.max(0, other[long]) / whole);
    const full = hold(room);
    const shares = weights.map((weight) => (weight / full) * (1 - SLACK));
    return [
      { weights, hold },
      ...functionsFor(shares, PARTS.both).map((g): Weighing => ({
        weights: shares.map((share) => valueAt(g, share)),
        hold: (other) => g.most(hold(other) / full),
      })),
    ];
  });
}

/** ∫ f(chord / whole) over the height of a piece, mm. */
function weighed(slabs: readonly Slab[], { counted: [from, to], steps }: DualFeasible, whole: number): number {
  return slabs.reduce((sum, slab) => {
    const own = to > from ? areaBetween(slab, from * whole, to * whole) / whole : 0;
    return steps.reduce((all, { above, by }) => all + by * heightAbove(slab, above * whole), sum + own);
  }, 0);
}
