import { packRows } from '../../core/cutting/rows/pack-rows';
import { fittingTurn } from '../../core/cutting/sheet/fitting-turn';
import type { Placement } from '../../core/cutting/sheet/layout';
import type { SheetFormat } from '../../core/cutting/sheet/sheet';
import { box, boxMoved } from '../../core/geometry/box';
import { moved } from '../../core/geometry/moved';
import type { Box } from '../../core/geometry/ring';
import { type Marks, marks } from '../mark';
import { movedMarks } from '../move-marks';
import { chosenPieces, type InParts, type PaperJob, sizeWords, stockOf } from './chosen';
import type { Page } from './page';
import { type Template, templatesOf } from './template';
import { seamsOf, type Tile, tileMarks, tilesOf } from './tiles';
import { checkSquare, type TrueArea, trueArea, trueFrame, type TrueTitle } from './true-size';

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
  const pieces = templates.map((one) => ({
    key: one.name,
    ring: one.ground,
    count: 1,
    way: { kind: 'any' } as const,
  }));
  return packRows(pieces, format).map((placements): TemplatePage => {
    const own = placements.map(({ piece }) => templates[piece] as Template);
    return {
      ...job.paper,
      name: what,
      templates: own,
      draw: (n, of) => sharedMarks(job, { what, detail: holds(own) }, templates, placements, n, of),
    };
  });
}

/** What a page holds: pieces by their numbers. */
function holds(templates: readonly Template[]): string {
  const items = templates.map(({ line: { layer } }) => layer.item).sort((a, b) => a - b);
  return `${items.length === 1 ? 'piece' : 'pieces'} ${items.join(', ')}`;
}

function sharedMarks(
  job: PaperJob,
  title: TrueTitle,
  templates: readonly Template[],
  placements: readonly Placement[],
  n: number,
  of: number,
): Marks {
  const area = trueArea(job.paper);
  const taken = placements.map(({ piece, turn, x, y }): Box => {
    const { left, right, bottom, top } = boxMoved((templates[piece] as Template).ground, turn, x, y);
    return {
      left: area.left + left,
      right: area.left + right,
      bottom: area.top + area.height - top,
      top: area.top + area.height - bottom,
    };
  });
  const square = checkSquare(job, taken);
  return marks(
    square.under,
    placements.flatMap(({ piece, turn, x, y }) =>
      movedMarks((templates[piece] as Template).draw(turn), turn, area.left + x, area.top + area.height - y),
    ),
    square.over,
    trueFrame(job, title, n, of),
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
      const square = checkSquare(job, [taken]);
      const detail =
        tiles.length > 1 ? `${short}: tile ${tile.name} of ${tiles.length}, joins ${tile.beside.join(', ')}` : short;
      return marks(
        square.under,
        tileMarks((drawn ??= drawing()), tile, seams, area),
        square.over,
        trueFrame(job, { what, detail }, n, of),
      );
    },
  }));
}
