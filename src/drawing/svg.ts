import type { Point, Ring } from '../core/geometry/ring';
import { isolated } from './isolated';
import {
  type AreaMark,
  type CircleMark,
  type Fill,
  LETTER_SIZES,
  type Lettering,
  type Mark,
  type Marks,
  type Pen,
  type TextMark,
} from './mark';

/**
 * A picture, drawn in drawing millimetres: 1 u is 1 mm on paper and 4 px on the screen. It names no colour.
 */
export interface Picture {
  /** u */
  readonly width: number;
  readonly height: number;
  /** One sentence with the picture's facts. */
  readonly label: string;
  /** The same facts as a table. */
  readonly facts: readonly (readonly [what: string, value: string])[];
  readonly marks: Marks;
  /** What figures in the picture stand for, where there is no room for words in it. */
  readonly legend?: readonly string[];
  /** Parts that can be picked one by one: the marks that carry their ids. */
  readonly items?: readonly PictureItem[];
  /** Drawing millimetres per mm, where the picture is to scale. */
  readonly scale?: number;
}

export interface PictureItem {
  readonly id: string;
  /** What it is, spoken when it is picked. */
  readonly label: string;
}

/** Screen pixels of a drawing millimetre. */
export const PX_PER_U = 4;

/** A picture as an SVG element whose classes are those of drawing.css. Its label is spoken in place of it. */
export function toSvg({ width, height, label, marks }: Picture, id = ''): string {
  const size = `viewBox="0 0 ${f(width)} ${f(height)}" width="${f(width * PX_PER_U)}" height="${f(height * PX_PER_U)}"`;
  const name = id && ` id="${id}"`;
  return `<svg xmlns="http://www.w3.org/2000/svg" class="draw"${name} ${size} role="img" aria-label="${escape(label)}">${svgOf(marks)}</svg>`;
}

/** A coordinate with two decimals, which is a hundredth of a drawing millimetre. */
export function f(value: number): string {
  return String(Math.round(value * 100) / 100 + 0);
}

export function escape(text: string): string {
  return text.replace(/[&<>"]/g, (sign) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[sign] as string);
}

/** Path data through points. */
export function trace(points: readonly Point[], open = false): string {
  return `M${points.map(([x, y]) => `${f(x)} ${f(y)}`).join('L')}${open ? '' : 'Z'}`;
}

/** The classes of drawing.css. */
const PEN_CLASSES: Readonly<Record<Pen, string>> = {
  wide: 'w',
  narrow: 'n',
  dashed: 'hd',
  chain: 'ch',
  phantom: 'ph',
  face: 'fl',
  cell: 'cell',
};
const LETTER_CLASSES: Readonly<Record<Lettering, string>> = {
  plain: '',
  bold: ' b',
  quiet: ' q',
  big: ' big',
  mid: ' mid',
  on: ' on',
};

/** Marks as SVG elements. */
export function svgOf(marks: Marks): string {
  return marks.map(element).join('');
}

function element(mark: Mark): string {
  const item = mark.item === undefined ? '' : ` data-item="${escape(mark.item)}"`;
  switch (mark.kind) {
    case 'line':
      return `<path class="${PEN_CLASSES[mark.pen]}${mark.accent ? ' acc' : ''}" d="${trace(mark.points, true)}"${item}/>`;
    case 'area':
      return `<path class="${classesOf(mark)}" d="${mark.rings.map((ring) => trace(ring)).join('')}"${fillOf(mark)}${item}/>`;
    case 'circle':
      return `<circle class="${classesOf(mark)}" cx="${f(mark.at[0])}" cy="${f(mark.at[1])}" r="${f(mark.radius)}"${fillOf(mark)}${item}/>`;
    case 'text':
      return lettered(mark);
    case 'group':
      if (mark.clip) return clipped(mark.clip, svgOf(mark.marks));
      return mark.item === undefined ? svgOf(mark.marks) : `<g${item}>${svgOf(mark.marks)}</g>`;
  }
}

/** What is seen of some elements within a ring; its id stands for the ring. */
function clipped(ring: Ring, elements: string): string {
  const data = trace(ring);
  let sum = 7;
  for (let i = 0; i < data.length; i++) sum = (sum * 31 + data.charCodeAt(i)) % 4294967291;
  const id = `clip-${sum.toString(36)}`;
  return `<clipPath id="${id}"><path d="${data}"/></clipPath><g clip-path="url(#${id})">${elements}</g>`;
}

function classesOf({ pen, fill, accent }: AreaMark | CircleMark): string {
  const classes = [
    pen ? PEN_CLASSES[pen] : fill === 'nothing' ? 'ground' : fill === 'paper' ? '' : 'solid',
    accent && 'acc',
    fill === 'wash' && 'wash',
    fill === 'paper' && 'white',
  ];
  return classes.filter(Boolean).join(' ');
}

function fillOf({ pen, fill }: AreaMark | CircleMark): string {
  if (pen && fill === 'ink') return ' fill="currentColor"';
  return typeof fill === 'object' ? ` fill="url(#${hatchId(fill)})"` : '';
}

/** The id of a hatching's pattern. */
export function hatchId({ material, turned }: Exclude<Fill, string>): string {
  return `hatch-${material}${turned && material === 'leather' ? '-2' : ''}`;
}

function lettered({ at: [x, y], words, lettering, anchor, size, turn }: TextMark): string {
  if (size !== undefined || turn) {
    // The size of the lettering is its class's; another one is drawn to scale, and its halo with it.
    const scale = (size ?? LETTER_SIZES[lettering]) / LETTER_SIZES[lettering];
    const moves = `translate(${f(x)} ${f(y)})${turn ? ` rotate(${f(-turn)})` : ''} scale(${Math.round(scale * 1000) / 1000})`;
    return `<text class="t${LETTER_CLASSES[lettering]}" transform="${moves}" text-anchor="${anchor}">${escape(isolated(words))}</text>`;
  }
  return `<text class="t${LETTER_CLASSES[lettering]}" x="${f(x)}" y="${f(y)}" text-anchor="${anchor}">${escape(isolated(words))}</text>`;
}
