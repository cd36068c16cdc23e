import { itemAt } from '../../core/item-at';
import { packRows } from '../../core/cutting/rows/pack-rows';
import { fittingTurn } from '../../core/cutting/sheet/fitting-turn';
import type { Placement } from '../../core/cutting/sheet/layout';
import type { Piece } from '../../core/cutting/sheet/piece';
import type { SheetFormat } from '../../core/cutting/sheet/sheet';
import { roundedArea } from '../../core/geometry/area';
import { box, boxMoved } from '../../core/geometry/box';
import { moved } from '../../core/geometry/moved';
import { rectangleAbout } from '../../core/geometry/rectangle';
import type { Box, Ring } from '../../core/geometry/ring';
import { type Marks, marks } from '../mark';
import { movedMarks } from '../move-marks';
import type { PaperJob } from './chosen';
import { lineKey } from './line-key';
import type { Page } from './page';
import { seamsOf, type Tile, tileMarks, tilesOf } from './tiles';
import {
  CHECK_SIDE,
  checkSquare,
  freeSpot,
  type Spot,
  type TrueArea,
  trueArea,
  trueFrame,
  type TrueTitle,
} from './true-size';

/** Drawings keep this from each other, mm: room for scissors. */
const APART = 4;
/** Joining marks reach so far beyond a tile, mm. */
const TILE_MARGIN = 4.5;

/** What is drawn at true size. */
export interface TrueDrawing {
  /** Such as "Betony 38 L, Lift 3", and "Lift 3". */
  readonly name: string;
  readonly short: string;
  /** The outline whose area it covers, and what it takes up on a page; y upward. */
  readonly ring: Ring;
  readonly ground: Ring;
  /** Its marks about its own origin, y downward, for a page on which it is turned by `turn` degrees counter-clockwise. */
  draw(turn: number): Marks;
}

/** A page at true size as data, for whoever looks for a drawing on it. */
export interface TruePage<T extends TrueDrawing> extends Page {
  readonly drawings: readonly T[];
  readonly tile?: Tile | undefined;
}

/**
 * Drawings that belong together on as few pages as quick rows find; one that is larger than the paper goes over several.
 * @param what they are, and what some of them are called together
 */
export function truePages<T extends TrueDrawing>(
  job: PaperJob,
  what: string,
  drawings: readonly T[],
  holds: (some: readonly T[]) => string,
): readonly TruePage<T>[] {
  const area = trueArea(job.paper);
  const format: SheetFormat = { length: area.width, width: area.height, knifeRoom: APART, edgeTrim: 0.5 };
  const fits = (one: T) => fittingTurn(one.ground, format, { kind: 'any' }) !== undefined;
  const small = drawings.filter(fits);
  const large = drawings.filter((one) => !fits(one));
  return [...sharedPages(job, what, small, holds, format), ...large.flatMap((one) => tiledPages(job, what, one))];
}

/** Drawings laid by the project's own quick rows, the paper as the sheet. */
function sharedPages<T extends TrueDrawing>(
  job: PaperJob,
  what: string,
  drawings: readonly T[],
  holds: (some: readonly T[]) => string,
  format: SheetFormat,
): readonly TruePage<T>[] {
  if (drawings.length === 0) return [];
  return packRows(drawings.map(asPiece), format).map((placements): TruePage<T> => {
    const own = placements.map(({ piece }) => itemAt(drawings, piece));
    const laid = withSquare(
      trueArea(job.paper),
      placements.map(({ piece: _, ...place }, i) => ({ ...place, drawing: itemAt(own, i) })),
      format,
    );
    return {
      ...job.paper,
      name: what,
      drawings: own,
      draw: (n, of) => sharedMarks(job, { what, detail: holds(own) }, laid, n, of),
    };
  });
}

/** A drawing where it lies on its page, as a sheet has its pieces. */
interface LaidDrawing extends Omit<Placement, 'piece'> {
  readonly drawing: TrueDrawing;
}

/** A page of drawings, and the place of its check square where there is one. */
interface LaidPage {
  readonly laid: readonly LaidDrawing[];
  readonly square: Spot | undefined;
}

function asPiece({ name, ground }: TrueDrawing): Piece {
  return { key: name, ring: ground, count: 1, way: { kind: 'any' } };
}

const SQUARE: Piece = {
  key: 'check square',
  ring: rectangleAbout({ left: 0, bottom: 0, right: CHECK_SIDE, top: CHECK_SIDE }),
  count: 1,
  way: { kind: 'any' },
};

/** The check square beside the drawings of a page; they are laid anew where that makes room for it. */
function withSquare(area: TrueArea, laid: readonly LaidDrawing[], format: SheetFormat): LaidPage {
  const square = freeSpot(area, takenBy(area, laid));
  const bare = format.length * format.width - laid.reduce((sum, { drawing }) => sum + roundedArea(drawing.ring), 0);
  if (square || bare < CHECK_SIDE ** 2) return { laid, square };
  const [again, ...more] = packRows([...laid.map(({ drawing }) => asPiece(drawing)), SQUARE], format);
  const own = again?.find(({ piece }) => piece === laid.length);
  if (!again || !own || more.length > 0) return { laid, square };
  const { left, top } = boxMoved(SQUARE.ring, own.turn, own.x, own.y);
  return {
    laid: again.flatMap(({ piece, ...place }) => {
      const drawing = laid[piece]?.drawing;
      return drawing ? [{ ...place, drawing }] : [];
    }),
    square: [area.left + left, area.top + area.height - top],
  };
}

/** Boxes about what lies on a page, y downward. */
function takenBy(area: TrueArea, laid: readonly LaidDrawing[]): readonly Box[] {
  return laid.map(({ drawing, turn, x, y }): Box => {
    const { left, right, bottom, top } = boxMoved(drawing.ground, turn, x, y);
    return {
      left: area.left + left,
      right: area.left + right,
      bottom: area.top + area.height - top,
      top: area.top + area.height - bottom,
    };
  });
}

function sharedMarks(job: PaperJob, title: TrueTitle, { laid, square }: LaidPage, n: number, of: number): Marks {
  const area = trueArea(job.paper);
  const drawn = laid.flatMap(({ drawing, turn, x, y }) =>
    movedMarks(drawing.draw(turn), turn, area.left + x, area.top + area.height - y),
  );
  return marks(
    checkSquare(square),
    drawn,
    trueFrame(job, title, square !== undefined, n, of),
    lineKey(job.paper, drawn),
  );
}

/** The part of a page that tiles use. */
export function tileArea(job: Pick<PaperJob, 'paper'>): TrueArea {
  const { left, top, width, height } = trueArea(job.paper);
  const [m, t] = [TILE_MARGIN, TILE_MARGIN];
  return { left: left + m, top: top + t, width: width - 2 * m, height: height - 2 * t };
}

/** A drawing that is larger than the paper, on as few pages as will do. */
function tiledPages<T extends TrueDrawing>(job: PaperJob, what: string, drawing: T): readonly TruePage<T>[] {
  const turned = [90, 0].map((turn) => {
    // As it is drawn: y downward.
    const { left, right, bottom, top } = box(moved(drawing.ground, turn));
    return { turn, tiles: tilesOf(widened({ left, right, bottom: -top, top: -bottom }), tileArea(job)) };
  });
  const { turn, tiles } = turned.reduce((best, one) => (one.tiles.length < best.tiles.length ? one : best));
  const drawn = () => movedMarks(drawing.draw(turn), turn);
  return tilePages(job, what, drawing, tiles, drawn).map((page) => ({ ...page, drawings: [drawing] }));
}

/** Joining marks need this much across a strip, mm. */
const LEAST_ACROSS = 60;

function widened({ left, right, bottom, top }: Box): Box {
  const [a, b] = [right - left, top - bottom].map((side) => Math.max(0, LEAST_ACROSS - side) / 2) as [number, number];
  return { left: left - a, right: right + a, bottom: bottom - b, top: top + b };
}

/** Pages of a drawing that is cut into tiles. */
function tilePages(
  job: PaperJob,
  what: string,
  { name, short }: TrueDrawing,
  tiles: readonly Tile[],
  drawing: () => Marks,
): readonly (Page & { readonly tile: Tile })[] {
  const seams = seamsOf(tiles);
  const area = tileArea(job);
  let drawn: Marks | undefined;
  return tiles.map((tile) => ({
    ...job.paper,
    name: tiles.length > 1 ? `${name}, tile ${tile.name}` : name,
    tile,
    draw: (n: number, of: number) => {
      const { left, top } = area;
      const { shows } = tile;
      const taken: Box = {
        left,
        right: left + shows.right - shows.left,
        bottom: top,
        top: top + shows.top - shows.bottom,
      };
      const square = freeSpot(trueArea(job.paper), [taken]);
      const detail =
        tiles.length > 1 ? `${short}: tile ${tile.name} of ${tiles.length}, joins ${tile.beside.join(', ')}` : short;
      return marks(
        checkSquare(square),
        tileMarks((drawn ??= drawing()), tile, seams, area),
        trueFrame(job, { what, detail }, square !== undefined, n, of),
        lineKey(job.paper, (drawn ??= drawing())),
      );
    },
  }));
}
