import { area } from '../../geometry/area';
import { convex } from '../../geometry/convex';
import { letOutArea } from '../../geometry/let-out-area';
import { mirror } from '../../geometry/mirror';
import type { Ring } from '../../geometry/ring';
import { DoubleLattice } from './double-lattice';
import { fillBlock, type PatternFill, placesIn, reachOf } from './fill-block';
import { mustFit } from '../sheet/fitting-turn';
import { Lays } from '../rows/lay';
import type { Placement } from '../sheet/layout';
import type { Fineness } from '../../numerics/minimise';
import { alternateRows, COARSE, doubleRows, cuttingArea, type Pattern, singleRows } from './pattern';
import { rowSequence } from './row-sequence';
import { roomOn, type SheetFormat } from '../sheet/sheet';
import { soundPattern } from './sound-pattern';
import { turnsToTry } from './turns';
import { mustBeSound, verifySheets } from '../sheet/verify-layout';
import { endsMaySwap, type Way, wholeTurn } from '../sheet/way';

/** How many of one piece a sheet takes, where they lie, and how many it could take at most. */
export interface PerSheet {
  readonly count: number;
  readonly placements: readonly Placement[];
  /** No layout can hold more: the room on the sheet over the area of the piece let out by half the knife room (derived). */
  readonly bound: number;
  /** Net area of the pieces over the area of the sheet. */
  readonly areaUse: number;
}

/** Whether a sheet is cut for one foot, or for left and right. */
export type Feet = 'one' | 'both';

/** A pattern with its rows along the sheet's length or across it. */
export interface Rows {
  readonly pattern: Pattern;
  readonly along: boolean;
}

interface Rectangle {
  readonly x: number;
  readonly y: number;
  readonly length: number;
  readonly width: number;
}

interface Filling {
  readonly rows: Rows;
  readonly fill: PatternFill;
  readonly count: number;
}

/** Cuts tried each way for two blocks of rows, and patterns tried in such blocks. */
const CUTS = 48;
const PATTERNS_IN_BLOCKS = 32;

/**
 * The most of one piece that rows place on a sheet: rows of the piece one way round, end for end row by row, end for end
 * within a row or hooked into each other in pairs, along or across the sheet, in one block or in two that a straight cut
 * parts, or rows of all kinds in whatever sequence holds the most.
 * @param feet 'both' lays rows of the piece and rows of its mirror image, which is piece 1 of the placements
 * @param rowsOf gives the rows to try, for whoever keeps them: all sheets and both answers for `feet` have the same
 * @throws Problem where the piece does not fit on the sheet.
 */
export function piecesPerSheet(
  ring: Ring,
  format: SheetFormat,
  way: Way,
  argument = 'outline',
  feet: Feet = 'one',
  rowsOf: RowsOf = rowsToTry,
): PerSheet {
  const fitting = mustFit(ring, format, way, argument);
  const { length, width, offset } = roomOn(format);
  const sheet: Rectangle = { x: 0, y: 0, length, width };
  const bound = Math.floor((length * width) / letOutArea(ring, format.knifeRoom / 2) + 1e-9);
  const choices = rowsOf(ring, format.knifeRoom / 2, way, fitting);
  const blocks = twoBlocks(choices, sheet);
  const count = blocks.reduce((sum, block) => sum + block.count, 0);
  const sequenced = inSequence(ring, format.knifeRoom / 2, way, feet, choices, sheet, count, bound);
  const placements = sequenced
    ? sequenced.map((one) => ({ ...one, x: one.x + offset, y: one.y + offset }))
    : blocks.flatMap((block) => placed(block, offset));
  const rings = feet === 'both' ? [ring, mirror(ring)] : [ring];
  const pieces = rings.map((own, i) => ({
    key: argument,
    ring: own,
    count: placements.filter(({ piece }) => piece === i).length,
    way,
  }));
  mustBeSound(verifySheets(pieces, format, [placements]));
  const areaUse = (placements.length * area(ring)) / (format.width * format.length);
  return { count: placements.length, placements, bound, areaUse };
}

/** Directions of rows, the densest first, in which rows of all kinds are put in sequence. */
const SEQUENCED = 6;

/** Rows in sequence that hold more pieces than `least`, of the densest directions; undefined where none does. */
function inSequence(
  ring: Ring,
  halfRoom: number,
  way: Way,
  feet: Feet,
  choices: readonly Rows[],
  { length, width }: Rectangle,
  least: number,
  most: number,
): readonly Placement[] | undefined {
  const own = Lays.of(ring, halfRoom);
  const lays = feet === 'both' ? [own, own.mirrored] : [own];
  const tried = new Set<string>();
  let best: readonly Placement[] | undefined;
  for (const { pattern, along } of choices) {
    const [first] = pattern.members;
    const turn = first.lay.turn % 180;
    if (tried.size === SEQUENCED) break;
    if (tried.has(`${turn} ${along}`)) continue;
    tried.add(`${turn} ${along}`);
    const turns = endsMaySwap(way) ? [first.lay.turn, first.lay.turn + 180] : [first.lay.turn];
    // Seen along rows that run across the sheet a piece is turned a quarter further than it lies.
    const frame = along ? 0 : 90;
    const kinds = lays.flatMap((of, piece) =>
      turns.map((one) => wholeTurn(piece === 0 ? one : 2 * frame - one)).map((one) => ({ piece, lay: of.at(one) })),
    );
    const [reach, height] = along ? [length, width] : [width, length];
    const found = rowSequence(kinds, reach, height, best?.length ?? least, most);
    if (!found) continue;
    best = found.rows.flatMap(({ kind: { piece, lay }, x, y, count }) =>
      Array.from({ length: count }, (_, i): Placement => {
        const u = x + i * found.pitch;
        return along
          ? { piece, x: u, y, turn: lay.turn }
          : { piece, x: y, y: width - u, turn: wholeTurn(lay.turn - 90) };
      }),
    );
  }
  return best;
}

/**
 * All rows that a piece may be laid in, the densest first.
 * @param halfRoom half the knife room, mm
 * @param fitting a turn in which it fits on the sheet
 */
export type RowsOf = (ring: Ring, halfRoom: number, way: Way, fitting: number) => readonly Rows[];

export function rowsToTry(ring: Ring, halfRoom: number, way: Way, fitting: number): readonly Rows[] {
  const lays = Lays.of(ring, halfRoom);
  const turns = [...new Set([...turnsToTry(way), wholeTurn(fitting)])];
  // Rows across are the same rows with the piece turned back by a quarter.
  const seen = way.kind === 'any' ? turns : [...turns, ...turns.map((turn) => turn + 90)];
  const rows = seen.flatMap((turn, i) => {
    const patterns = patternsAt(lays, turn, way);
    if (way.kind === 'any') return patterns.flatMap((pattern) => [true, false].map((along) => ({ pattern, along })));
    return patterns.map((pattern) => ({ pattern, along: i < turns.length }));
  });
  if (endsMaySwap(way)) rows.push(...alternatesToTry(lays, seen, way, turns.length));
  const all = [...rows, ...latticesToTry(ring, halfRoom, way)];
  return all.sort((a, b) => cuttingArea(a.pattern) - cuttingArea(b.pattern));
}

/** Double lattices of a piece that is not convex, in which it may hook into itself as no rows let it. */
function latticesToTry(ring: Ring, halfRoom: number, way: Way): readonly Rows[] {
  if (!endsMaySwap(way) || convex(ring)) return [];
  const lattice = new DoubleLattice(ring, 2 * halfRoom);
  const sound = (pattern: Pattern, along: boolean): Rows[] =>
    soundPattern(pattern, ring, 2 * halfRoom) ? [{ pattern, along }] : [];
  if (way.kind === 'any') return sound(lattice.densest(), true).flatMap((rows) => [rows, { ...rows, along: false }]);
  const turns = way.kind === 'within' && way.degrees > 0 ? [-way.degrees, 0, way.degrees] : [0];
  return turns.flatMap((turn) => [
    ...sound(lattice.densestAt(turn), true),
    ...sound(lattice.densestAt(turn + 90), false),
  ]);
}

function patternsAt(lays: Lays, turn: number, way: Way): readonly Pattern[] {
  const piece = lays.at(wholeTurn(turn));
  const single = singleRows(piece, COARSE);
  return endsMaySwap(way) ? [doubleRows(piece, lays.at(wholeTurn(turn + 180)), COARSE), single] : [single];
}

/** A first look at rows end for end within, and how many directions are then looked at closely. */
const GLANCE: Fineness = { places: 8, steps: 2 };
const ALTERNATES = 12;

/** Rows in which the piece stands end for end beside itself: they take by far the longest, so most get a glance only. */
function alternatesToTry(lays: Lays, turns: readonly number[], way: Way, along: number): readonly Rows[] {
  const at = (turn: number, fineness: Fineness) =>
    alternateRows(lays.at(wholeTurn(turn)), lays.at(wholeTurn(turn + 180)), fineness);
  let close = turns.map((turn, i) => ({ turn, i }));
  if (turns.length > ALTERNATES) {
    const seen = close.map(({ turn, i }) => {
      const pattern = at(turn, GLANCE);
      return { turn, i, ground: pattern ? cuttingArea(pattern) : Infinity };
    });
    close = seen.sort((a, b) => a.ground - b.ground || a.i - b.i).slice(0, ALTERNATES);
  }
  return close.flatMap(({ turn, i }) => {
    const pattern = at(turn, COARSE);
    if (!pattern) return [];
    if (way.kind === 'any') return [true, false].map((one) => ({ pattern, along: one }));
    return [{ pattern, along: i < along }];
  });
}

/** One block, or two side by side or one beyond the other, that together hold the most. */
function twoBlocks(choices: readonly Rows[], sheet: Rectangle): readonly Block[] {
  const whole = fullest(choices, sheet);
  let best = [{ ...whole, rectangle: sheet }];
  let most = whole.count;
  const promising = [whole.rows, ...choices.slice(0, PATTERNS_IN_BLOCKS)];
  const upright = choices.filter(({ pattern }) => pattern.members[0].lay.turn % 90 === 0);
  const few = [...new Set([...promising, ...upright])];
  for (const side of ['length', 'width'] as const) {
    let before = 0;
    for (let cut = 1; cut < CUTS; cut++) {
      const near = { ...sheet, [side]: (sheet[side] * cut) / CUTS };
      const first = fullest(few, near);
      if (first.count === 0 || first.count === before) continue;
      before = first.count;
      const used = reachIn(first, near)[side];
      const far =
        side === 'length'
          ? { ...sheet, x: used, length: sheet.length - used }
          : { ...sheet, y: used, width: sheet.width - used };
      const second = fullest(few, far);
      if (first.count + second.count > most) {
        most = first.count + second.count;
        best = [
          // Drawn in to what it uses: rows across the sheet begin at the far side of their rectangle.
          { ...first, rectangle: { ...sheet, [side]: used } },
          { ...second, rectangle: far },
        ];
      }
    }
  }
  return best;
}

interface Block extends Filling {
  readonly rectangle: Rectangle;
}

function fullest(choices: readonly Rows[], { length, width }: Rectangle): Filling {
  let best: Filling | undefined;
  for (const rows of choices) {
    const { pattern, along } = rows;
    // What the rectangle could hold were there no edges, and two more for luck at the edges, is out of reach below the best.
    if (best && (1.05 * length * width) / cuttingArea(pattern) + 2 <= best.count) continue;
    const fill = along ? fillBlock(pattern, length, width) : fillBlock(pattern, width, length);
    if (!best || fill.count > best.count) best = { rows, fill, count: fill.count };
  }
  if (!best) throw new Error('No rows to choose from.');
  return best;
}

function reachIn({ rows, fill }: Filling, { length, width }: Rectangle): { length: number; width: number } {
  if (rows.along) {
    const reach = reachOf(fill, length, width);
    return { length: reach.length, width: reach.height };
  }
  const reach = reachOf(fill, width, length);
  return { length: reach.height, width: reach.length };
}

/** The placements of a block; rows across the sheet are rows along turned back by a quarter. */
function placed({ rows, fill, rectangle }: Block, offset: number): readonly Placement[] {
  const { x, y, length, width } = rectangle;
  const places = rows.along ? placesIn(fill, length, width) : placesIn(fill, width, length);
  return places.map(({ lay, x: u, y: v }) =>
    rows.along
      ? { piece: 0, x: offset + x + u, y: offset + y + v, turn: lay.turn }
      : { piece: 0, x: offset + x + v, y: offset + y + width - u, turn: wholeTurn(lay.turn - 90) },
  );
}
