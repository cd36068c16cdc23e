import { packRows } from '../../core/cutting/rows/pack-rows';
import { fittingTurn } from '../../core/cutting/sheet/fitting-turn';
import type { Placement } from '../../core/cutting/sheet/layout';
import type { Piece } from '../../core/cutting/sheet/piece';
import type { SheetFormat } from '../../core/cutting/sheet/sheet';
import { roundedArea } from '../../core/geometry/area';
import { box, boxMoved } from '../../core/geometry/box';
import { moved } from '../../core/geometry/moved';
import { rectangleAbout } from '../../core/geometry/rectangle';
import type { Box } from '../../core/geometry/ring';
import { type Marks, marks } from '../mark';
import { movedMarks } from '../move-marks';
import { chosenPieces, type InParts, type PaperJob, sizeWords, stockOf } from './chosen';
import type { Page } from './page';
import { type Template, templatesOf } from './template';
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

/** Templates keep this from each other, mm: room for scissors. */
const APART = 4;
/** Joining marks reach so far beyond a tile, mm. */
const TILE_MARGIN = 4.5;

/** A page of templates as data, for whoever looks for a piece on it. */
export interface TemplatePage extends Page {
  readonly templates: readonly Template[];
  readonly tile?: Tile | undefined;
}

/** Every piece of the chosen styles, sizes and stocks at true size: those of one style and size share pages. */
export function* templatePages(job: PaperJob): InParts<readonly TemplatePage[]> {
  const groups = new Map<string, Template[]>();
  for (const line of chosenPieces(job)) {
    const size = sizeWords(line.sizeRun);
    const key = `${line.run.style.code}, ${size}`;
    const group = groups.get(key) ?? [];
    groups.set(key, group);
    group.push(...templatesOf(line, stockOf(job, line.layer.stock), size));
  }
  const pages: TemplatePage[] = [];
  for (const [key, templates] of groups) {
    pages.push(...pagesOf(job, key, templates));
    yield key;
  }
  return pages;
}

function pagesOf(job: PaperJob, what: string, templates: readonly Template[]): readonly TemplatePage[] {
  const area = trueArea(job.paper);
  const format: SheetFormat = { length: area.width, width: area.height, knifeRoom: APART, edgeTrim: 0.5 };
  const fits = (one: Template) => fittingTurn(one.ground, format, { kind: 'any' }) !== undefined;
  const small = templates.filter(fits);
  const large = templates.filter((one) => !fits(one));
  return [...sharedPages(job, what, small, format), ...large.flatMap((one) => tiledPages(job, what, one))];
}

/** Templates laid by the project's own quick rows, the paper as the sheet. */
function sharedPages(
  job: PaperJob,
  what: string,
  templates: readonly Template[],
  format: SheetFormat,
): readonly TemplatePage[] {
  if (templates.length === 0) return [];
  return packRows(templates.map(asPiece), format).map((placements): TemplatePage => {
    const own = placements.map(({ piece }) => templates[piece] as Template);
    const laid = withSquare(
      trueArea(job.paper),
      placements.map(({ piece: _, ...place }, i) => ({ ...place, template: own[i] as Template })),
      format,
    );
    return {
      ...job.paper,
      name: what,
      templates: own,
      draw: (n, of) => sharedMarks(job, { what, detail: holds(own) }, laid, n, of),
    };
  });
}

/** A template where it lies on its page, as a sheet has its pieces. */
interface LaidTemplate extends Omit<Placement, 'piece'> {
  readonly template: Template;
}

/** A page of templates, and the place of its check square where there is one. */
interface LaidPage {
  readonly laid: readonly LaidTemplate[];
  readonly square: Spot | undefined;
}

function asPiece({ name, ground }: Template): Piece {
  return { key: name, ring: ground, count: 1, way: { kind: 'any' } };
}

const SQUARE: Piece = {
  key: 'check square',
  ring: rectangleAbout({ left: 0, bottom: 0, right: CHECK_SIDE, top: CHECK_SIDE }),
  count: 1,
  way: { kind: 'any' },
};

/** The check square beside the templates of a page; they are laid anew where that makes room for it. */
function withSquare(area: TrueArea, laid: readonly LaidTemplate[], format: SheetFormat): LaidPage {
  const square = freeSpot(area, takenBy(area, laid));
  const bare = format.length * format.width - laid.reduce((sum, { template }) => sum + roundedArea(template.ring), 0);
  if (square || bare < CHECK_SIDE ** 2) return { laid, square };
  const [again, ...more] = packRows([...laid.map(({ template }) => asPiece(template)), SQUARE], format);
  const own = again?.find(({ piece }) => piece === laid.length);
  if (!again || !own || more.length > 0) return { laid, square };
  const { left, top } = boxMoved(SQUARE.ring, own.turn, own.x, own.y);
  return {
    laid: again.flatMap(({ piece, ...place }) => {
      const template = laid[piece]?.template;
      return template ? [{ ...place, template }] : [];
    }),
    square: [area.left + left, area.top + area.height - top],
  };
}

/** Boxes about what lies on a page, y downward. */
function takenBy(area: TrueArea, laid: readonly LaidTemplate[]): readonly Box[] {
  return laid.map(({ template, turn, x, y }): Box => {
    const { left, right, bottom, top } = boxMoved(template.ground, turn, x, y);
    return {
      left: area.left + left,
      right: area.left + right,
      bottom: area.top + area.height - top,
      top: area.top + area.height - bottom,
    };
  });
}

/** What a page holds: pieces by their numbers. */
function holds(templates: readonly Template[]): string {
  const items = templates.map(({ line: { layer } }) => layer.item).sort((a, b) => a - b);
  return `${items.length === 1 ? 'piece' : 'pieces'} ${items.join(', ')}`;
}

function sharedMarks(job: PaperJob, title: TrueTitle, { laid, square }: LaidPage, n: number, of: number): Marks {
  const area = trueArea(job.paper);
  return marks(
    checkSquare(square),
    laid.flatMap(({ template, turn, x, y }) =>
      movedMarks(template.draw(turn), turn, area.left + x, area.top + area.height - y),
    ),
    trueFrame(job, title, square !== undefined, n, of),
  );
}

/** The part of a page that tiles use. */
export function tileArea(job: Pick<PaperJob, 'paper'>): TrueArea {
  const { left, top, width, height } = trueArea(job.paper);
  const [m, t] = [TILE_MARGIN, TILE_MARGIN];
  return { left: left + m, top: top + t, width: width - 2 * m, height: height - 2 * t };
}

/** A piece that is larger than the paper, on as few pages as will do. */
function tiledPages(job: PaperJob, what: string, template: Template): readonly TemplatePage[] {
  const turned = [90, 0].map((turn) => {
    // As it is drawn: y downward.
    const { left, right, bottom, top } = box(moved(template.ground, turn));
    return { turn, tiles: tilesOf(widened({ left, right, bottom: -top, top: -bottom }), tileArea(job)) };
  });
  const { turn, tiles } = turned.reduce((best, one) => (one.tiles.length < best.tiles.length ? one : best));
  return tilePages(job, what, template.name, template.short, tiles, () => movedMarks(template.draw(turn), turn)).map(
    (page) => ({
      ...page,
      templates: [template],
    }),
  );
}

/** Joining marks need this much across a strip, mm. */
const LEAST_ACROSS = 60;

function widened({ left, right, bottom, top }: Box): Box {
  const [a, b] = [right - left, top - bottom].map((side) => Math.max(0, LEAST_ACROSS - side) / 2) as [number, number];
  return { left: left - a, right: right + a, bottom: bottom - b, top: top + b };
}

/** Pages of a drawing that is cut into tiles. */
export function tilePages(
  job: PaperJob,
  what: string,
  name: string,
  short: string,
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
      );
    },
  }));
}
