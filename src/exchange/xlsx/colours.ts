import type { Container } from './container';
import { type Attributes, decimal, readXml, whole } from './read-xml';

/** Colours that files name by a number (ECMA-376 part 1, 18.8.27), without #. */
const INDEXED: readonly string[] = [
  ...'000000 FFFFFF FF0000 00FF00 0000FF FFFF00 FF00FF 00FFFF 000000 FFFFFF FF0000 00FF00 0000FF FFFF00 FF00FF'.split(
    ' ',
  ),
  ...'00FFFF 800000 008000 000080 808000 800080 008080 C0C0C0 808080 9999FF 993366 FFFFCC CCFFFF 660066 FF8080'.split(
    ' ',
  ),
  ...'0066CC CCCCFF 000080 FF00FF FFFF00 00FFFF 800080 800000 008080 0000FF 00CCFF CCFFFF CCFFCC FFFF99 99CCFF'.split(
    ' ',
  ),
  ...'FF99CC CC99FF FFCC99 3366FF 33CCCC 99CC00 FFCC00 FF9900 FF6600 666699 969696 003366 339966 003300 333300'.split(
    ' ',
  ),
  ...'993300 993366 333399 333333'.split(' '),
];

/** Where a colour's number in a file points to in the theme, whose list begins with the dark colours. */
const ORDER = [
  'lt1',
  'dk1',
  'lt2',
  'dk2',
  'accent1',
  'accent2',
  'accent3',
  'accent4',
  'accent5',
  'accent6',
  'hlink',
  'folHlink',
];

/** The colours of a workbook's theme by the number that cells' looks name them with. */
export type Theme = readonly (string | undefined)[];

/** Reads a theme part. */
export function readTheme(container: Container, name: string): Theme {
  const found = new Map<string, string>();
  readXml(container, name, {
    open(element, { val, lastClr }, inside) {
      const colour = element === 'srgbClr' ? val : element === 'sysClr' ? lastClr : undefined;
      const of = inside.at(-1);
      if (colour && of && inside.at(-2) === 'clrScheme' && !found.has(of)) found.set(of, colour);
    },
  });
  return ORDER.map((of) => found.get(of));
}

/** A colour as #RRGGBB from how a look's element names it; undefined where it is the reader's own. */
export function colourOf({ rgb, theme, indexed, tint }: Attributes, colours: Theme): string | undefined {
  const named = rgb ?? colours[whole(theme) ?? -1] ?? INDEXED[whole(indexed) ?? -1];
  const hex = /^(?:[\dA-F]{2})?([\dA-F]{6})$/i.exec(named ?? '')?.[1];
  return hex && `#${tinted(hex, decimal(tint) ?? 0)}`;
}

/** A colour made darker (tint below 0) or lighter by its luminance (18.8.19), which leaves hue and saturation alone. */
function tinted(hex: string, tint: number): string {
  if (tint === 0) return hex.toUpperCase();
  const [red, green, blue] = [0, 2, 4].map((at) => parseInt(hex.slice(at, at + 2), 16) / 255) as [
    number,
    number,
    number,
  ];
  const [most, least] = [Math.max(red, green, blue), Math.min(red, green, blue)];
  const light = (most + least) / 2;
  const saturation = most === least ? 0 : (most - least) / (1 - Math.abs(2 * light - 1));
  const now = Math.min(1, Math.max(0, tint < 0 ? light * (1 + tint) : light + (1 - light) * tint));
  const spread = saturation * (1 - Math.abs(2 * now - 1));
  return [red, green, blue]
    .map((value) => now + spread * (most === least ? 0 : (value - light) / (most - least)))
    .map((value) => Math.round(Math.min(1, Math.max(0, value)) * 255))
    .map((value) => value.toString(16).padStart(2, '0').toUpperCase())
    .join('');
}

/** A colour as the attribute of a file: opaque. undefined for anything but #RRGGBB. */
export function storedColour(colour: string | undefined): string | undefined {
  const hex = /^#([\dA-F]{6})$/i.exec(colour ?? '')?.[1];
  return hex && `FF${hex.toUpperCase()}`;
}
