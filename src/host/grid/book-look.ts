import {
  BooleanNumber,
  HorizontalAlign,
  type IBorderData,
  type IStyleData,
  type Nullable,
  VerticalAlign,
  WrapStrategy,
} from '@univerjs/core';
import { type Lettering, type Line, LINES, type Look, type Side, SIDES } from '../../exchange/xlsx/book';
import { readColour } from '../colour';
import { inRole, plain, roleOf } from './look';

/** Before the id of a planned style as the name of a file's style: "Title" and "Total" are taken by the office suite. */
const STYLE = 'Solebench ';

const ACROSS = [
  [HorizontalAlign.LEFT, 'left'],
  [HorizontalAlign.CENTER, 'center'],
  [HorizontalAlign.RIGHT, 'right'],
  [HorizontalAlign.JUSTIFIED, 'justify'],
  [HorizontalAlign.DISTRIBUTED, 'distributed'],
] as const;
const DOWN = [
  [VerticalAlign.TOP, 'top'],
  [VerticalAlign.MIDDLE, 'center'],
  [VerticalAlign.BOTTOM, 'bottom'],
] as const;
/** The grid's letters for a cell's sides. */
const SIDE: Readonly<Record<Side, 'l' | 'r' | 't' | 'b'>> = { left: 'l', right: 'r', top: 't', bottom: 'b' };

/**
 * A cell's style as a file has it.
 * @param id of a planned style, which the file is to name
 */
export function lookOf(style: IStyleData, id?: string): Look {
  const font = lettering(style);
  const ground = hex(style.bg?.rgb);
  const border = lines(style.bd);
  const across = ACROSS.find(([one]) => one === style.ht)?.[1];
  const down = DOWN.find(([one]) => one === style.vt)?.[1];
  const turned = style.tr?.v === BooleanNumber.TRUE ? 'stacked' : style.tr?.a ? -style.tr.a : undefined;
  return {
    ...(id !== undefined && { style: STYLE + id }),
    ...(Object.keys(font).length > 0 && { font }),
    ...(ground && { ground }),
    ...(Object.keys(border).length > 0 && { border }),
    ...(style.n?.pattern && style.n.pattern !== 'General' && { format: quoted(style.n.pattern) }),
    ...(across && { horizontal: across }),
    ...(down && { vertical: down }),
    ...(style.tb === WrapStrategy.WRAP && { wrap: true }),
    ...(turned !== undefined && { turned }),
  };
}

/** A style of the grid from a file's look. */
export function styleOfLook(look: Look): IStyleData {
  const { font = {}, ground, border, format, horizontal, vertical, wrap, turned } = look;
  const { family, points, bold, italic, underlined, struck, colour } = font;
  return {
    ...(family !== undefined && { ff: family }),
    ...(points !== undefined && { fs: points }),
    ...(bold && { bl: BooleanNumber.TRUE }),
    ...(italic && { it: BooleanNumber.TRUE }),
    ...(underlined && { ul: { s: BooleanNumber.TRUE } }),
    ...(struck && { st: { s: BooleanNumber.TRUE } }),
    ...(colour !== undefined && { cl: { rgb: colour } }),
    ...(ground !== undefined && { bg: { rgb: ground } }),
    ...(border && { bd: bordersOf(border) }),
    ...(format !== undefined && { n: { pattern: unquoted(format) } }),
    ...alignmentOf(horizontal, vertical),
    ...(wrap && { tb: WrapStrategy.WRAP }),
    ...(turned !== undefined && { tr: turned === 'stacked' ? { a: 0, v: BooleanNumber.TRUE } : { a: -turned } }),
  };
}

function alignmentOf(horizontal: Look['horizontal'], vertical: Look['vertical']): IStyleData {
  const across = ACROSS.find(([, name]) => name === horizontal)?.[0];
  const down = DOWN.find(([, name]) => name === vertical)?.[0];
  return { ...(across !== undefined && { ht: across }), ...(down !== undefined && { vt: down }) };
}

/** The id of the planned style that a look names, where the look still is that style's. */
export function plannedStyle(look: Look): string | undefined {
  const id = look.style?.startsWith(STYLE) ? look.style.slice(STYLE.length) : undefined;
  const style = id === undefined ? undefined : inRole(roleOf(id), id);
  return id !== undefined && style && alike(lookOf({ ...plain, ...style }, id), look) ? id : undefined;
}

function lettering({ ff, fs, bl, it, ul, st, cl }: IStyleData): Lettering {
  const colour = hex(cl?.rgb);
  // A file has one family, and no list of them.
  const family = ff?.split(',')[0]?.replace(/["']/g, '').trim();
  return {
    ...(family && { family }),
    ...(fs && { points: fs }),
    ...(bl === BooleanNumber.TRUE && { bold: true }),
    ...(it === BooleanNumber.TRUE && { italic: true }),
    ...(ul?.s === BooleanNumber.TRUE && { underlined: true }),
    ...(st?.s === BooleanNumber.TRUE && { struck: true }),
    ...(colour && { colour }),
  };
}

function lines(border: Nullable<IBorderData>): Partial<Record<Side, Line>> {
  return Object.fromEntries(
    SIDES.flatMap((side) => {
      const line = border?.[SIDE[side]];
      const weight = LINES[line?.s ?? 0];
      const colour = hex(line?.cl?.rgb);
      return !line || !weight || weight === 'none' ? [] : [[side, { weight, ...(colour && { colour }) }]];
    }),
  );
}

function bordersOf(border: NonNullable<Look['border']>): IBorderData {
  return Object.fromEntries(
    Object.entries(border).map(([side, { weight, colour }]) => [
      SIDE[side as Side],
      { s: LINES.indexOf(weight), cl: { rgb: colour ?? '#000000' } },
    ]),
  );
}

/** #RRGGBB of a colour that covers; undefined for any other. */
function hex(colour: Nullable<string>): string | undefined {
  const read = colour ? readColour(colour) : undefined;
  if (!read || read.cover === 0) return undefined;
  const two = (part: number) => Math.round(part).toString(16).padStart(2, '0').toUpperCase();
  return `#${two(read.red)}${two(read.green)}${two(read.blue)}`;
}

/** Letters that are none of a format's codes stand in quotes in a file. */
function quoted(pattern: string): string {
  return pattern.replace(/"[^"]*"|[°²³€£]+/g, (part) => (part.startsWith('"') ? part : `"${part}"`));
}

function unquoted(format: string): string {
  return format.replace(/"([°²³€£]+)"/g, '$1');
}

/** Whether two things of plain data are the same, whatever the order of their properties. */
function alike(one: unknown, other: unknown): boolean {
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return one === other;
  const keys = new Set([...Object.keys(one), ...Object.keys(other)]);
  return [...keys].every((key) => alike(Reflect.get(one, key), Reflect.get(other, key)));
}
