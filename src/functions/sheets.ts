import { firstWaste as firstWasteOf } from '../core/cutting/first-waste';
import { type Feet, piecesPerSheet as perSheet, type PerSheet } from '../core/cutting/pieces-per-sheet';
import type { SheetFormat } from '../core/cutting/sheet';
import type { Way } from '../core/cutting/way';
import { area } from '../core/geometry/area';
import { box } from '../core/geometry/box';
import { edgeLength } from '../core/geometry/edge-length';
import { Problem } from '../core/problem';
import { type Cell, type Cells, isBlank, readChoice, readNumber } from '../tables/cell';
import { answer, IN_PERCENT, measured } from './answer';
import { readLength, readLengthOr, readOutline } from './arguments';

/** Knife room and edge trim where nothing else is said, mm: the same as in Bottom stock. */
const USUAL = { knifeRoom: 4, edgeTrim: 10 } as const;

/** A piece this many times as long as it is wide is a line rather than a piece. */
const THINNEST = 500;

/** More points than a knife follows; more would take a cell too long. */
const MOST_POINTS = 500;

function readPiece(cells: Cells) {
  const ring = readOutline(cells);
  if (ring.length > MOST_POINTS) {
    throw new Problem(
      'invalid',
      { argument: 'outline' },
      `it has ${ring.length} points; ${MOST_POINTS} is the most for laying it on a sheet, so leave some out`,
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
  if (typeof cell === 'number') {
    return { kind: 'within', degrees: readNumber(cell, { least: 0, most: 90 }, { argument: 'lies' }) };
  }
  const word = readChoice(cell, ['any way', 'end for end', 'one way'] as const, { argument: 'lies' });
  return { kind: ({ 'any way': 'any', 'end for end': 'endForEnd', 'one way': 'oneWay' } as const)[word] };
}

function readFeet(cell: Cell): Feet {
  if (isBlank(cell)) return 'one';
  return readChoice(cell, ['one foot', 'both feet'] as const, { argument: 'feet' }) === 'both feet' ? 'both' : 'one';
}

/** A layout of one piece takes a while, and three functions ask for the same one. */
let last: { readonly key: string; readonly result: PerSheet } | undefined;

function layout(...[outline, width, length, knifeRoom, edgeTrim, lies, feet]: readonly [Cells, ...Cell[]]) {
  const ring = readPiece(outline);
  const format = readFormat(width, length, knifeRoom, edgeTrim);
  const way = readWay(lies);
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
  return { ring, format, ...last.result };
}

/**
 * How many of one piece a sheet takes, laid in rows of any sequence, hooked into each other, in one block or two.
 * @customfunction PIECESPERSHEET
 * @param {any[][]} outline Outline of the piece, its length along x: two columns, x and y in mm.
 * @param {any} sheet_width Width of the sheet, mm.
 * @param {any} sheet_length Length of the sheet, of leather along the backbone, mm.
 * @param {any} [knife_room] Room between pieces, mm; without it 4.
 * @param {any} [edge_trim] Lost along each edge, mm; without it 10.
 * @param {any} [lies] any way, end for end, one way, or degrees to either side of the length; without it any way.
 * @param {any} [feet] one foot, or both feet for left and right pieces on the sheet; without it one foot.
 * @returns {number} Pieces.
 */
export function piecesPerSheet(
  outline: any[][],
  sheet_width: any,
  sheet_length: any,
  knife_room?: any,
  edge_trim?: any,
  lies?: any,
  feet?: any,
): number {
  return answer(() => layout(outline, sheet_width, sheet_length, knife_room, edge_trim, lies, feet).count);
}

/**
 * Share of a sheet that one piece, cut from it as often as it goes, uses.
 * @customfunction AREAUSE
 * @param {any[][]} outline Outline of the piece, its length along x: two columns, x and y in mm.
 * @param {any} sheet_width Width of the sheet, mm.
 * @param {any} sheet_length Length of the sheet, of leather along the backbone, mm.
 * @param {any} [knife_room] Room between pieces, mm; without it 4.
 * @param {any} [edge_trim] Lost along each edge, mm; without it 10.
 * @param {any} [lies] any way, end for end, one way, or degrees to either side of the length; without it any way.
 * @param {any} [feet] one foot, or both feet for left and right pieces on the sheet; without it one foot.
 * @returns {any} Share of the whole sheet, 0 to 1.
 */
export function areaUse(
  outline: any[][],
  sheet_width: any,
  sheet_length: any,
  knife_room?: any,
  edge_trim?: any,
  lies?: any,
  feet?: any,
): any {
  return measured(() => {
    const { ring, format, count } = layout(outline, sheet_width, sheet_length, knife_room, edge_trim, lies, feet);
    return (count * area(ring)) / (format.width * format.length);
  }, IN_PERCENT);
}

/**
 * First waste: what is lost between interlocked pieces in the densest endless rows, as a share of the cutting area. Older books count it on the net area.
 * @customfunction FIRSTWASTE
 * @param {any[][]} outline Outline of the piece, its length along x: two columns, x and y in mm.
 * @param {any} [knife_room] Room between pieces, mm; without it 0.
 * @param {any} [lies] any way, end for end, one way, or degrees to either side of the length; without it any way.
 * @returns {any} Share of the cutting area, 0 to 1.
 */
export function firstWaste(outline: any[][], knife_room?: any, lies?: any): any {
  return measured(
    () => firstWasteOf(readPiece(outline), readLengthOr(knife_room, 'knife_room', 0, { most: 50 }), readWay(lies)),
    IN_PERCENT,
  );
}

/**
 * Where each piece lies on a sheet that is cut from one piece throughout.
 * @customfunction PLACEMENTS
 * @param {any[][]} outline Outline of the piece, its length along x: two columns, x and y in mm.
 * @param {any} sheet_width Width of the sheet, mm.
 * @param {any} sheet_length Length of the sheet, of leather along the backbone, mm.
 * @param {any} [knife_room] Room between pieces, mm; without it 4.
 * @param {any} [edge_trim] Lost along each edge, mm; without it 10.
 * @param {any} [lies] any way, end for end, one way, or degrees to either side of the length; without it any way.
 * @param {any} [feet] one foot, or both feet for left and right pieces on the sheet; without it one foot.
 * @returns {any[][]} A table: number, place of the outline's origin along and across the sheet in mm, turn in degrees, foot; then pieces, most possible, area use.
 */
export function placements(
  outline: any[][],
  sheet_width: any,
  sheet_length: any,
  knife_room?: any,
  edge_trim?: any,
  lies?: any,
  feet?: any,
): any[][] {
  return answer(() => {
    const {
      ring,
      format,
      count,
      bound,
      placements: places,
    } = layout(outline, sheet_width, sheet_length, knife_room, edge_trim, lies, feet);
    return [
      ['No.', 'Along\nmm', 'Across\nmm', 'Turn\n°', 'Foot'],
      // The outline is the left foot's, as all are, and the right foot's is its mirror image.
      ...places.map(({ piece, x, y, turn }, i) => [i + 1, x, y, turn, piece === 0 ? 'L' : 'R']),
      ['Pieces', count, '', '', ''],
      ['Most possible', bound, '', '', ''],
      ['Area use %', (100 * count * area(ring)) / (format.width * format.length), '', '', ''],
    ];
  });
}
