import { line, type Marks, rectangle, text } from '../mark';
import { widthOf } from './letter-width';
import { type JobFacts, MARGIN, type Page } from './page';
import { TITLE_HEIGHT, type TitleBox, titleBlock } from './title-block';

/** A part of a document that stays on one page: how high it is, and its marks from its upper left corner. */
export interface Block {
  readonly height: number;
  draw(x: number, y: number): Marks;
  /** Stands again at the head of each page that what follows runs on to, until one that ends it. */
  readonly heads?: boolean | 'no more';
  /** Is not left alone at the foot of a page: what follows must have so much room too, mm. */
  readonly keep?: number;
}

/** Margin of documents that are read, mm. */
export const TEXT_MARGIN = 10;
const FOOT = 6;

/** Width in which documents that are read are set, mm. */
export function textWidth({ width }: { readonly width: number }): number {
  return width - 2 * TEXT_MARGIN;
}

/** Sets blocks on pages, a title block above, the run's name, the date and the page below. */
export function flowPages(
  job: JobFacts,
  name: string,
  boxes: readonly TitleBox[],
  blocks: readonly Block[],
): readonly Page[] {
  const { paper } = job;
  const top = TEXT_MARGIN + TITLE_HEIGHT + 4;
  const bottom = paper.height - TEXT_MARGIN - FOOT;
  const pages: { readonly block: Block; readonly y: number }[][] = [[]];
  let y = top;
  let head: Block | undefined;
  for (const block of blocks) {
    if (block.heads) head = block.heads === true ? block : undefined;
    const need = block.height + (block.keep ?? 0);
    if (y + need > bottom && y > top) {
      pages.push([]);
      y = top;
      if (head && head !== block) {
        pages.at(-1)?.push({ block: head, y });
        y += head.height;
      }
    }
    pages.at(-1)?.push({ block, y });
    y += block.height;
  }
  return pages.map((own, i): Page => ({
    ...paper,
    name: pages.length > 1 ? `${name}, ${i + 1}` : name,
    draw: (n, of) => [
      ...titleBlock(TEXT_MARGIN, TEXT_MARGIN, textWidth(paper), boxes),
      ...own.flatMap((one) => one.block.draw(TEXT_MARGIN, one.y)),
      ...footOf(job, n, of),
    ],
  }));
}

function footOf({ paper, run, date }: JobFacts, n: number, of: number): Marks {
  const y = paper.height - Math.max(MARGIN, TEXT_MARGIN) + 1;
  const right = paper.width - TEXT_MARGIN;
  return [
    line('narrow', TEXT_MARGIN, y - 4, right, y - 4),
    text(TEXT_MARGIN, y, [run, date].filter(Boolean).join(', '), 'quiet', 'start', { size: 3 }),
    text(right, y, `${n} of ${of}`, 'plain', 'end', { size: 3 }),
  ];
}

/** White between blocks. */
export function gap(height: number): Block {
  return { height, draw: () => [] };
}

/** A heading, kept with what follows. */
export function heading(words: string): Block {
  return { height: 8, keep: 14, draw: (x, y) => [text(x, y + 5.6, words, 'bold', 'start', { size: 5 })] };
}

/** Words as wide as the page allows, in as many lines as they need. */
export function paragraph(words: string, width: number, size = 3.2, quiet = false): Block {
  const lines = wrapped(words, width, size);
  const step = size * 1.35;
  return {
    height: lines.length * step + 1,
    draw: (x, y) =>
      lines.map((one, i) => text(x, y + size + i * step, one, quiet ? 'quiet' : 'plain', 'start', { size })),
  };
}

/** Lines no wider than `width`; a word that is too long by itself is broken, never left off. */
export function wrapped(words: string, width: number, size: number, bold = false): readonly string[] {
  const lines: string[] = [];
  let open = '';
  for (const word of words.split(/\s+/).filter(Boolean)) {
    let rest = word;
    const whole = open ? `${open} ${rest}` : rest;
    if (widthOf(whole, size, bold) <= width) {
      open = whole;
      continue;
    }
    if (open) lines.push(open);
    const most = Math.max(1, Math.floor(width / widthOf('x', size, bold)));
    const letters = [...rest];
    while (letters.length > most) lines.push(letters.splice(0, most).join(''));
    rest = letters.join('');
    open = rest;
  }
  if (open || lines.length === 0) lines.push(open);
  return lines;
}

export interface PaperColumn {
  readonly head: string;
  /** Share of the width. */
  readonly share: number;
  readonly align?: 'left' | 'right' | 'middle' | undefined;
  /** A box to tick instead of words. */
  readonly tick?: boolean | undefined;
}

/** A column of words, of figures and of boxes to tick. @param share of the width */
export const wordsIn = (head: string, share: number): PaperColumn => ({ head, share });
export const figuresIn = (head: string, share: number): PaperColumn => ({ head, share, align: 'right' });
export const ticksIn = (head: string, share: number): PaperColumn => ({ head, share, align: 'middle', tick: true });

const SIZE = 2.8;
const PAD = 0.9;

/** A table: its headings, which stand again on each page, and its rows; a sum row is semibold between rules. */
export function tableBlocks(
  columns: readonly PaperColumn[],
  rows: readonly (readonly string[])[],
  width: number,
  { sum = false, size = SIZE }: { readonly sum?: boolean; readonly size?: number } = {},
): readonly Block[] {
  const shares = columns.reduce((all, { share }) => all + share, 0);
  const widths = columns.map(({ share }) => (width * share) / shares);
  const lefts = widths.map((_, i) => widths.slice(0, i).reduce((all, one) => all + one, 0));
  const rowOf = (cells: readonly string[], kind: 'head' | 'row' | 'sum'): Block => {
    const bold = kind !== 'row';
    const lines = columns.map((column, i) =>
      column.tick && kind === 'row' ? [] : wrapped(cells[i] ?? '', (widths[i] ?? 0) - 2 * PAD, size, bold),
    );
    const step = size * 1.25;
    const height = Math.max(1, ...lines.map(({ length }) => length)) * step + 1.5;
    return {
      height,
      heads: kind === 'head',
      keep: kind === 'head' ? 8 : 0,
      draw: (x, y) => [
        ...(kind === 'head' ? [line('wide', x, y, x + width, y)] : []),
        ...(kind === 'sum' ? [line('narrow', x, y, x + width, y)] : []),
        ...columns.flatMap(({ align = 'left', tick }, i): Marks => {
          const from = x + (lefts[i] ?? 0);
          const wide = widths[i] ?? 0;
          if (tick && kind === 'row') return [rectangle(from + wide / 2 - 1.5, y + 0.9, 3, 3, { pen: 'narrow' })];
          const at = align === 'left' ? from + PAD : align === 'right' ? from + wide - PAD : from + wide / 2;
          const anchor = align === 'left' ? 'start' : align === 'right' ? 'end' : 'middle';
          return (lines[i] ?? []).map((one, k) =>
            text(at, y + 0.6 + size + k * step, one, bold ? 'bold' : 'plain', anchor, { size }),
          );
        }),
        line(kind === 'sum' ? 'wide' : 'narrow', x, y + height, x + width, y + height),
      ],
    };
  };
  return [
    rowOf(
      columns.map(({ head }) => head),
      'head',
    ),
    ...rows.map((cells, i) => rowOf(cells, sum && i === rows.length - 1 ? 'sum' : 'row')),
    { ...gap(0), heads: 'no more' },
  ];
}

/** A drawing of a size, moved to where it stands. */
export function drawingBlock(height: number, draw: (x: number, y: number) => Marks): Block {
  return { height, draw };
}
