import { rectangleAbout } from '../core/geometry/rectangle';
import type { Point, Ring } from '../core/geometry/ring';
import type { Material } from '../core/stock/stock';

/**
 * Kinds of lines: edges of pieces; joints, dimensions, leaders; a last's edge or a trim; centre, seat and tread lines; the
 * last or the piece behind; the edge of a cut face; the cells of foam.
 */
export type Pen = 'wide' | 'narrow' | 'dashed' | 'chain' | 'phantom' | 'face' | 'cell';

/** What an area is filled with: solid ink, the ground of what is picked out, nothing to be seen, paper, or a material. */
export type Fill = 'ink' | 'wash' | 'nothing' | 'paper' | Hatch;

/** A material's hatching; leather that lies next to leather is turned. */
export interface Hatch {
  readonly material: Material;
  readonly turned: boolean;
}

/** Which layer of a file a mark belongs to; words are text without it. */
export type FileLayer = 'cut' | 'finished edge' | 'skive' | 'mark' | 'text';

interface Common {
  /** Picked out in the accent. */
  readonly accent?: boolean | undefined;
  /** Id of the item of the picture that it stands for. */
  readonly item?: string | undefined;
  readonly layer?: FileLayer | undefined;
}

/** A line from point to point; its ends are open. */
export interface LineMark extends Common {
  readonly kind: 'line';
  readonly pen: Pen;
  readonly points: readonly Point[];
}

/** An area within a ring; further rings within it are holes. */
export interface AreaMark extends Common {
  readonly kind: 'area';
  readonly pen?: Pen | undefined;
  readonly rings: readonly Ring[];
  readonly fill?: Fill | undefined;
}

export interface CircleMark extends Common {
  readonly kind: 'circle';
  readonly pen?: Pen | undefined;
  readonly at: Point;
  readonly radius: number;
  readonly fill?: Fill | undefined;
}

export type Anchor = 'start' | 'middle' | 'end';
/** Lettering: plain, semibold, quiet, semibold and large, large, on the ground of what is picked out. */
export type Lettering = 'plain' | 'bold' | 'quiet' | 'big' | 'mid' | 'on';

/** Level words on a base line, with a halo of the ground. */
export interface TextMark extends Common {
  readonly kind: 'text';
  readonly at: Point;
  readonly words: string;
  readonly lettering: Lettering;
  readonly anchor: Anchor;
  /** Height of the lettering (its em) where it is not the usual one, u. */
  readonly size?: number | undefined;
  /** degrees, counter-clockwise as it is seen; level without it */
  readonly turn?: number | undefined;
}

/** Marks that belong together: a dimension with its figure, an item, what is seen within a ring alone. */
export interface GroupMark extends Common {
  readonly kind: 'group';
  readonly marks: Marks;
  readonly dimension?: boolean | undefined;
  readonly clip?: Ring | undefined;
}

/** What a drawing is made of, in drawing millimetres from the upper left corner, y downward. */
export type Mark = LineMark | AreaMark | CircleMark | TextMark | GroupMark;
export type Marks = readonly Mark[];

/** Widths and dashes of the lines, u: those of drawing.css. */
export const PENS: Readonly<Record<Pen, { readonly width: number; readonly dashes?: readonly number[] }>> = {
  wide: { width: 0.5 },
  narrow: { width: 0.25 },
  dashed: { width: 0.25, dashes: [3, 0.75] },
  chain: { width: 0.25, dashes: [6, 0.75, 0.25, 0.75] },
  phantom: { width: 0.25, dashes: [6, 0.75, 0.25, 0.75, 0.25, 0.75] },
  face: { width: 0.25 },
  cell: { width: 0.2 },
};

/** Height of the lettering, its em, u. */
export const LETTER_SIZES: Readonly<Record<Lettering, number>> = {
  plain: 3.5,
  bold: 3.5,
  quiet: 3.5,
  on: 3.5,
  mid: 5,
  big: 7,
};

/** From a picture's own coordinates to drawing millimetres. */
export interface Scale {
  readonly x: (mm: number) => number;
  readonly y: (mm: number) => number;
}

type More = Partial<Common>;
type Filled = More & { readonly fill?: Fill };

export function line(pen: Pen, x1: number, y1: number, x2: number, y2: number, more: More = {}): LineMark {
  const points: readonly Point[] = [
    [x1, y1],
    [x2, y2],
  ];
  return { kind: 'line', pen, points, ...more };
}

/** An open line through points of a picture. */
export function polyline(pen: Pen, points: readonly Point[], { x, y }: Scale, more: More = {}): LineMark {
  return { kind: 'line', pen, points: points.map(([px, py]): Point => [x(px), y(py)]), ...more };
}

/** The area within a ring of a picture, with its edge. */
export function outline(pen: Pen, ring: Ring, { x, y }: Scale, more: Filled = {}): AreaMark {
  return { kind: 'area', pen, rings: [ring.map(([px, py]): Point => [x(px), y(py)])], ...more };
}

export function rectangle(
  x: number,
  y: number,
  width: number,
  height: number,
  { pen, ...more }: Filled & { readonly pen?: Pen } = {},
): AreaMark {
  const ring = rectangleAbout({ left: x, bottom: y, right: x + width, top: y + height });
  return { kind: 'area', pen, rings: [ring], ...more };
}

export function circle(
  x: number,
  y: number,
  radius: number,
  { pen, ...more }: Filled & { readonly pen?: Pen },
): CircleMark {
  return { kind: 'circle', pen, at: [x, y], radius, ...more };
}

/** Level lettering of 3.5 u unless its kind is larger, with a halo of the ground. */
export function text(
  x: number,
  y: number,
  words: string | number,
  lettering: Lettering = 'plain',
  anchor: Anchor = 'middle',
  more: More & Partial<Pick<TextMark, 'size' | 'turn'>> = {},
): TextMark {
  return { kind: 'text', at: [x, y], words: String(words), lettering, anchor, ...more };
}

/** Marks one after the other; what is not there is left out. */
export function marks(...parts: readonly (Mark | Marks | undefined | false)[]): Marks {
  return parts.flatMap((part) => part || []);
}

export function group(parts: Marks, more: Omit<GroupMark, 'kind' | 'marks'> = {}): GroupMark {
  return { kind: 'group', marks: parts, ...more };
}

/** All single marks, those of groups in place of the groups. */
export function singly(parts: Marks): readonly Exclude<Mark, GroupMark>[] {
  return parts.flatMap((mark) => (mark.kind === 'group' ? singly(mark.marks) : mark));
}
