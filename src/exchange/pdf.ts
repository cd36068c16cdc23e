import PDFDocument from 'pdfkit';
import type { Point, Ring } from '../core/geometry/ring';
import { tileOf } from '../drawing/hatching';
import {
  type Fill,
  type Hatch,
  LETTER_SIZES,
  type Mark,
  type Marks,
  type Pen,
  PENS,
  type TextMark,
} from '../drawing/mark';
import { movedMarks } from '../drawing/move-marks';
import type { Page } from '../drawing/paper/page';
import { type DirectedRun, directedRuns } from './directed-runs';
import { plainWords } from './plain-words';

/** The two weights of an embedded font. */
export interface PdfFonts {
  readonly regular: Uint8Array;
  readonly semibold: Uint8Array;
}

export interface PdfFacts {
  readonly title: string;
  /** Written as the day of making; without it, none is claimed. */
  readonly date?: Date | undefined;
}

export interface Pdf {
  readonly bytes: Uint8Array;
  /** Characters that the font lacks and that stand as □, each once. */
  readonly lacking: readonly string[];
}

const POINTS_PER_MM = 72 / 25.4;
/** Stands for a character that the font lacks. */
const LACKING = '□';
const INK = '#000000';
const QUIET = '#333333';
const WASH = '#e4e4e4';
const PAPER = '#ffffff';

/** Writes a document page by page; between pages it hands over, so that whoever makes it can wait, show and stop. */
export async function writePdf(
  pages: readonly Page[],
  { title, date }: PdfFacts,
  fonts: PdfFonts,
  between: (done: number) => Promise<void> | void = () => undefined,
): Promise<Pdf> {
  const document = new PDFDocument({
    autoFirstPage: false,
    // No font of the library's own is asked for, which it does not bring along everywhere.
    font: '',
    margin: 0,
    lang: 'en',
    displayTitle: true,
    pdfVersion: '1.7',
    info: { Title: plainWords(title), Creator: 'Solebench', Producer: 'Solebench', CreationDate: date ?? new Date(0) },
  });
  const chunks: Uint8Array[] = [];
  const ended = new Promise<void>((resolve, reject) => {
    document.on('data', (chunk) => chunks.push(chunk));
    document.on('end', resolve);
    document.on('error', reject);
  });
  document.registerFont('regular', fonts.regular).registerFont('semibold', fonts.semibold);
  const pen = new PdfPen(document);
  for (const [i, page] of pages.entries()) {
    const size = [page.width * POINTS_PER_MM, page.height * POINTS_PER_MM] as const;
    document.addPage({ size, margin: 0 }).scale(POINTS_PER_MM);
    pen.draw(page.draw(i + 1, pages.length));
    await between(i + 1);
  }
  document.end();
  await ended;
  return { bytes: joined(chunks), lacking: [...pen.lacking].sort() };
}

function joined(chunks: readonly Uint8Array[]): Uint8Array {
  const bytes = new Uint8Array(chunks.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const chunk of chunks) {
    bytes.set(chunk, at);
    at += chunk.length;
  }
  return bytes;
}

/** Draws marks on the page at hand, in mm. */
class PdfPen {
  readonly lacking = new Set<string>();

  constructor(private readonly document: PDFDocument) {
    document.font('regular');
  }

  draw(marks: Marks): void {
    for (const mark of marks) this.mark(mark);
  }

  private mark(mark: Mark): void {
    const { document } = this;
    switch (mark.kind) {
      case 'line':
        this.setPen(mark.pen);
        this.trace(mark.points);
        document.stroke();
        return;
      case 'area':
        this.area(
          mark.pen,
          mark.fill ?? (mark.pen ? 'nothing' : 'ink'),
          () => mark.rings.forEach((ring) => this.closed(ring)),
          mark.rings,
        );
        return;
      case 'circle':
        this.area(mark.pen, mark.fill ?? 'nothing', () => document.circle(mark.at[0], mark.at[1], mark.radius), []);
        return;
      case 'text':
        this.text(mark);
        return;
      case 'group':
        if (!mark.clip) return this.draw(mark.marks);
        document.save();
        this.closed(mark.clip);
        document.clip();
        this.draw(mark.marks);
        document.restore();
    }
  }

  private area(pen: Pen | undefined, fill: Fill, path: () => void, rings: readonly Ring[]): void {
    const { document } = this;
    if (typeof fill === 'object') {
      this.hatch(fill, rings);
      if (!pen) return;
      fill = 'nothing';
    }
    if (fill === 'nothing' && !pen) return;
    const colour = { ink: INK, wash: WASH, paper: PAPER, nothing: undefined }[fill];
    if (pen) this.setPen(pen);
    path();
    if (colour && pen) document.fillAndStroke(colour, INK, 'even-odd');
    else if (colour) document.fillColor(colour).fill('even-odd');
    else document.stroke();
  }

  /** Repeats a material's tile within rings. */
  private hatch(hatch: Hatch, rings: readonly Ring[]): void {
    const { document } = this;
    const { width, height, turn, marks } = tileOf(hatch);
    document.save();
    rings.forEach((ring) => this.closed(ring));
    document.clip('even-odd');
    // The tile's own turn is clockwise: the box about the rings is looked at turned back.
    const angle = (turn * Math.PI) / 180;
    const seen = rings
      .flat()
      .map(([x, y]): Point => [x * Math.cos(angle) + y * Math.sin(angle), y * Math.cos(angle) - x * Math.sin(angle)]);
    const [xs, ys] = [seen.map(([x]) => x), seen.map(([, y]) => y)];
    document.rotate(turn);
    const [left, right] = [Math.floor(Math.min(...xs) / width), Math.max(...xs) / width];
    const [top, bottom] = [Math.floor(Math.min(...ys) / height), Math.max(...ys) / height];
    for (let i = left; i < right; i++) {
      for (let k = top; k < bottom; k++) this.draw(movedMarks(marks, 0, i * width, k * height));
    }
    document.restore();
  }

  private setPen(pen: Pen): void {
    const { width, dashes } = PENS[pen];
    const { document } = this;
    document.lineWidth(width).lineJoin('round').lineCap('butt').strokeColor(INK);
    if (dashes) document.dash(dashes, { phase: 0 });
    else document.undash();
  }

  private trace(points: readonly Point[]): void {
    points.forEach(([x, y], i) => (i === 0 ? this.document.moveTo(x, y) : this.document.lineTo(x, y)));
  }

  private closed(ring: Ring): void {
    this.trace(ring);
    this.document.closePath();
  }

  private text({ at: [x, y], words, lettering, anchor, size = LETTER_SIZES[lettering], turn = 0 }: TextMark): void {
    const { document } = this;
    const weight = lettering === 'bold' || lettering === 'big' ? 'semibold' : 'regular';
    document.font(weight).fontSize(size);
    const shown = this.known(plainWords(words));
    if (shown === '') return;
    const runs = directedRuns(shown).map((run) => this.asLaid(run));
    const widths = runs.map((run) => document.widthOfString(run));
    const wide = widths.reduce((sum, one) => sum + one, 0);
    let from = anchor === 'start' ? 0 : anchor === 'middle' ? -wide / 2 : -wide;
    const placed = runs.map((run, i) => {
      const at = from;
      from += widths[i] ?? 0;
      return { run, at };
    });
    document.save().translate(x, y);
    if (turn !== 0) document.rotate(-turn);
    for (const { run, at } of placed) this.halo(run, at, size);
    document.fillColor(lettering === 'quiet' ? QUIET : INK);
    for (const { run, at } of placed) document.text(run, at, 0, { lineBreak: false, baseline: 'alphabetic' });
    document.restore();
  }

  /** The font turns letters of right-to-left scripts round by itself; signs between them alone it does not know for such. */
  private asLaid({ words, rightToLeft }: DirectedRun): string {
    return rightToLeft && !/\p{L}/u.test(words) ? [...words].reverse().join('') : words;
  }

  /** The letters' edges in the ground's colour, as paths: drawn as text they would be read twice. */
  private halo(words: string, from: number, size: number): void {
    const { document } = this;
    const { font } = document._font;
    const scale = size / font.unitsPerEm;
    const { glyphs, positions } = font.layout(words);
    document.save().translate(from, 0).scale(scale, -scale);
    document
      .undash()
      .lineWidth(Math.min(1, size / 3.5) / scale)
      .lineJoin('round')
      .strokeColor(PAPER);
    glyphs.forEach(({ path }, i) => {
      const data = path.toSVG();
      if (data) document.path(data).stroke();
      document.translate(positions[i]?.xAdvance ?? 0, 0);
    });
    document.restore();
  }

  /** Words with what the font lacks as □; what that is, is kept to be told. */
  private known(words: string): string {
    const { font } = this.document._font;
    return [...words]
      .map((letter) => {
        if (font.hasGlyphForCodePoint(letter.codePointAt(0) as number)) return letter;
        this.lacking.add(letter);
        return LACKING;
      })
      .join('');
  }
}
