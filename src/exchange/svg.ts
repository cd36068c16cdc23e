import type { Point } from '../core/geometry/ring';
import { type FileLayer, LETTER_SIZES, type Mark, type Marks, PENS, singly } from '../drawing/mark';
import { escape } from '../drawing/svg';
import { LAYER_NAMES } from './dxf';
import { plainWords } from './plain-words';

/**
 * Marks as an SVG file in mm for cutting and drawing machines: one group for each kind of line, no fills. Marks without a
 * layer are for the eye alone and are left out.
 * @param box of the drawing, mm, y downward
 */
export function writeSvg(
  marks: Marks,
  title: string,
  box: { readonly left: number; readonly bottom: number; readonly right: number; readonly top: number },
): string {
  const [width, height] = [n(box.right - box.left), n(box.top - box.bottom)];
  const all = singly(marks);
  const groups = (Object.keys(LAYER_NAMES) as FileLayer[]).flatMap((layer) => {
    const own = all.filter((mark) => mark.layer === layer);
    if (own.length === 0) return [];
    const look = layer === 'text' ? 'fill="black"' : 'fill="none" stroke="black"';
    return [`<g id="${LAYER_NAMES[layer].replace(' ', '-')}" ${look}>`, ...own.map(element), '</g>'];
  });
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="${n(box.left)} ${n(box.bottom)} ${width} ${height}" font-family="Arial, 'Liberation Sans', sans-serif">`,
    `<title>${escape(plainWords(title))}</title>`,
    ...groups,
    '</svg>',
    '',
  ].join('\n');
}

/** To a ten-thousandth of a millimetre. */
function n(value: number): string {
  return String(Math.round(value * 1e4) / 1e4 + 0);
}

function data(points: readonly Point[], closed: boolean): string {
  return `M${points.map(([x, y]) => `${n(x)} ${n(y)}`).join('L')}${closed ? 'Z' : ''}`;
}

function element(mark: Exclude<Mark, { kind: 'group' }>): string {
  switch (mark.kind) {
    case 'line':
      return `<path d="${data(mark.points, false)}" stroke-width="${PENS[mark.pen].width}"/>`;
    case 'area':
      return `<path d="${mark.rings.map((ring) => data(ring, true)).join('')}" stroke-width="${PENS[mark.pen ?? 'narrow'].width}"/>`;
    case 'circle':
      return `<circle cx="${n(mark.at[0])}" cy="${n(mark.at[1])}" r="${n(mark.radius)}" stroke-width="${PENS[mark.pen ?? 'narrow'].width}"/>`;
    case 'text': {
      const { at, words, anchor, lettering, size = LETTER_SIZES[lettering], turn = 0 } = mark;
      const turned = turn === 0 ? '' : ` transform="rotate(${n(-turn)} ${n(at[0])} ${n(at[1])})"`;
      return `<text x="${n(at[0])}" y="${n(at[1])}" font-size="${n(size)}" text-anchor="${anchor}"${turned}>${escape(plainWords(words))}</text>`;
    }
  }
}
