import { type Feet, piecesPerSheet as perSheet, type PerSheet } from '../core/cutting/pattern/pieces-per-sheet';
import type { SheetFormat } from '../core/cutting/sheet/sheet';
import type { Way } from '../core/cutting/sheet/way';
import { area } from '../core/geometry/area';
import { box } from '../core/geometry/box';
import { edgeLength } from '../core/geometry/edge-length';
import { hollows } from '../core/geometry/hollows';
import type { Ring } from '../core/geometry/ring';
import { simplifyOutward } from '../core/geometry/simplify-outward';
import { Problem } from '../core/problem';
import { type Cell, type Cells, isBlank, isLeftOut, readChoice, readNumber, readsAsNumber } from '../tables/cell';
import { readLength, readLengthOr, readOutline } from './arguments';

/** Knife room and edge trim where nothing else is said, mm: the same as in Bottom stock. */
export const USUAL = { knifeRoom: 4, edgeTrim: 10 } as const;

/** A piece this many times as long as it is wide is a line rather than a piece. */
const THINNEST = 500;

/** More points than a knife follows; more would take a cell too long. */
const MOST_POINTS = 500;

/**
 * More hollows than this, and no piece of a bottom was meant: 40 take a cell two seconds, 120 took minutes, for each may hook
 * into each. A rough edge is smoothed outwards, by so many mm at most, before they count.
 */
const MOST_HOLLOWS = 40;
const ROUGH = 1;

/** The outline of a piece that is to lie on a sheet. */
function readPiece(cells: Cells): Ring {
  const given = readOutline(cells);
  if (given.length > MOST_POINTS) {
    throw new Problem(
      'invalid',
      { argument: 'outline' },
      `it has ${given.length} points; ${MOST_POINTS} is the most for laying it on a sheet, so leave some out`,
    );
  }
  const ring = hollows(given, 0) > MOST_HOLLOWS ? simplifyOutward(given, ROUGH) : given;
  const count = hollows(ring, 0);
  if (count > MOST_HOLLOWS) {
    throw new Problem(
      'invalid',
      { argument: 'outline' },
      `it has ${count} hollows; ${MOST_HOLLOWS} is the most for laying it on a sheet, so smooth its edge`,
    );
  }
  const { left, right, bottom, top } = box(ring);
  const long = Math.max(right - left, top - bottom);
  // Twice the area over the edge length is the width of a strip.
  if (((2 * area(ring)) / edgeLength(ring)) * THINNEST < long) {
    throw new Problem(
      'invalid',
      { argument: 'outline' },
      'it is hardly wider than a line; check its points and their mm',
    );
  }
  return ring;
}

function readFormat(width: Cell, length: Cell, knifeRoom: Cell, edgeTrim: Cell): SheetFormat {
  return {
    width: readLength(width, 'sheet_width', { above: 0, most: 20_000 }),
    length: readLength(length, 'sheet_length', { above: 0, most: 20_000 }),
    knifeRoom: readLengthOr(knifeRoom, 'knife_room', USUAL.knifeRoom, { most: 50 }),
    edgeTrim: readLengthOr(edgeTrim, 'edge_trim', USUAL.edgeTrim, { most: 500 }),
  };
}

/** More pieces on a sheet than this are a slip in the units. */
const MOST_PIECES = 5000;

/** How a piece may lie: in words, or so many degrees to either side of the sheet's length. */
function readWay(cell: Cell): Way {
  if (isBlank(cell)) return { kind: 'any' };
  if (readsAsNumber(cell)) {
    return { kind: 'within', degrees: readNumber(cell, { least: 0, most: 90 }, { argument: 'direction' }) };
  }
  const word = readChoice(cell, ['any way', 'end for end', 'one way'] as const, { argument: 'direction' });
  return { kind: ({ 'any way': 'any', 'end for end': 'endForEnd', 'one way': 'oneWay' } as const)[word] };
}

/** Of FIRSTWASTE, as core takes them: without knife room there is none. */
export function readFirstWaste(outline: Cells, knifeRoom: Cell, direction: Cell): [Ring, number, Way] {
  return [readPiece(outline), readLengthOr(knifeRoom, 'knife_room', 0, { most: 50 }), readWay(direction)];
}

function readFeet(cell: Cell): Feet {
  if (isLeftOut(cell)) return 'one';
  return readChoice(cell, ['one foot', 'both feet'] as const, { argument: 'feet' }) === 'both feet' ? 'both' : 'one';
}

/** A layout of one piece takes a while, and three functions ask for the same one. */
let last: { readonly key: string; readonly result: PerSheet } | undefined;

/** A sheet that is cut from one piece throughout. */
export interface SheetOfOne extends PerSheet {
  readonly ring: Ring;
  readonly format: SheetFormat;
  readonly way: Way;
  readonly feet: Feet;
}

/** Reads the arguments of PIECESPERSHEET and lays the piece. @throws Problem where it fits no sheet, or too often. */
export function sheetOfOne(
  ...[outline, width, length, knifeRoom, edgeTrim, direction, feet]: readonly [Cells, ...Cell[]]
): SheetOfOne {
  const ring = readPiece(outline);
  const format = readFormat(width, length, knifeRoom, edgeTrim);
  const way = readWay(direction);
  const both = readFeet(feet);
  const most = Math.floor((format.width * format.length) / area(ring));
  if (most > MOST_PIECES) {
    throw new Problem(
      'unavailable',
      { argument: 'outline' },
      `some ${most} pieces are too many to lay out; check its mm, or give a smaller sheet`,
    );
  }
  const key = JSON.stringify([ring, format, way, both]);
  if (last?.key !== key) last = { key, result: perSheet(ring, format, way, 'outline', both) };
  return { ring, format, way, feet: both, ...last.result };
}
