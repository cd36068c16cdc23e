import { type Lettering, type Line, LINES, type Look, type Side, SIDES } from './book';
import { colourOf, type Theme } from './colours';
import type { Container } from './container';
import type { Counter } from './limits';
import { BUILT_IN } from './number-formats';
import { type Attributes, Copy, decimal, isTrue, readXml, whole } from './read-xml';
import { fromCellText } from './xml-text';

/** The looks that a file's cells name by number, and what conditional formats refer to. */
export interface FileStyles {
  readonly looks: readonly Look[];
  /** By a look's number, what of it is not read, in words. */
  readonly missing: readonly (readonly string[])[];
  /** Looks of cells that may be changed on a sheet that is locked. */
  readonly unlocked: ReadonlySet<number>;
  readonly conditional: string | undefined;
}

/** Of a file that has none. */
export const NO_STYLES: FileStyles = { looks: [], missing: [], unlocked: new Set(), conditional: undefined };

/** A look's parts while they are read. */
type Draft<T> = { -readonly [key in keyof T]: T[key] };

/** What looks refer to by number. */
interface Parts {
  readonly fonts: Draft<Lettering>[];
  readonly grounds: { colour?: string; none?: boolean }[];
  readonly borders: Partial<Record<Side, Draft<Line>>>[];
  /** Numbers of fonts, grounds and borders of which something is not read. */
  readonly raised: Set<number>;
  readonly patterned: Set<number>;
  readonly slanting: Set<number>;
  readonly formats: Map<number, string>;
  readonly styles: Attributes[];
  readonly styleNames: Map<number, string>;
  readonly looks: {
    readonly given: Attributes;
    readonly aligned: Draft<Look>;
    readonly missing: string[];
    unlocked?: boolean;
  }[];
}

/** Reads the part that holds the looks. */
export function readStyles(container: Container, name: string, theme: Theme, counter: Counter): FileStyles {
  const parts: Parts = {
    fonts: [],
    grounds: [],
    borders: [],
    raised: new Set(),
    patterned: new Set(),
    slanting: new Set(),
    formats: new Map(BUILT_IN),
    styles: [],
    styleNames: new Map(),
    looks: [],
  };
  const conditional = new Copy();
  readXml(container, name, {
    open(element, attributes, inside) {
      if (element === 'dxfs' || conditional.busy) return conditional.start(element, attributes);
      counter.add('others', 'styles', isItem(inside) ? 1 : 0);
      take(parts, element, attributes, inside, theme);
    },
    text: (text) => conditional.busy && conditional.text(text),
    close: (element) => conditional.busy && conditional.end(element),
  });
  const dxfs = conditional.toString();
  return {
    looks: parts.looks.map(({ given, aligned }) => lookOf(parts, given, aligned)),
    missing: parts.looks.map(({ given, missing }) => [...missing, ...missingOf(parts, given)]),
    unlocked: new Set(parts.looks.flatMap(({ unlocked }, at) => (unlocked ? [at] : []))),
    conditional: dxfs === '' || (dxfs.endsWith('/>') && !dxfs.includes('><')) ? undefined : dxfs,
  };
}

function isItem(inside: readonly string[]): boolean {
  return inside.length === 2;
}

function take(parts: Parts, element: string, given: Attributes, inside: readonly string[], theme: Theme): void {
  const [, list, item] = inside;
  if (list === 'fonts') {
    takeFont(parts.fonts, element, given, item, theme);
    if (element === 'vertAlign' && given['val'] !== 'baseline') parts.raised.add(parts.fonts.length - 1);
  } else if (list === 'fills') {
    takeGround(parts.grounds, element, given, theme);
    if (isPatterned(element, given)) parts.patterned.add(parts.grounds.length - 1);
  } else if (list === 'borders') {
    takeBorder(parts.borders, element, given, inside, theme);
    if (element === 'diagonal' && given['style'] && given['style'] !== 'none')
      parts.slanting.add(parts.borders.length - 1);
  } else if (element === 'numFmt' && list === 'numFmts') {
    parts.formats.set(whole(given['numFmtId']) ?? -1, fromCellText(given['formatCode'] ?? 'General'));
  } else if (list === 'cellStyleXfs' && element === 'xf') parts.styles.push(given);
  else if (list === 'cellStyles' && element === 'cellStyle') {
    parts.styleNames.set(whole(given['xfId']) ?? -1, fromCellText(given['name'] ?? ''));
  } else if (list === 'cellXfs' && element === 'xf') parts.looks.push({ given, aligned: {}, missing: [] });
  else if (list === 'cellXfs' && element === 'alignment') {
    const look = parts.looks.at(-1);
    if (look) {
      Object.assign(look.aligned, alignment(given));
      look.missing.push(...missingInAlignment(given));
    }
  } else if (list === 'cellXfs' && element === 'protection') {
    const look = parts.looks.at(-1);
    if (look && !isTrue(given['locked'], true)) look.unlocked = true;
  }
}

/** Whether a ground is more than one colour. */
function isPatterned(element: string, { patternType }: Attributes): boolean {
  // Each file has the faintest pattern as its second ground, whether it is used or not.
  const plain = patternType === undefined || ['none', 'solid', 'gray125'].includes(patternType);
  return element === 'gradientFill' || (element === 'patternFill' && !plain);
}

function missingInAlignment({ horizontal, indent, shrinkToFit }: Attributes): string[] {
  return [
    ...(whole(indent) ? ['room before letters (indents)'] : []),
    ...(isTrue(shrinkToFit) ? ['letters that shrink to fit'] : []),
    ...(horizontal === 'fill' || horizontal === 'centerContinuous'
      ? ['words that fill or run over several cells']
      : []),
  ];
}

function missingOf({ raised, patterned, slanting }: Parts, { fontId, fillId, borderId }: Attributes): string[] {
  const has = (set: ReadonlySet<number>, number: string | undefined) => set.has(whole(number) ?? 0);
  return [
    ...(has(raised, fontId) ? ['raised and lowered letters'] : []),
    ...(has(patterned, fillId) ? ['patterns and gradients of grounds; they have one colour'] : []),
    ...(has(slanting, borderId) ? ['slanting lines through cells'] : []),
  ];
}

function takeFont(
  fonts: Draft<Lettering>[],
  element: string,
  given: Attributes,
  item: string | undefined,
  theme: Theme,
) {
  if (item === undefined) fonts.push({});
  const font = fonts.at(-1);
  if (!font || item === undefined) return;
  const { val } = given;
  if (element === 'b') font.bold = isTrue(val, true);
  else if (element === 'i') font.italic = isTrue(val, true);
  else if (element === 'strike') font.struck = isTrue(val, true);
  else if (element === 'u') font.underlined = val !== 'none';
  else if (element === 'sz') font.points = decimal(val) ?? 11;
  else if (element === 'name' && val) font.family = fromCellText(val);
  else if (element === 'color') {
    const colour = colourOf(given, theme);
    if (colour) font.colour = colour;
  }
}

function takeGround(grounds: Parts['grounds'], element: string, given: Attributes, theme: Theme) {
  if (element === 'fill') grounds.push({});
  const ground = grounds.at(-1);
  if (element === 'patternFill' && ground) ground.none = given['patternType'] === 'none';
  if (!ground || ground.none) return;
  // Patterns are shown as their front colour, gradients as their first.
  const front = element === 'fgColor' || (element === 'color' && ground.colour === undefined);
  const colour = front ? colourOf(given, theme) : undefined;
  if (colour) ground.colour = colour;
}

function takeBorder(
  borders: Partial<Record<Side, Draft<Line>>>[],
  element: string,
  given: Attributes,
  inside: readonly string[],
  theme: Theme,
) {
  if (inside.length === 2) borders.push({});
  const border = borders.at(-1);
  if (!border) return;
  // Right to left sheets name their sides by start and end.
  const sideOf = (name: string | undefined) =>
    SIDES.find((side) => side === ({ start: 'left', end: 'right' }[name ?? ''] ?? name));
  const side = sideOf(element);
  const weight = LINES.find((one) => one === given['style']);
  if (inside.length === 3 && side && weight && weight !== 'none') border[side] = { weight };
  const line = border[sideOf(inside[3]) ?? 'left'];
  const colour = element === 'color' && inside.length === 4 ? colourOf(given, theme) : undefined;
  if (line && colour && sideOf(inside[3])) line.colour = colour;
}

function alignment({ horizontal, vertical, wrapText, textRotation }: Attributes): Draft<Look> {
  const found: Draft<Look> = {};
  const across = (['left', 'center', 'right', 'justify', 'distributed'] as const).find((one) => one === horizontal);
  const down = (['top', 'center', 'bottom'] as const).find((one) => one === vertical);
  if (across) found.horizontal = across;
  if (down) found.vertical = down;
  if (isTrue(wrapText)) found.wrap = true;
  const turn = whole(textRotation, 255);
  if (turn === 255) found.turned = 'stacked';
  else if (turn) found.turned = turn <= 90 ? turn : 90 - turn;
  return found;
}

function lookOf(parts: Parts, given: Attributes, aligned: Draft<Look>): Look {
  const look: Draft<Look> = { ...aligned };
  const style = whole(given['xfId']);
  const name = style ? parts.styleNames.get(style) : undefined;
  if (name !== undefined) look.style = name;
  const font = parts.fonts[whole(given['fontId']) ?? 0];
  if (font && Object.keys(font).length > 0) look.font = font;
  const ground = parts.grounds[whole(given['fillId']) ?? 0];
  if (ground?.colour) look.ground = ground.colour;
  const border = parts.borders[whole(given['borderId']) ?? 0];
  if (border && Object.keys(border).length > 0) look.border = border;
  const format = parts.formats.get(whole(given['numFmtId']) ?? 0);
  if (format !== undefined && format !== 'General') look.format = format;
  return look;
}
