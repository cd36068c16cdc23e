import { leftover } from '../core/cutting/sheet/leftover';
import type { NaturalSheet } from '../core/cutting/sheet/natural-sheet';
import type { NamedSheet, Placement } from '../core/cutting/sheet/layout';
import type { SheetFormat } from '../core/cutting/sheet/sheet';
import { area } from '../core/geometry/area';
import { box } from '../core/geometry/box';
import { inside } from '../core/geometry/inside';
import { moved } from '../core/geometry/moved';
import { grown, intersection } from '../core/geometry/regions';
import type { Point, Ring } from '../core/geometry/ring';
import { simplify } from '../core/geometry/simplify';
import type { StockCutting } from '../core/plan/cutting';
import type { PieceLine } from '../core/plan/pieces';
import { type Figures, inSentence } from '../tables/figures';
import { qualityInWords } from '../tables/quality';
import { PART_WORDS } from '../tables/words';
import { level, upright } from './dimensions';
import { directionSign } from './plan-view';
import { sheetName, sheetNumber } from './sheet-name';
import { percent } from './side-view';
import {
  type CircleMark,
  circle,
  type Lettering,
  line as stroke,
  type Marks,
  marks,
  outline,
  type Scale,
  text,
} from './mark';
import type { Picture, PictureItem } from './svg';

export interface SheetPictureInput {
  readonly cutting: StockCutting;
  /** One of its layout. */
  readonly sheet: NamedSheet;
  /** Pieces of this style and size are picked out. */
  readonly shown?: { readonly style: string; readonly size: number } | undefined;
  /** The id of one piece that is picked out instead. */
  readonly picked?: string | undefined;
  readonly figures: Figures;
}

/** Room around the sheet for its two dimensions, u. */
const LEFT = 13;
const BELOW = 6.5;
/** Outlines are drawn this true, u: a tenth of a narrow line. */
const TRUE_TO = 0.025;
const LINE_HEIGHT = 3.5;
/** Width of a letter of 3.5 u on the average of figures and letters, u. */
const LETTER = 1.95;

/** Cutting of one sheet: its edge and trim, every piece with size and foot, what is left over. */
export function sheetPicture(input: SheetPictureInput, width: number): Picture {
  const { cutting, sheet, figures } = input;
  const { stock } = cutting;
  const { format, placements } = sheet;
  // A sheet always lies: a tall one is turned by a quarter.
  const lying = format.length >= format.width;
  const [along, across] = lying ? [format.length, format.width] : [format.width, format.length];
  const scale = (width - LEFT - 0.5) / along;
  const at: Scale = { x: (mm) => LEFT + scale * mm, y: (mm) => 0.5 + scale * (across - mm) };
  const onPicture = ([px, py]: Point): Point => (lying ? [px, py] : [py, format.length - px]);
  const rings = new Map<number, { ring: Ring; spots: readonly Spot[]; toe: Point }>();
  const drawn = placements.map((placement, i) => {
    let known = rings.get(placement.piece);
    if (!known) {
      const whole = (cutting.pieces[placement.piece] as StockCutting['pieces'][number]).ring;
      const ring = simplify(whole, TRUE_TO / scale);
      rings.set(placement.piece, (known = { ring, spots: spotsOf(ring), toe: toeOf(ring) }));
    }
    const put = (points: Ring) => {
      const there = moved(points, placement.turn, placement.x, placement.y);
      return lying ? there : there.map(onPicture);
    };
    const places = put([known.toe, ...known.spots.map(({ at: place }) => place)]);
    const spots = known.spots.map(({ room }, k): Spot => ({ at: places[k + 1] as Point, room }));
    return {
      i,
      line: lineOf(cutting, placement.piece),
      ring: put(known.ring),
      spots,
      toe: places[0] as Point,
    };
  });
  const rest = leftover(cutting.pieces, format, placements).map(({ x, y, length, width: wide }, i) => {
    const [[x1, y1], [x2, y2]] = [onPicture([x, y]), onPicture([x + length, y + wide])] as [Point, Point];
    return { letter: letterOf(i), length, wide, ring: rectangle(x1, y1, x2, y2) };
  });

  const trim = format.edgeTrim;
  const { natural } = format;
  const edge = natural ? natural.outline.map(onPicture) : rectangle(0, 0, along, across);
  const within = natural ? grown([edge], -trim) : [rectangle(trim, trim, along - trim, across - trim)];
  const foot = at.y(0);
  const body = marks(
    trim > 0 && within.map((ring) => outline('dashed', ring, at)),
    natural &&
      zonesOf(
        natural,
        drawn.map(({ ring }) => ring),
        onPicture,
        at,
      ),
    rest.flatMap(({ ring, letter }) => [outline('dashed', ring, at), ...lettered(ring, letter, at, scale)]),
    drawn.flatMap(({ i, line, ring, spots, toe }) => {
      const id = String(i);
      const on = input.picked === undefined ? isShown(line, input.shown) : input.picked === id;
      const edge = on
        ? outline('wide', ring, at, { accent: true, fill: 'wash', item: id })
        : outline('narrow', ring, at, { item: id });
      const point = needsToePoint(ring, scale) ? toe : undefined;
      const label = labelIn(ring, spots, line, point, scale) ?? labelIn(ring, spots, line, undefined, scale);
      const free = point && !(label && covers(label, point, scale));
      return marks(edge, free && toePoint(point, at), label && written(label, at, on));
    }),
    outline('wide', edge, at),
    (natural?.holes ?? []).map((hole) => outline('wide', hole.map(onPicture), at)),
    level(at.y(0) + 5, at.x(0), at.x(along), figures.length(along)),
    [0, along].map((mm) => stroke('narrow', at.x(mm), foot + 1, at.x(mm), foot + 6)),
    [0, across].map((mm) => stroke('narrow', at.x(0) - 1, at.y(mm), at.x(0) - 4, at.y(mm))),
    upright(at.x(0) - 3, at.y(across), at.y(0), figures.length(across)),
    stock.direction !== 'any way' && lying && directionSign(at.x(0) + 6, foot + 2.6, stock.direction, false),
  );
  const used = drawn.reduce((sum, { line }) => sum + (line?.line.area ?? 0), 0) / areaOf(format);
  return {
    width,
    height: scale * across + 0.5 + BELOW,
    marks: body,
    label: sentence(input, placements.length, used, rest),
    facts: facts(input, drawn, used, rest),
    items: drawn.map(({ i, line }): PictureItem => ({ id: String(i), label: nameOf(line, true) })),
    scale,
  };
}

/** Area of the sheet as it is laid, mm². */
function areaOf({ natural, length, width }: SheetFormat): number {
  return natural ? area(natural.outline) : length * width;
}

/** Zones as far as they lie on the sheet, each lettered with its quality where pieces leave the most room. */
function zonesOf(
  { outline: edge, zones }: NaturalSheet,
  pieces: readonly Ring[],
  onPicture: (point: Point) => Point,
  at: Scale,
): Marks {
  return zones.flatMap(({ ring, quality }) =>
    intersection([ring], [edge]).flatMap((part) => {
      const shown = part.map(onPicture);
      const spot = roomiest(shown, pieces);
      const letter = spot && text(at.x(spot[0]), at.y(spot[1]) + 1.25, qualityInWords(quality), 'bold');
      return marks(outline('dashed', shown, at), letter);
    }),
  );
}

/** Points of an edge, at most a centimetre apart. */
function alongEdge([ax, ay]: Point, [bx, by]: Point): readonly Point[] {
  const parts = Math.max(1, Math.ceil(Math.hypot(bx - ax, by - ay) / 10));
  return Array.from({ length: parts }, (_, k): Point => [ax + ((bx - ax) * k) / parts, ay + ((by - ay) * k) / parts]);
}

/** The place in a ring, of a grid of places, that lies farthest from its edge and those of other rings, and in none. */
function roomiest(ring: Ring, others: readonly Ring[]): Point | undefined {
  const { left, right, bottom, top } = box(ring);
  const edges = [ring, ...others].flatMap((one) =>
    one.flatMap((p, i) => alongEdge(p, one[(i + 1) % one.length] as Point)),
  );
  let best: Point | undefined;
  let most = 0;
  for (let i = 1; i < 20; i++) {
    for (let k = 1; k < 20; k++) {
      const [x, y] = [left + ((right - left) * i) / 20, bottom + ((top - bottom) * k) / 20];
      if (!inside(ring, x, y) || others.some((other) => inside(other, x, y))) continue;
      const room = edges.reduce((least, [ex, ey]) => Math.min(least, Math.hypot(ex - x, ey - y)), Infinity);
      if (room > most) [best, most] = [[x, y], room];
    }
  }
  return best;
}

type Line = { readonly line: PieceLine; readonly foot: 'L' | 'R' } | undefined;
type Rest = readonly { readonly letter: string; readonly length: number; readonly wide: number; readonly ring: Ring }[];

/** Pieces stand two to a line: left, then right. */
export function lineOf({ lines }: StockCutting, piece: number): Line {
  const line = lines[piece >> 1];
  return line && { line, foot: piece % 2 === 0 ? 'L' : 'R' };
}

function nameOf(line: Line, spoken = false): string {
  if (!line) return '';
  const { run, layer, sizeRun } = line.line;
  const foot = spoken ? (line.foot === 'L' ? 'left' : 'right') : line.foot;
  return `${run.style.code} ${PART_WORDS[layer.part].toLowerCase()} ${layer.item}, ${sizeRun.size} ${foot}`;
}

function isShown(line: Line, shown: SheetPictureInput['shown']): boolean {
  return line?.line.run.style.code === shown?.style && line?.line.sizeRun.size === shown?.size;
}

function rectangle(x1: number, y1: number, x2: number, y2: number): Ring {
  const [left, right] = [Math.min(x1, x2), Math.max(x1, x2)];
  const [low, high] = [Math.min(y1, y2), Math.max(y1, y2)];
  return [
    [left, low],
    [right, low],
    [right, high],
    [left, high],
  ];
}

/** A, B, C … */
function letterOf(i: number): string {
  return String.fromCharCode(65 + i);
}

/** The height between the edges of a ring at a place along it, and its middle. */
function between(ring: Ring, x: number): { readonly height: number; readonly middle: number } {
  const ys: number[] = [];
  let [px, py] = ring[ring.length - 1] as Point;
  for (const [qx, qy] of ring) {
    if (px > x !== qx > x) ys.push(py + ((qy - py) * (x - px)) / (qx - px));
    [px, py] = [qx, qy];
  }
  const [low, high] = [Math.min(...ys), Math.max(...ys)];
  return ys.length > 1 ? { height: high - low, middle: (low + high) / 2 } : { height: 0, middle: 0 };
}

/** A place for a label within a piece, and how far the edge is from it along and across the piece, mm. */
interface Spot {
  readonly at: Point;
  readonly room: number;
}

/** How many places along a piece are looked at. */
const PLACES = 13;

/** Where a label has room: middles of the ring across its length, the widest and farthest from its ends first. */
function spotsOf(ring: Ring): readonly Spot[] {
  const { left, right } = box(ring);
  const spots = Array.from({ length: PLACES }, (_, k): Spot => {
    const x = left + ((right - left) * (k + 1)) / (PLACES + 1);
    const { height, middle } = between(ring, x);
    return { at: [x, middle], room: Math.min(height / 2, x - left, right - x) };
  }).sort((a, b) => b.room - a.room);
  const most = spots[0]?.room ?? 0;
  return spots.filter(({ room }) => room > 0.6 * most);
}

/** Where a piece's toe end is. */
function toeOf(ring: Ring): Point {
  const { right, left } = box(ring);
  const x = right - 0.06 * (right - left);
  return [x, between(ring, x).middle];
}

/** A small black point marks the toe, where a piece is large enough to need it. */
function needsToePoint(ring: Ring, scale: number): boolean {
  const { left, right, bottom, top } = box(ring);
  return Math.min(right - left, top - bottom) * scale > 4 && Math.max(right - left, top - bottom) * scale > 9;
}

function toePoint([x, y]: Point, at: Scale): CircleMark {
  return circle(at.x(x), at.y(y), 0.5, { fill: 'ink' });
}

/** Lines of lettering, level and centred on a spot. */
interface Label {
  readonly lines: readonly string[];
  readonly spot: Point;
}

/** Style and item, size and foot, as far as they have room within the piece and beside its toe point. */
function labelIn(
  ring: Ring,
  spots: readonly Spot[],
  line: Line,
  toe: Point | undefined,
  scale: number,
): Label | undefined {
  if (!line) return undefined;
  const { run, layer, sizeRun } = line.line;
  const size = String(sizeRun.size);
  const both = `${size} ${line.foot}`;
  for (const lines of [[`${run.style.code} ${layer.item}`, both], [both], [size, line.foot]]) {
    const needed = Math.min(...halves({ lines }, scale));
    for (const { at: spot, room } of spots) {
      // The widest come first: where the lettering is higher than that, no other has room.
      if (room < needed) break;
      const label = { lines, spot };
      if (isWithin(label, ring, scale) && !(toe && covers(label, toe, scale))) return label;
    }
  }
  return undefined;
}

function written({ lines, spot: [x, y] }: Label, at: Scale, on: boolean): Marks {
  const first = at.y(y) - ((lines.length - 1) * LINE_HEIGHT) / 2 + 1.25;
  const lettering: Lettering = on ? 'on' : 'plain';
  return lines.map((words, i) => text(at.x(x), first + i * LINE_HEIGHT, words, lettering));
}

/** Half the width and half the height of a label, mm. */
function halves({ lines }: Pick<Label, 'lines'>, scale: number): readonly [number, number] {
  const wide = Math.max(...lines.map(({ length }) => length)) * LETTER;
  return [wide / 2 / scale, (lines.length * LINE_HEIGHT) / 2 / scale];
}

function isWithin(label: Label, ring: Ring, scale: number): boolean {
  const [half, high] = halves(label, scale);
  const [x, y] = label.spot;
  for (let a = -1; a <= 1; a++) {
    if (!inside(ring, x + a * half, y - high) || !inside(ring, x + a * half, y + high)) return false;
  }
  return true;
}

/** Whether a label lies over a point or within a millimetre of the drawing of it. */
function covers(label: Label, [x, y]: Point, scale: number): boolean {
  const [half, high] = halves(label, scale);
  return Math.abs(x - label.spot[0]) < half + 1 / scale && Math.abs(y - label.spot[1]) < high + 0.5 / scale;
}

function lettered(ring: Ring, letter: string, at: Scale, scale: number): Marks {
  const { left, right, bottom, top } = box(ring);
  if (Math.min(right - left, top - bottom) * scale < 5) return [];
  return [text(at.x((left + right) / 2), at.y((bottom + top) / 2) + 1.25, letter, 'bold')];
}

function sentence({ cutting, sheet, figures }: SheetPictureInput, count: number, used: number, rest: Rest): string {
  const { stock } = cutting;
  const { name, format } = sheet;
  const size = (a: number, b: number) => inSentence(figures, `${figures.length(a)} by ${figures.length(b)}`);
  const left = rest.map(({ letter, length, wide }) => `, left over ${letter} ${size(length, wide)}`);
  return (
    `${stock.code}, ${sheetName(cutting, name)}, ${size(format.length, format.width)}: ` +
    `${count} pieces, area use ${percent(used)}${left.join('')}.`
  );
}

function facts(
  { cutting, sheet, figures }: SheetPictureInput,
  drawn: readonly { readonly i: number; readonly line: Line }[],
  used: number,
  rest: Rest,
): Picture['facts'] {
  const { stock } = cutting;
  const { name, format, placements } = sheet;
  const { unit } = figures;
  return [
    ['Stock', stock.code],
    [
      'Sheet',
      `${sheetNumber(cutting, name)}, ${figures.length(format.length)} × ${figures.length(format.width)} ${unit}`,
    ],
    ['Direction', stock.direction],
    ['Pieces', String(drawn.length)],
    ['Area use', percent(used)],
    ...rest.map(
      ({ letter, length, wide }) =>
        [`Left over ${letter}`, `${figures.length(length)} × ${figures.length(wide)} ${unit}`] as const,
    ),
    ...drawn.map(({ i, line }) => {
      const { x, y, turn } = placements[i] as Placement;
      return [
        nameOf(line),
        `x ${figures.length(x)}, y ${figures.length(y)} ${unit}, turned ${Math.round(turn)}°`,
      ] as const;
    }),
  ];
}
