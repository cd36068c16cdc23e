/** What of the PDF library is used here; it brings no types of its own. */
declare module 'pdfkit' {
  interface PathData {
    toSVG(): string;
  }

  interface FontProgram {
    readonly unitsPerEm: number;
    hasGlyphForCodePoint(codePoint: number): boolean;
    layout(words: string): {
      readonly glyphs: readonly { readonly path: PathData }[];
      readonly positions: readonly { readonly xAdvance: number; readonly xOffset: number; readonly yOffset: number }[];
    };
  }

  export default class PDFDocument {
    constructor(options: Readonly<Record<string, unknown>>);
    /** The font in use. */
    readonly _font: { readonly font: FontProgram };
    registerFont(name: string, source: Uint8Array): this;
    font(name: string): this;
    fontSize(size: number): this;
    addPage(options: { readonly size: readonly [number, number]; readonly margin: number }): this;
    text(
      words: string,
      x: number,
      y: number,
      options: { readonly lineBreak: false; readonly baseline: 'alphabetic' },
    ): this;
    widthOfString(words: string): number;
    save(): this;
    restore(): this;
    scale(x: number, y?: number): this;
    translate(x: number, y: number): this;
    rotate(degrees: number): this;
    moveTo(x: number, y: number): this;
    lineTo(x: number, y: number): this;
    closePath(): this;
    circle(x: number, y: number, radius: number): this;
    path(data: string): this;
    clip(rule?: 'even-odd'): this;
    lineWidth(width: number): this;
    lineCap(cap: 'butt' | 'round'): this;
    lineJoin(join: 'miter' | 'round'): this;
    dash(length: readonly number[], options: { readonly phase: number }): this;
    undash(): this;
    strokeColor(colour: string): this;
    fillColor(colour: string): this;
    stroke(): this;
    fill(rule: 'even-odd' | 'non-zero'): this;
    fillAndStroke(fill: string, stroke: string, rule: 'even-odd'): this;
    on(event: 'data', listener: (chunk: Uint8Array) => void): this;
    on(event: 'end', listener: () => void): this;
    on(event: 'error', listener: (error: Error) => void): this;
    end(): void;
  }
}
