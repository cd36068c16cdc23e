import type { Point } from '../core/geometry/ring';

/**
 * A picture, drawn in drawing millimetres: 1 u is 1 mm on paper and 4 px on the screen. Its classes are those of
 * drawing.css; it names no colour.
 */
export interface Picture {
  /** u */
  readonly width: number;
  readonly height: number;
  /** One sentence with the picture's facts. */
  readonly label: string;
  /** The same facts as a table. */
  readonly facts: readonly (readonly [what: string, value: string])[];
  /** SVG elements. */
  readonly body: string;
  /** Parts that can be picked one by one; the element of each carries its id as data-item. */
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

/** A picture as an SVG element. Its label is spoken in place of it. */
export function toSvg({ width, height, label, body }: Picture, id = ''): string {
  const size = `viewBox="0 0 ${f(width)} ${f(height)}" width="${f(width * PX_PER_U)}" height="${f(height * PX_PER_U)}"`;
  const name = id && ` id="${id}"`;
  return `<svg xmlns="http://www.w3.org/2000/svg" class="draw"${name} ${size} role="img" aria-label="${escape(label)}">${body}</svg>`;
}

/** A coordinate with two decimals, which is a hundredth of a drawing millimetre. */
export function f(value: number): string {
  return String(Math.round(value * 100) / 100 + 0);
}

export function escape(text: string): string {
  return text.replace(/[&<>"]/g, (sign) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[sign] as string);
}

/** From a picture's own coordinates to drawing millimetres. */
export interface Scale {
  readonly x: (mm: number) => number;
  readonly y: (mm: number) => number;
}

/** Path data through points, closed unless said otherwise. */
export function trace(points: readonly Point[], { x, y }: Scale, open = false): string {
  return `M${points.map((p) => `${f(x(p[0]))} ${f(y(p[1]))}`).join('L')}${open ? '' : 'Z'}`;
}

export function path(kind: string, data: string, more = ''): string {
  return `<path class="${kind}" d="${data}"${more}/>`;
}

export function line(kind: string, x1: number, y1: number, x2: number, y2: number): string {
  return path(kind, `M${f(x1)} ${f(y1)}L${f(x2)} ${f(y2)}`);
}

export type Anchor = 'start' | 'middle' | 'end';

/** Lettering of 3.5 u, level, with a halo of the ground. */
export function text(x: number, y: number, words: string | number, kind = '', anchor: Anchor = 'middle'): string {
  return `<text class="t${kind && ` ${kind}`}" x="${f(x)}" y="${f(y)}" text-anchor="${anchor}">${escape(String(words))}</text>`;
}
