import { type Lettering, type Line, type Look, SIDES } from './book';
import { storedColour } from './colours';
import { BUILT_IN, FIRST_OWN } from './number-formats';
import { counted, element, part } from './xml-text';

const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';

/** Things that are written once, each by a number. */
class Numbered {
  readonly all: string[] = [];
  private readonly numbers = new Map<string, number>();

  constructor(...first: readonly string[]) {
    first.forEach((xml) => this.number(xml));
  }

  number(xml: string): number {
    let number = this.numbers.get(xml);
    if (number === undefined) {
      number = this.all.push(xml) - 1;
      this.numbers.set(xml, number);
    }
    return number;
  }
}

/** The first lettering of a file measures its columns: that of the vendor's own workbooks. */
export const FIRST_FONT: Lettering = { family: 'Calibri', points: 11 };
const NO_LINES = border({});

/** The looks of a workbook as the part of a file that holds them, each by a number; 0 is the look of none. */
export class Styles {
  private readonly formats = new Map<string, number>();
  private readonly fonts: Numbered;
  // The standard's readers expect these two grounds first.
  private readonly grounds = new Numbered(ground('none'), ground('gray125'));
  private readonly borders = new Numbered(NO_LINES);
  private readonly styles = new Numbered(element('xf', { numFmtId: 0, fontId: 0, fillId: 0, borderId: 0 }));
  private readonly styleNames = new Map<string, number>();
  private readonly looks = new Numbered(element('xf', { numFmtId: 0, fontId: 0, fillId: 0, borderId: 0, xfId: 0 }));
  private readonly known = new Map<Look, number>();

  /** @param ground what cells look like of which nothing is said */
  constructor(ground?: Look) {
    this.fonts = new Numbered(font({ ...FIRST_FONT, ...ground?.font }));
  }

  number(look: Look | undefined): number {
    if (!look) return 0;
    let number = this.known.get(look);
    if (number === undefined) {
      number = this.looks.number(this.xf(look, this.styleOf(look)));
      this.known.set(look, number);
    }
    return number;
  }

  /** @param conditional the looks of conditional formats, as they came */
  part(conditional = ''): string {
    const formats = [...this.formats].map(([formatCode, numFmtId]) => element('numFmt', { numFmtId, formatCode }));
    const names = [...this.styleNames].map(([name, xfId]) => element('cellStyle', { name, xfId }));
    return part(
      element(
        'styleSheet',
        { xmlns: MAIN },
        [
          counted('numFmts', formats),
          counted('fonts', this.fonts.all),
          counted('fills', this.grounds.all),
          counted('borders', this.borders.all),
          counted('cellStyleXfs', this.styles.all),
          counted('cellXfs', this.looks.all),
          counted('cellStyles', [element('cellStyle', { name: 'Normal', xfId: 0, builtinId: 0 }), ...names]),
          conditional,
        ].join(''),
      ),
    );
  }

  /** Number of the named style that a look has; 0 for none. The first look of a style is the style's. */
  private styleOf(look: Look): number {
    if (look.style === undefined) return 0;
    let number = this.styleNames.get(look.style);
    if (number === undefined) {
      // Two styles may look alike, and are two all the same.
      number = this.styles.all.push(this.xf(look)) - 1;
      this.styleNames.set(look.style, number);
    }
    return number;
  }

  private xf(look: Look, xfId?: number): string {
    const { font: letters, ground: colour, border: lines } = look;
    const ids = {
      numFmtId: this.format(look.format),
      fontId: letters ? this.fonts.number(font(letters)) : 0,
      fillId: colour ? this.grounds.number(ground('solid', colour)) : 0,
      borderId: lines ? this.borders.number(border(lines)) : 0,
    };
    const aligned = alignment(look);
    const applied = {
      applyNumberFormat: ids.numFmtId > 0 || undefined,
      applyFont: ids.fontId > 0 || undefined,
      applyFill: ids.fillId > 0 || undefined,
      applyBorder: ids.borderId > 0 || undefined,
      applyAlignment: aligned !== '' || undefined,
    };
    return element('xf', { ...ids, xfId, ...(xfId !== undefined && applied) }, aligned);
  }

  private format(format = 'General'): number {
    for (const [number, builtIn] of BUILT_IN) if (builtIn === format) return number;
    let number = this.formats.get(format);
    if (number === undefined) this.formats.set(format, (number = FIRST_OWN + this.formats.size));
    return number;
  }
}

function font({ bold, italic, struck, underlined, points, colour, family }: Lettering): string {
  const rgb = storedColour(colour);
  return element(
    'font',
    {},
    [
      bold ? '<b/>' : '',
      italic ? '<i/>' : '',
      struck ? '<strike/>' : '',
      underlined ? '<u/>' : '',
      element('sz', { val: points ?? FIRST_FONT.points }),
      rgb ? element('color', { rgb }) : element('color', { theme: 1 }),
      element('name', { val: family ?? FIRST_FONT.family }),
      element('family', { val: 2 }),
    ].join(''),
  );
}

function ground(patternType: string, colour?: string): string {
  const front = colour ? element('fgColor', { rgb: storedColour(colour) }) + element('bgColor', { indexed: 64 }) : '';
  return element('fill', {}, element('patternFill', { patternType }, front));
}

function border(lines: Readonly<Partial<Record<string, Line>>>): string {
  const sides = SIDES.map((side) => {
    const line = lines[side];
    if (!line || line.weight === 'none') return element(side, {});
    const rgb = storedColour(line.colour);
    return element(side, { style: line.weight }, element('color', rgb ? { rgb } : { auto: true }));
  });
  return element('border', {}, `${sides.join('')}<diagonal/>`);
}

function alignment({ horizontal, vertical, wrap, turned }: Look): string {
  // Clockwise turns are counted from 90 on; 255 is letters below each other.
  const textRotation = turned === 'stacked' ? 255 : turned !== undefined && turned < 0 ? 90 - turned : turned;
  if (horizontal === undefined && vertical === undefined && !wrap && textRotation === undefined) return '';
  return element('alignment', { horizontal, vertical, textRotation, wrapText: wrap || undefined });
}
