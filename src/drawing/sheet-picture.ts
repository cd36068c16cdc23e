import { leftover } from '../core/cutting/sheet/leftover';
import type { NaturalSheet } from '../core/cutting/sheet/natural-sheet';
import type { NamedSheet, Placements } from '../core/cutting/sheet/layout';
import type { SheetFormat } from '../core/cutting/sheet/sheet';
import { area } from '../core/geometry/area';
import { box } from '../core/geometry/box';
import { inside } from '../core/geometry/inside';
import { moved } from '../core/geometry/moved';
import { grown, intersection } from '../core/geometry/regions';
import { rectangle, rectangleAbout } from '../core/geometry/rectangle';
import type { Point, Ring } from '../core/geometry/ring';
import { simplify } from '../core/geometry/simplify';
import { itemAt, itemRound } from '../core/item-at';
import type { StockCutting } from '../core/plan/cutting';
import { type Figures, inSentence } from '../tables/figures';
import { qualityInWords } from '../tables/quality';
import { level, upright } from './dimensions';
import { type LineOfPiece, lineOf, nameOf } from './line-of-piece';
import {
  covers,
  keyIn,
  labelIn,
  needsToePoint,
  type PieceLabel,
  type Spot,
  spotsOf,
  toeOf,
  toePoint,
  written,
} from './piece-lettering';
import { directionSign } from './plan-view';
import { sheetName, sheetNumber } from './sheet-name';
import { percent } from './side-view';
import { line as stroke, type Marks, marks, outline, type Scale, text } from './mark';
import type { Picture, PictureItem } from './svg';

export interface SheetPictureInput {
  readonly cutting: StockCutting;
  /** One of its layout. */
  readonly sheet: NamedSheet;
  /** Pieces of this style and size are picked out. */
  readonly shown?: { readonly style: string; readonly size: number } | undefined;
  /** The id of one piece that is picked out instead. */
  readonly picked?: string | undefined;
  /** Numbers of the pieces in a list beside the picture, by their place in the sheet's layout. */
  readonly numbers?: ReadonlyMap<number, number> | undefined;
  readonly figures: Figures;
}

/** Room around the sheet for its two dimensions, u. */
const LEFT = 13;
const BELOW = 6.5;
/** Outlines are drawn this true, u: a tenth of a narrow line. */
const TRUE_TO = 0.025;

/** Cutting of one sheet: its edge and trim, every piece with size and foot, what is left over. */
export function sheetPicture(input: SheetPictureInput, width: number): Picture {
  const { cutting, sheet } = input;
  const { format, placements } = sheet;
  const frame = frameOf(format, width);
  const drawn = lettered(drawnPieces(cutting, placements, frame), frame.scale, input.numbers);
  const rest = restOf(cutting, sheet, frame);
  const used = drawn.reduce((sum, { line }) => sum + (line?.line.area ?? 0), 0) / areaOf(format);
  return {
    width,
    height: frame.scale * frame.across + 0.5 + BELOW,
    marks: marks(
      within(format, frame),
      format.natural && zonesOf(format.natural, drawn, frame),
      rest.flatMap(({ ring, letter }) => [outline('dashed', ring, frame.at), ...restLetter(ring, letter, frame)]),
      drawn.flatMap((piece) => pieceMarks(input, piece, frame)),
      edgeMarks(format, frame),
      dimensions(input, frame),
    ),
    label: sentence(input, placements.length, used, rest),
    facts: facts(input, drawn, used, rest),
    items: drawn.map(({ i, line }): PictureItem => ({ id: String(i), label: nameOf(line, true) })),
    scale: frame.scale,
    legend: legendOf(drawn),
  };
}

/** How a sheet lies in its picture: a tall one is turned by a quarter. */
interface Frame {
  readonly lying: boolean;
  readonly along: number;
  readonly across: number;
  /** u for a millimetre. */
  readonly scale: number;
  readonly at: Scale;
  /** Where a point of the sheet comes to lie. */
  readonly onPicture: (point: Point) => Point;
}

function frameOf({ length, width: wide }: SheetFormat, width: number): Frame {
  const lying = length >= wide;
  const [along, across] = lying ? [length, wide] : [wide, length];
  const scale = (width - LEFT - 0.5) / along;
  return {
    lying,
    along,
    across,
    scale,
    at: { x: (mm) => LEFT + scale * mm, y: (mm) => 0.5 + scale * (across - mm) },
    onPicture: ([px, py]) => (lying ? [px, py] : [py, length - px]),
  };
}

/** A piece of the sheet where it lies in the picture. */
interface DrawnPiece {
  readonly i: number;
  readonly line: LineOfPiece;
  readonly ring: Ring;
  readonly spots: readonly Spot[];
  readonly toe: Point;
}

function drawnPieces(
  cutting: StockCutting,
  placements: Placements,
  { lying, scale, onPicture }: Frame,
): readonly DrawnPiece[] {
  const rings = new Map<number, Pick<DrawnPiece, 'ring' | 'spots' | 'toe'>>();
  return placements.map((placement, i) => {
    let known = rings.get(placement.piece);
    if (!known) {
      const ring = simplify(itemAt(cutting.pieces, placement.piece).ring, TRUE_TO / scale);
      rings.set(placement.piece, (known = { ring, spots: spotsOf(ring), toe: toeOf(ring) }));
    }
    const put = (points: Ring) => {
      const there = moved(points, placement.turn, placement.x, placement.y);
      return lying ? there : there.map(onPicture);
    };
    const places = put([known.toe, ...known.spots.map(({ at: place }) => place)]);
    const spots = known.spots.map(({ room }, k): Spot => ({ at: itemAt(places, k + 1), room }));
    return { i, line: lineOf(cutting, placement.piece), ring: put(known.ring), spots, toe: itemAt(places, 0) };
  });
}

/** A piece with its lettering, or with the figure that stands for it where it is too small for that. */
interface LetteredPiece extends DrawnPiece {
  readonly label: PieceLabel | undefined;
  readonly key: number | undefined;
}

function lettered(
  drawn: readonly DrawnPiece[],
  scale: number,
  numbers: SheetPictureInput['numbers'],
): readonly LetteredPiece[] {
  const keys = new Map<string, number>();
  return drawn.map((piece): LetteredPiece => {
    const { i, line, ring, spots, toe } = piece;
    const point = needsToePoint(ring, scale) ? toe : undefined;
    const number = numbers?.get(i);
    const label =
      labelIn(ring, spots, line, point, scale, number) ?? labelIn(ring, spots, line, undefined, scale, number);
    if (label || !line || numbers) return { ...piece, label, key: undefined };
    const name = nameOf(line);
    const key = keys.get(name) ?? keys.size + 1;
    const figure = keyIn(ring, spots, key, scale);
    if (figure) keys.set(name, key);
    return { ...piece, label: figure, key: figure && key };
  });
}

/** What each figure stands for: "1 Tansy top piece 9, 38 L". */
function legendOf(drawn: readonly LetteredPiece[]): readonly string[] {
  return [...new Set(drawn.flatMap(({ key, line }) => (key === undefined ? [] : [`${key} ${nameOf(line)}`])))];
}

/** Rectangles that are left over, lettered. */
function restOf({ pieces }: StockCutting, { format, placements }: NamedSheet, { onPicture }: Frame): Rest {
  return leftover(pieces, format, placements).map(({ x, y, length, width: wide }, i) => {
    const ring = rectangleAbout(box([onPicture([x, y]), onPicture([x + length, y + wide])]));
    return { letter: letterOf(i), length, wide, ring };
  });
}

/** Edge of the sheet in the picture. */
function edgeOf({ natural }: SheetFormat, { along, across, onPicture }: Frame): Ring {
  return natural ? natural.outline.map(onPicture) : rectangle(along, across);
}

/** What lies within the trim of the sheet. */
function within(format: SheetFormat, frame: Frame): Marks {
  const { edgeTrim: trim, natural } = format;
  if (!(trim > 0)) return [];
  const { along, across, at } = frame;
  const rings = natural
    ? grown([edgeOf(format, frame)], -trim)
    : [rectangleAbout({ left: trim, bottom: trim, right: along - trim, top: across - trim })];
  return rings.map((ring) => outline('dashed', ring, at));
}

function edgeMarks(format: SheetFormat, frame: Frame): Marks {
  const holes = format.natural?.holes ?? [];
  return [edgeOf(format, frame), ...holes.map((hole) => hole.map(frame.onPicture))].map((ring) =>
    outline('wide', ring, frame.at),
  );
}

/** A piece with its lettering and the point at its toe. */
function pieceMarks(
  input: SheetPictureInput,
  { i, line, ring, toe, label }: LetteredPiece,
  { at, scale }: Frame,
): Marks {
  const id = String(i);
  const on = input.picked === undefined ? isShown(line, input.shown) : input.picked === id;
  const edge = on
    ? outline('wide', ring, at, { accent: true, fill: 'wash', item: id })
    : outline('narrow', ring, at, { item: id });
  const point = needsToePoint(ring, scale) ? toe : undefined;
  const free = point && !(label && covers(label, point, scale));
  return marks(edge, free && toePoint(point, at), label && written(label, at, on));
}

/** Length and width of the sheet, and the sign of its direction. */
function dimensions({ cutting: { stock }, figures }: SheetPictureInput, { lying, along, across, at }: Frame): Marks {
  const foot = at.y(0);
  return marks(
    level(foot + 5, at.x(0), at.x(along), figures.length(along)),
    [0, along].map((mm) => stroke('narrow', at.x(mm), foot + 1, at.x(mm), foot + 6)),
    [0, across].map((mm) => stroke('narrow', at.x(0) - 1, at.y(mm), at.x(0) - 4, at.y(mm))),
    upright(at.x(0) - 3, at.y(across), at.y(0), figures.length(across)),
    stock.direction !== 'any way' && lying && directionSign(at.x(0) + 6, foot + 2.6, stock.direction, false),
  );
}

/** Area of the sheet as it is laid, mm². */
function areaOf({ natural, length, width }: SheetFormat): number {
  return natural ? area(natural.outline) : length * width;
}

/** Zones as far as they lie on the sheet, each lettered with its quality where pieces leave the most room. */
function zonesOf(
  { outline: edge, zones }: NaturalSheet,
  drawn: readonly DrawnPiece[],
  { onPicture, at }: Frame,
): Marks {
  const pieces = drawn.map(({ ring }) => ring);
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
  const edges = [ring, ...others].flatMap((one) => one.flatMap((p, i) => alongEdge(p, itemRound(one, i + 1))));
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

type Rest = readonly { readonly letter: string; readonly length: number; readonly wide: number; readonly ring: Ring }[];

function isShown(line: LineOfPiece, shown: SheetPictureInput['shown']): boolean {
  return line?.line.run.style.code === shown?.style && line?.line.sizeRun.size === shown?.size;
}

/** A, B, C … */
function letterOf(i: number): string {
  return String.fromCharCode(65 + i);
}

function restLetter(ring: Ring, letter: string, { at, scale }: Frame): Marks {
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
  drawn: readonly { readonly i: number; readonly line: LineOfPiece }[],
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
      const { x, y, turn } = itemAt(placements, i);
      return [
        nameOf(line),
        `x ${figures.length(x)}, y ${figures.length(y)} ${unit}, turned ${Math.round(turn)}°`,
      ] as const;
    }),
  ];
}
