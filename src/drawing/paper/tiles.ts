import type { Box, Ring } from '../../core/geometry/ring';
import { circle, group, line, type Marks, marks, text } from '../mark';
import { movedMarks } from '../move-marks';
import type { TrueArea } from './true-size';

/** Pages that are joined overlap by this, mm. */
export const OVERLAP = 10;

/** One of the tiles that a drawing too large for its paper is cut into. */
export interface Tile {
  /** "A1" is the upper left one; letters run down, numbers across. */
  readonly name: string;
  readonly row: number;
  readonly column: number;
  /** The part of the drawing that it shows, y downward, mm. */
  readonly shows: Box;
  /** Names of the tiles on its sides. */
  readonly beside: readonly string[];
}

/**
 * The fewest tiles of equal size that hold a drawing.
 * @param of the box about it, y downward
 */
export function tilesOf(of: Box, area: Pick<TrueArea, 'width' | 'height'>): readonly Tile[] {
  const [wide, high] = [of.right - of.left, of.top - of.bottom];
  const columns = countFor(wide, area.width);
  const rows = countFor(high, area.height);
  const [w, h] = [sideOf(wide, columns), sideOf(high, rows)];
  const nameOf = (row: number, column: number) => `${String.fromCharCode(65 + row)}${column + 1}`;
  return Array.from({ length: rows * columns }, (_, i): Tile => {
    const [row, column] = [Math.floor(i / columns), i % columns];
    const [left, bottom] = [of.left + column * (w - OVERLAP), of.bottom + row * (h - OVERLAP)];
    const neighbours = [
      [row, column - 1],
      [row - 1, column],
      [row, column + 1],
      [row + 1, column],
    ].filter(([r, c]) => r! >= 0 && c! >= 0 && r! < rows && c! < columns);
    return {
      name: nameOf(row, column),
      row,
      column,
      shows: { left, right: left + w, bottom, top: bottom + h },
      beside: neighbours.map(([r, c]) => nameOf(r!, c!)),
    };
  });
}

function countFor(length: number, room: number): number {
  return length <= room ? 1 : Math.ceil((length - OVERLAP) / (room - OVERLAP) - 1e-9);
}

function sideOf(length: number, count: number): number {
  return (length + OVERLAP * (count - 1)) / count;
}

/** A ringed cross by which two pages are laid on each other; on both it stands at the same place of the drawing. */
export interface JoiningMark {
  readonly x: number;
  readonly y: number;
  /** Rings about the cross: one, or two. */
  readonly rings: 1 | 2;
}

/** What a tile shares with the next one: a strip with two lines, four ringed crosses, and a letter on either side. */
export interface Seam {
  readonly letter: string;
  /** Whether the strip runs from top to bottom. */
  readonly upright: boolean;
  readonly strip: Box;
  readonly crosses: readonly JoiningMark[];
}

/** The seams of tiles in the drawing's own measure; no two have their crosses alike, so that pages fit only one way. */
export function seamsOf(tiles: readonly Tile[]): readonly Seam[] {
  const seams: Seam[] = [];
  for (const tile of tiles) {
    for (const upright of [true, false]) {
      const next = tiles.find(({ row, column }) =>
        upright ? row === tile.row && column === tile.column + 1 : column === tile.column && row === tile.row + 1,
      );
      if (next) seams.push(seam(letterOf(seams.length), upright, tile.shows, next.shows, seams.length));
    }
  }
  return seams;
}

/** A … Z, then AA, AB … */
function letterOf(i: number): string {
  const rest = String.fromCharCode(65 + (i % 26));
  return i < 26 ? rest : letterOf(Math.floor(i / 26) - 1) + rest;
}

function seam(letter: string, upright: boolean, one: Box, other: Box, number: number): Seam {
  const strip: Box = upright
    ? { left: other.left, right: one.right, bottom: one.bottom, top: one.top }
    : { left: one.left, right: one.right, bottom: other.bottom, top: one.top };
  const [from, to] = upright ? [strip.bottom, strip.top] : [strip.left, strip.right];
  // Unevenly from both ends, and elsewhere on each seam.
  const shift = (number % 5) * 0.03;
  const places = [from + (0.2 + shift) * (to - from), to - (0.11 + shift) * (to - from)];
  const edges = upright ? [strip.left, strip.right] : [strip.bottom, strip.top];
  const crosses = places.flatMap((place, i) =>
    edges.map((edge): JoiningMark => {
      const [x, y] = upright ? [edge, place] : [place, edge];
      return { x, y, rings: i === 0 ? 1 : 2 };
    }),
  );
  return { letter, upright, strip, crosses };
}

/** A tile's marks on its page: what it shows of the drawing, with its seams. */
export function tileMarks(drawing: Marks, tile: Tile, seams: readonly Seam[], { left, top }: TrueArea): Marks {
  const { shows } = tile;
  const own = seams.filter(({ strip }) => within(strip, shows));
  const clip: Ring = [
    [shows.left, shows.bottom],
    [shows.right, shows.bottom],
    [shows.right, shows.top],
    [shows.left, shows.top],
  ];
  const [dx, dy] = [left - shows.left, top - shows.bottom];
  return movedMarks(
    marks(
      group(drawing, { clip }),
      own.flatMap((one) => seamMarks(one, shows)),
    ),
    0,
    dx,
    dy,
  );
}

/** Where a point of the drawing stands on the page of a tile. */
export function onTile({ shows }: Tile, { left, top }: TrueArea, x: number, y: number): readonly [number, number] {
  return [x + left - shows.left, y + top - shows.bottom];
}

function within(strip: Box, shows: Box): boolean {
  const off = 1e-6;
  return (
    strip.left >= shows.left - off &&
    strip.right <= shows.right + off &&
    strip.bottom >= shows.bottom - off &&
    strip.top <= shows.top + off
  );
}

const CROSS = 4;
const RING = 2;

function seamMarks({ letter, upright, strip, crosses }: Seam, shows: Box): Marks {
  const { left, right, bottom, top } = strip;
  const lines = upright
    ? [line('narrow', left, bottom, left, top), line('narrow', right, bottom, right, top)]
    : [line('narrow', left, bottom, right, bottom), line('narrow', left, top, right, top)];
  const before = upright ? right >= shows.right - 1e-6 : top >= shows.top - 1e-6;
  const letters = [crosses[0], crosses[2]].flatMap((cross) => {
    if (!cross) return [];
    // Beside the strip, on the tile's own side of it.
    const x = upright ? (before ? left - 5.5 : right + 5.5) : cross.x + 6;
    const y = upright ? cross.y + 2 : before ? bottom - 3 : top + 7;
    return [text(x, y, letter, 'bold', 'middle', { size: 6 })];
  });
  return marks(
    lines,
    crosses.flatMap(({ x, y, rings }) =>
      marks(
        line('narrow', x - CROSS, y, x + CROSS, y),
        line('narrow', x, y - CROSS, x, y + CROSS),
        circle(x, y, RING, { pen: 'narrow' }),
        rings === 2 && circle(x, y, 1.2, { pen: 'narrow' }),
      ),
    ),
    letters,
  );
}
