import { line, type Marks, text } from '../mark';
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
