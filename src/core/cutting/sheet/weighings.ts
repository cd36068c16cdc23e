import { areaBetween, type Chords, chords, heightAbove, longestChord } from '../../geometry/chords';
import { letOutArea } from '../../geometry/let-out-area';
import { OutlineIndex } from '../../geometry/outline-index';
import type { Ring } from '../../geometry/ring';
import { greatestOf } from '../../numerics/extremes';
import { weighingsByCells } from './cells';
import { type DualFeasible, functionsFor, mostGain, valueAt } from './dual-feasible';
import type { Piece } from './piece';
import { type SheetFormat, TOLERANCE } from './sheet';
import type { Matters, Room, Weighing } from './weighing';

const always: Matters = () => true;

/** More parts than this and nothing is gained over the plain area. */
const PARTS = { area: 60, chords: 12, both: 24 } as const;

/** An outline to be cut, and how often: the other foot's is the same, and so is that of other styles on one last. */
interface Body {
  readonly ring: Ring;
  count: number;
}

/**
 * Weighings of pieces on a sheet, the plain area first (derived). By a dual feasible function f
 * of what a piece takes of the sheet's area: that alone bounds what fits. By the cells that convex pieces lie in. Where pieces
 * lie along a rectangle alone, either way round: by f of the length of every chord in the sheet's, added up over the height,
 * since the chords of pieces on one line do not overlap; the same across; and by another such function of that, over the
 * sheet's width.
 */
export function* weighings(
  pieces: readonly Piece[],
  room: Room,
  { knifeRoom }: Pick<SheetFormat, 'knifeRoom'>,
  matters = always,
): Generator<Weighing> {
  const bodies = bodiesOf(pieces);
  const sized = bodies.map(({ ring, count }) => ({ ring, area: letOutArea(ring, knifeRoom / 2), count }));
  yield* weighingsByArea(sized, room.length * room.width, matters);
  yield* weighingsByCells(sized, room, knifeRoom, matters);
  if (room.ground) return;
  if (!pieces.every(({ way }) => way.kind === 'endForEnd' || way.kind === 'oneWay')) return;
  for (const direction of ['along', 'across'] as const) {
    const lines = bodies.map(({ ring, count }) => ({ chords: letOutChords(ring, direction, knifeRoom), count }));
    yield* byChords(lines, room, direction, matters);
  }
}

function bodiesOf(pieces: readonly Piece[]): readonly Body[] {
  const outlines = new OutlineIndex();
  const bodies: Body[] = [];
  for (const { ring, count } of pieces) {
    const { number } = outlines.find(ring);
    const known = bodies[number];
    if (known) known.count += count;
    else bodies[number] = { ring, count };
  }
  return bodies;
}

/** Each chord is longer by the knife room once the piece is let out; what is let out above and below it is left out. */
function letOutChords(ring: Ring, direction: 'along' | 'across', knifeRoom: number): Chords {
  // Layouts are sound to within the tolerance: nothing may hang on less.
  const more = knifeRoom - 2 * TOLERANCE;
  return chords(direction === 'along' ? ring : ring.map(([x, y]) => [y, -x]), more);
}

/** What a piece takes of an area, mm², and how often it is cut. */
interface Sized {
  readonly area: number;
  readonly count: number;
}

/** By a dual feasible function of what a piece takes of an area, mm², that alone bounds what fits in it; the plain area first. */
export function* weighingsByArea(sized: readonly Sized[], whole: number, matters = always): Generator<Weighing> {
  const size = ({ length, width }: Room) => (Math.max(0, length) * Math.max(0, width)) / whole;
  yield { weight: sized.reduce((sum, { area, count }) => sum + count * (area / whole), 0), hold: size };
  const shares = sized.map(({ area, count }) => ({ share: (area / whole) * (1 - SLACK), count }));
  yield* byShares(shares, PARTS.area, size, matters);
}

/** Areas are sound to this share: the tolerance all round a piece is less. */
const SLACK = 1e-4;

/** What a piece weighs of what a sheet holds, and how often it is cut. */
interface Shared {
  readonly share: number;
  readonly count: number;
}

/** @param size what a room holds of what a sheet does */
function* byShares(
  shares: readonly Shared[],
  mostParts: number,
  size: (room: Room) => number,
  matters: Matters,
): Generator<Weighing> {
  const plain = shares.reduce((sum, { share, count }) => sum + count * share, 0);
  const sizes = shares.map(({ share }) => share);
  if (!matters(plain * mostGain(greatestOf(sizes)))) return;
  for (const f of functionsFor(sizes, mostParts, (gain) => matters(plain * gain))) {
    const weight = shares.reduce((sum, { share, count }) => sum + count * valueAt(f, share), 0);
    yield { weight, hold: (room) => f.most(size(room)) };
  }
}

/** The chords of a piece, and how often it is cut. */
interface Lined {
  readonly chords: Chords;
  readonly count: number;
}

function* byChords(
  lines: readonly Lined[],
  room: Room,
  direction: 'along' | 'across',
  matters: Matters,
): Generator<Weighing> {
  const [long, wide] = direction === 'along' ? (['length', 'width'] as const) : (['width', 'length'] as const);
  const whole = room[long];
  const shares = lines.map((line) => areaBetween(line.chords, 0, Infinity) / (whole * room[wide]));
  const plain = lines.reduce((sum, { count }, i) => sum + count * shares[i]!, 0);
  const largest = greatestOf(shares);
  // By one function of the chords, and another of what that makes of a piece.
  const wanted = (gain: number) => matters(plain * gain * mostGain(gain * largest)) || matters(plain * gain);
  for (const f of functionsFor(chordsOf(lines, whole), PARTS.chords, wanted)) {
    const hold = (other: Room) => Math.max(0, other[wide]) * f.most(Math.max(0, other[long]) / whole);
    const full = hold(room);
    const weighed = lines.map(({ chords: own, count }) => ({ weight: weightOf(own, f, whole), count }));
    yield { weight: weighed.reduce((sum, { weight, count }) => sum + count * weight, 0), hold };
    const again = weighed.map(({ weight, count }) => ({ share: (weight / full) * (1 - SLACK), count }));
    yield* byShares(again, PARTS.both, (other) => hold(other) / full, matters);
  }
}

/** The longer end of every slab of chords, as a share of the whole. */
function chordsOf(lines: readonly Lined[], whole: number): Float64Array {
  const all = new Float64Array(lines.reduce((sum, { chords: { heights } }) => sum + heights.length, 0));
  let at = 0;
  for (const {
    chords: { from, to },
  } of lines)
    for (let i = 0; i < from.length; i++) all[at++] = Math.max(from[i]!, to[i]!) / whole;
  return all;
}

/** ∫ f(chord / whole) over the height of a piece, mm. */
function weightOf(own: Chords, { counted: [from, to], steps }: DualFeasible, whole: number): number {
  const longest = longestChord(own);
  let sum = to > from ? areaBetween(own, from * whole, to * whole) / whole : 0;
  for (const { above, by } of steps) {
    if (longest <= above * whole) break;
    sum += by * heightAbove(own, above * whole);
  }
  return sum;
}
