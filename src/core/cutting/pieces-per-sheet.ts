import { convex } from '../geometry/convex';
import { letOutArea } from '../geometry/let-out-area';
import type { Ring } from '../geometry/ring';
import { DoubleLattice } from './double-lattice';
import { fillBlock, type PatternFill, placesIn, reachOf } from './fill-block';
import { mustFit } from './fitting-turn';
import { Lays } from './lay';
import type { Placement } from './layout';
import { alternateRows, COARSE, doubleRows, groundOf, type Pattern, singleRows } from './pattern';
import { roomOn, type SheetFormat } from './sheet';
import { soundPattern } from './sound-pattern';
import { turnsToTry } from './turns';
import { mustBeSound, verifyLayout } from './verify-layout';
import { endsMaySwap, type Way, wholeTurn } from './way';

/** How many of one piece a sheet takes, where they lie, and how many it could take at most. */
export interface PerSheet {
  readonly count: number;
  readonly placements: readonly Placement[];
  /** No layout can hold more: the room on the sheet over the area of the piece let out by half the knife room (derived). */
  readonly bound: number;
}

/** A pattern with its rows along the sheet's length or across it. */
interface Rows {
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
 * parts.
 * @throws Problem where the piece does not fit on the sheet.
 */
export function piecesPerSheet(ring: Ring, format: SheetFormat, way: Way, argument = 'outline'): PerSheet {
  const fitting = mustFit(ring, format, way, argument);
  const { length, width, offset } = roomOn(format);
  const sheet: Rectangle = { x: 0, y: 0, length, width };
  const choices = rowsToTry(ring, format.knifeRoom / 2, way, fitting);
  const blocks = twoBlocks(choices, sheet);
  const placements = blocks.flatMap((block) => placed(block, offset));
  const pieces = [{ key: argument, ring, count: placements.length, way }];
  mustBeSound(verifyLayout(pieces, format, [placements]));
  const bound = Math.floor((length * width) / letOutArea(ring, format.knifeRoom / 2) + 1e-9);
  return { count: placements.length, placements, bound };
}

/** All rows that the piece may be laid in, the densest first. */
function rowsToTry(ring: Ring, halfRoom: number, way: Way, fitting: number): readonly Rows[] {
  const lays = new Lays(ring, halfRoom);
  const turns = [...new Set([...turnsToTry(way), wholeTurn(fitting)])];
  const rows = turns.flatMap((turn) => {
    // The patterns of rows along, and of the same rows across, in which the piece lies turned back by a quarter.
    const along = patternsAt(lays, turn, way).map((pattern) => ({ pattern, along: true }));
    if (way.kind === 'any') return [...along, ...along.map(({ pattern }) => ({ pattern, along: false }))];
    return [...along, ...patternsAt(lays, turn + 90, way).map((pattern) => ({ pattern, along: false }))];
  });
  const all = [...rows, ...latticesToTry(ring, halfRoom, way)];
  return all.sort((a, b) => groundOf(a.pattern) - groundOf(b.pattern));
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
  if (!endsMaySwap(way)) return [single];
  const reversed = lays.at(wholeTurn(turn + 180));
  const alternate = alternateRows(piece, reversed, COARSE);
  return [doubleRows(piece, reversed, COARSE), single, ...(alternate ? [alternate] : [])];
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
    if (best && (1.05 * length * width) / groundOf(pattern) + 2 <= best.count) continue;
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
