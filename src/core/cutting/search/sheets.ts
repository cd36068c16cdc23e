import { crossesItself } from '../../geometry/crosses-itself';
import { letOut } from '../../geometry/let-out';
import { mirror } from '../../geometry/mirror';
import { offsetCurve } from '../../geometry/offset-curve';
import { OutlineIndex } from '../../geometry/outline-index';
import type { Ring } from '../../geometry/ring';
import { sameRing } from '../../geometry/same-ring';
import { simplifyOutward } from '../../geometry/simplify-outward';
import { allPlacements, type LaidSheet, type Layout, type Placement } from '../sheet/layout';
import { BEST, type Quality } from '../sheet/natural-sheet';
import { obstaclesOn } from '../natural/obstacles';
import type { Piece } from '../sheet/piece';
import { roomOn, TOLERANCE } from '../sheet/sheet';
import { endsMaySwap, type Way, wholeTurn } from '../sheet/way';
import { Arrangement, type Snapshot } from './arrangement';
import type { Effort } from './effort';
import { Overlaps } from './overlaps';
import { type TurnedOutline, inTurns } from './turned-outline';
import { Space } from './space';

/** So many shapes, kinds times turns, are prepared at most where pieces may lie many ways: each two of them cost. */
const MOST_SHAPES = 128;
const TURNS = [12, 8, 4];
/** Turns where pieces may lie within an angle, as shares of it; each of them end for end too. */
const WITHIN = [
  [0, 1, -1, 0.5, -0.5],
  [0, 1, -1],
];

/** How far the outline that the search lays may reach beyond the piece, mm: fewer corners, faster tests. */
const COARSENESS = 0.3;

/**
 * Sheets as the search sees them: one arrangement of let-out pieces in rooms side by side, those on no sheet yet lifted
 * out of it, and obstacles where a sheet is no rectangle or has flaws.
 */
export class Sheets {
  readonly arrangement: Arrangement;
  /** Kind of each piece of the arrangement, as the caller counts them. */
  private readonly kinds: readonly number[];
  private readonly shapes: readonly TurnedOutline[];
  private readonly offsets: readonly number[];

  /**
   * @param turns in which each kind of piece may lie, those included in which it does
   * @param more kinds of the pieces that lie on no sheet yet, one entry each
   */
  constructor(
    pieces: readonly Piece[],
    turns: readonly (readonly number[])[],
    private readonly sheets: readonly LaidSheet[],
    more: readonly number[],
    effort: Effort,
  ) {
    const laid = sheets.flatMap(({ placements }, sheet) => placements.map((placement) => ({ ...placement, sheet })));
    this.kinds = [...laid.map(({ piece }) => piece), ...more];
    // All sheets of a stock leave the knife the same room; they may differ in size.
    const half = sheets[0]!.format.knifeRoom / 2;
    const flaws = obstaclesOf(sheets, pieces);
    const outlines = outlinesOf(pieces);
    // All kinds, also those that do not lie here: so what is prepared serves every round.
    const { shapes, overlaps } = prepare([
      ...outlines.first.map((kind) => ({ ring: pieces[kind]!.ring, distance: half, turns: turns[kind]! })),
      ...flaws.map(({ ring }) => ({ ring, distance: 0, turns: [0] })),
    ]);
    this.shapes = shapes;
    const own: number[][] = outlines.first.map(() => []);
    shapes.slice(0, shapes.length - flaws.length).forEach(({ kind }, shape) => own[kind]!.push(shape));
    const choices = outlines.of.map((outline) => own[outline]);
    // The layout's own sheets may use up the tolerance of the check; so may these.
    const slack = TOLERANCE / 4;
    const rooms = sheets.map(({ format }) => roomOn(format));
    this.offsets = rooms.map(({ offset }) => offset - slack);
    const space = new Space(
      rooms.map(({ length }) => length + 2 * slack),
      rooms.map(({ width }) => width + 2 * slack),
    );
    const firstFlaw = shapes.length - flaws.length;
    const obstacles = sheets.flatMap(({ format }, sheet) =>
      (format.natural ? flaws : []).map(({ quality }, i) => ({
        shape: firstFlaw + i,
        x: shapes[firstFlaw + i]!.middleX - this.offsets[sheet]! + space.start(sheet),
        y: shapes[firstFlaw + i]!.middleY - this.offsets[sheet]!,
        stops: (piece: number) => (pieces[this.kinds[piece]!]!.quality ?? BEST) === quality,
      })),
    );
    this.arrangement = new Arrangement(
      overlaps,
      space,
      this.kinds.map((kind) => choices[kind]!),
      effort,
      obstacles,
    );
    laid.forEach(({ piece, turn, x, y, sheet }, i) => {
      const shape = choices[piece]!.find((one) => shapes[one]!.turn === wholeTurn(turn)) as number;
      const { middleX, middleY } = shapes[shape]!;
      const offset = this.offsets[sheet]!;
      this.arrangement.put(i, { shape, x: x - offset + middleX + space.start(sheet), y: y - offset + middleY });
    });
    more.forEach((_, i) => this.arrangement.lift(laid.length + i));
    this.arrangement.updateAllLosses();
  }

  /** What lies on each sheet. */
  placements({ shapes: turned, xs, ys }: Snapshot): readonly (readonly Placement[])[] {
    const { space } = this.arrangement;
    const found: Placement[][] = this.sheets.map(() => []);
    this.kinds.forEach((piece, i) => {
      if (xs[i] === Infinity) return;
      const { turn, middleX, middleY } = this.shapes[turned[i]!]!;
      const sheet = space.at(xs[i]!);
      const offset = this.offsets[sheet]!;
      found[sheet]!.push({
        piece,
        turn,
        x: xs[i]! - middleX - space.start(sheet) + offset,
        y: ys[i]! - middleY + offset,
      });
    });
    return found;
  }

  /** Kinds of the pieces that lie on none. */
  left({ xs }: Snapshot): readonly number[] {
    return this.kinds.filter((_, i) => xs[i] === Infinity);
  }
}

/** A ring over which pieces that need a quality may not lie. */
interface Flaw {
  readonly ring: Ring;
  readonly quality: Quality;
}

/** What some kinds of pieces must keep off on the sheets that are no rectangles; these are all of one outline. */
function obstaclesOf(sheets: readonly LaidSheet[], pieces: readonly Piece[]): readonly Flaw[] {
  const format = sheets.find((sheet) => sheet.format.natural)?.format;
  if (!format?.natural) return [];
  const { natural, edgeTrim, knifeRoom } = format;
  const qualities = [...new Set(pieces.map(({ quality = BEST }) => quality))].sort((a, b) => a - b);
  return qualities.flatMap((quality) =>
    obstaclesOn(natural, quality, edgeTrim, knifeRoom / 2).map((ring) => ({ ring, quality })),
  );
}

/** What is known of some kinds of pieces in some turns, whichever search asks. */
interface Prepared {
  readonly shapes: readonly TurnedOutline[];
  readonly overlaps: Overlaps;
}

/** An outline, how far it is to be let out, mm, and the turns in which it may lie. */
interface Outline {
  readonly ring: Ring;
  readonly distance: number;
  readonly turns: readonly number[];
}

/** What has been prepared for this and that stock, the latest last, and how much memory that before the latest may hold, bytes. */
let prepared: readonly (Prepared & { readonly of: readonly Outline[] })[] = [];
const MOST_BYTES = 64e6;

/** Prepares outlines in their turns and how they overlap; kept, because round after round asks for the same. */
function prepare(outlines: readonly Outline[]): Prepared {
  const known = prepared.find(
    ({ of }) => of.length === outlines.length && of.every((one, i) => alike(one, outlines[i]!)),
  );
  let held = 0;
  const before = [...prepared].reverse().filter((one) => {
    if (one === known) return false;
    held += one.overlaps.bytes;
    return held <= MOST_BYTES;
  });
  const latest = known ?? { ...inAllTurns(outlines), of: outlines };
  prepared = [...before.reverse(), latest];
  return latest;
}

function alike(one: Outline, other: Outline): boolean {
  const { turns } = other;
  return (
    one.distance === other.distance &&
    one.turns.length === turns.length &&
    one.turns.every((turn, i) => turn === turns[i]) &&
    sameRing(one.ring, other.ring)
  );
}

function inAllTurns(outlines: readonly Outline[]): Prepared {
  const index = new OutlineIndex();
  const first: { readonly kind: number; readonly distance: number; readonly laying: Ring }[] = [];
  const shapes = outlines.flatMap(({ ring, distance, turns }, kind) => {
    const { number, mirrored } = index.find(ring);
    const met = first[number];
    // The other foot's is mirrored to the last digit, so that what is prepared for one serves both.
    const other = mirrored && met?.distance === distance ? met : undefined;
    const laying = other ? mirror(other.laying) : layingOutline(ring, distance);
    first[number] ??= { kind, distance, laying };
    return inTurns(laying, kind, turns, outlines.length, other?.kind);
  });
  return { shapes, overlaps: new Overlaps(shapes) };
}

/** A piece let out by half the knife room, with few corners; never less than that. */
function layingOutline(ring: Ring, distance: number): Ring {
  const curve = offsetCurve(ring, distance);
  const simple = simplifyOutward(crossesItself(curve) ? letOut(ring, distance) : curve, COARSENESS);
  return crossesItself(simple) ? letOut(ring, distance) : simple;
}

/** Which kinds of pieces are of one outline and may lie the same ways: the outline of each kind, and its first kind. */
function outlinesOf(pieces: readonly Piece[]): { readonly of: readonly number[]; readonly first: readonly number[] } {
  const first: number[] = [];
  const of = pieces.map(({ ring, way }, kind) => {
    // Written out in full the outlines of a large stock take as long as a short task searches.
    const known = first.findIndex((one) => sameRing(pieces[one]!.ring, ring) && sameWay(pieces[one]!.way, way));
    return known < 0 ? first.push(kind) - 1 : known;
  });
  return { of, first };
}

function sameWay(one: Way, other: Way): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}

/**
 * Turns in which each kind of piece may lie: those in which its outline lies in a layout, and others that its way allows.
 */
export function turnsFor(pieces: readonly Piece[], layout: Layout): readonly (readonly number[])[] {
  const outlines = outlinesOf(pieces);
  const { first } = outlines;
  const lies = first.map(() => new Set<number>());
  for (const { piece, turn } of allPlacements(layout)) lies[outlines.of[piece]!]!.add(wholeTurn(turn));
  const turns = first.map((kind, outline) => {
    const { way } = pieces[kind]!;
    const all = [...lies[outline]!, ...further(way, lies[outline]!.size, first.length)];
    const both = all.flatMap((turn) => (endsMaySwap(way) ? [turn, turn + 180] : [turn]));
    return [...new Set(both.map(wholeTurn))].sort((a, b) => a - b);
  });
  return outlines.of.map((outline) => turns[outline]!);
}

/** Turns beside those in which a piece lies already. */
function further(way: Way, known: number, kinds: number): readonly number[] {
  switch (way.kind) {
    case 'any': {
      const count = TURNS.find((turns) => turns * kinds <= MOST_SHAPES);
      if (count) return Array.from({ length: count }, (_, i) => (i * 360) / count);
      return known > 0 ? [] : [0, 90];
    }
    case 'within': {
      const shares = WITHIN.find(({ length }) => 2 * length * kinds <= MOST_SHAPES) ?? [0];
      return shares.map((share) => share * way.degrees);
    }
    default:
      return [0];
  }
}
