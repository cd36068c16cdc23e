import type { SizeRun, StyleRun } from '../../core/plan/runs';
import { decimals } from '../../tables/figures';
import { stepInWords } from '../../tables/step-in-words';
import { line, type Marks, rectangle, text } from '../mark';
import { movedMarks } from '../move-marks';
import { chosenRuns, type InParts, type PaperJob, sizeWords } from './chosen';
import { drawingBlock, gap } from './blocks';
import { type Block, flowPages, textWidth } from './flow';
import { tableBlocks } from './table-blocks';
import { orderedPairs } from './orders';
import type { Page } from './page';
import { styleTicket } from './style-ticket';
import { alreadyCut, cautionBlocks, stepColumns, stepRow, ticketBoxes, ticketPicture } from './ticket-parts';

/** Width of the picture beside the heights to measure, mm. */
const PICTURE = 128;
/** Sizes beside each other, and how high a line of them and their pairs is, mm. */
const [SIZES_ABREAST, SIZE_LINE] = [4, 9];
/** How far below the picture's head the lines of sizes begin, mm. */
const SIZES_FROM = 43;

/**
 * A ticket for each chosen style and size, or one a style for all its sizes: pictures, heights to measure, every step in
 * the order of the bench.
 */
export function* ticketPages(job: PaperJob): InParts<readonly Page[]> {
  const pages: Page[] = [];
  for (const { run, sizes } of chosenRuns(job)) {
    if (job.tickets === 'style') {
      pages.push(...styleTicket(job, run, sizes));
      yield run.style.code;
      continue;
    }
    for (const sizeRun of sizes) {
      pages.push(...sizeTicket(job, run, sizeRun));
      yield `${run.style.code}, ${sizeWords(sizeRun)}`;
    }
  }
  return pages;
}

function sizeTicket(job: PaperJob, run: StyleRun, sizeRun: SizeRun): readonly Page[] {
  const steps = job.plan.ticket(run.style.code, sizeRun.size).filter((one) => one.sizeRun === sizeRun);
  const { pairs, toCut } = sizeRun;
  const width = textWidth(job.paper);
  const blocks: readonly Block[] = [
    pictureBlock(job, run, sizeRun, width),
    gap(3),
    ...alreadyCut(sizeRun, width),
    ...tableBlocks(
      stepColumns(true),
      steps.map((one) => stepRow(one, stepInWords(one), toCut, true)),
      width,
    ),
    gap(3),
    ...cautionBlocks(steps, width),
  ];
  const boxes = ticketBoxes(run, sizeWords(sizeRun), pairs, orderedPairs(job.plan.input, run, sizeRun));
  return flowPages(job, `${run.style.code}, ${sizeWords(sizeRun)}`, boxes, blocks);
}

/** Side view and view from above as in the pane, and beside them what is measured. */
function pictureBlock(job: PaperJob, run: StyleRun, sizeRun: SizeRun, width: number): Block {
  const wide = Math.min(PICTURE, width - 52);
  const picture = ticketPicture(job, run, sizeRun, wide);
  const lines = Math.ceil(run.sizes.length / SIZES_ABREAST);
  const height = Math.max(picture.height + 2, SIZES_FROM + lines * SIZE_LINE);
  return drawingBlock(height, (x, y) => [
    ...movedMarks(picture.marks, 0, x, y),
    ...measured(run, sizeRun, x + wide + 6, y, width - wide - 6),
  ]);
}

/** Heights with room to write what was measured, left and right, and the pairs of each size. */
function measured(run: StyleRun, { bottom, size, system }: SizeRun, x: number, y: number, width: number): Marks {
  const { seatStack, treadStack, last } = bottom;
  const rows: readonly (readonly [string, string])[] = [
    ['At the back', decimals(seatStack, 1)],
    ['Under the tread', decimals(treadStack, 1)],
    ['Difference ± 1', decimals(last.heelHeight, 1)],
  ];
  const col = width - 20;
  const head = [
    text(x, y + 3, 'Measure, mm', 'bold', 'start', { size: 3.2 }),
    text(x + col + 5, y + 3, 'L', 'bold', 'middle', { size: 3.2 }),
    text(x + col + 15, y + 3, 'R', 'bold', 'middle', { size: 3.2 }),
  ];
  const boxes = rows.flatMap(([what, value], i): Marks => {
    const top = y + 5 + i * 8;
    return [
      text(x, top + 3, what, 'quiet', 'start', { size: 2.6 }),
      text(x, top + 6.6, value, 'bold', 'start', { size: 4 }),
      rectangle(x + col + 0.5, top, 9, 7, { pen: 'narrow' }),
      rectangle(x + col + 10.5, top, 9, 7, { pen: 'narrow' }),
    ];
  });
  const below = y + SIZES_FROM - 7;
  const sizes = run.sizes.flatMap((one, i): Marks => {
    const [column, row] = [i % SIZES_ABREAST, Math.floor(i / SIZES_ABREAST)];
    const [cx, cy] = [x + 6 + column * (width / SIZES_ABREAST - 0.5), below + 8 + row * SIZE_LINE];
    const own = one.size === size && one.system === system;
    return [
      text(cx, cy, one.size, own ? 'bold' : 'quiet', 'middle', { size: 2.8 }),
      text(cx, cy + 4.4, one.pairs, own ? 'bold' : 'plain', 'middle', { size: 4 }),
    ];
  });
  return [
    ...head,
    ...boxes,
    line('narrow', x, below - 3, x + width, below - 3),
    text(x, below + 2, `Pairs by size, ${run.pairs} in all`, 'bold', 'start', { size: 3 }),
    ...sizes,
  ];
}
