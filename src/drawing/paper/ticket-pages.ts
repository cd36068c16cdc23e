import type { Layer } from '../../core/bottom/layer';
import { fold } from '../../core/plan/codes';
import type { SizeRun, StyleRun } from '../../core/plan/runs';
import type { TicketStep } from '../../core/plan/ticket';
import type { Care } from '../../core/steps/step';
import { decimals, figuresOf } from '../../tables/figures';
import { piecesInWords, stepInWords } from '../../tables/step-in-words';
import { CARE_WORDS, CAUTIONS, LOOK_WORDS } from '../../tables/words';
import { buildPicture } from '../build-picture';
import { line, type Marks, rectangle, text } from '../mark';
import { movedMarks } from '../move-marks';
import { chosenRuns, type InParts, type PaperJob, sizeWords } from './chosen';
import { type Block, drawingBlock, flowPages, gap, type PaperColumn, paragraph, tableBlocks, textWidth } from './flow';
import { customersInWords, firstDue, orderedPairs } from './orders';
import type { Page } from './page';

const figures = figuresOf('metric');
/** Width of the picture beside the heights to measure, mm. */
const PICTURE = 128;

/** A ticket for each chosen style and size: pictures, heights to measure, every step in the order of the bench. */
export function* ticketPages(job: PaperJob): InParts<readonly Page[]> {
  const pages: Page[] = [];
  for (const { run, sizes } of chosenRuns(job)) {
    for (const sizeRun of sizes) {
      pages.push(...pagesOf(job, run, sizeRun));
      yield `${run.style.code}, ${sizeWords(sizeRun)}`;
    }
  }
  return pages;
}

function pagesOf(job: PaperJob, run: StyleRun, sizeRun: SizeRun): readonly Page[] {
  const steps = job.plan.ticket(run.style.code, sizeRun.size).filter((one) => one.sizeRun === sizeRun);
  const pairs = orderedPairs(job.plan.input, run, sizeRun);
  const width = textWidth(job.paper);
  const blocks: readonly Block[] = [
    pictureBlock(job, run, sizeRun, width),
    gap(3),
    ...tableBlocks(COLUMNS, steps.map(rowOf), width),
    gap(3),
    ...cautionBlocks(steps, width),
  ];
  const boxes = [
    { head: 'Ticket', say: run.style.code, share: 4 },
    { head: 'Size', say: sizeWords(sizeRun), share: 2 },
    { head: 'Pairs', say: String(sizeRun.pairs), share: 1.3 },
    { head: 'Last', say: run.last.code, share: 3 },
    { head: 'Due', say: firstDue(pairs) || '–', share: 2.6 },
    { head: 'For', say: customersInWords(pairs) || '–', share: 5 },
  ];
  return flowPages(job, `${run.style.code}, ${sizeWords(sizeRun)}`, boxes, blocks);
}

/** Side view and view from above as in the pane, and beside them what is measured. */
function pictureBlock(job: PaperJob, run: StyleRun, sizeRun: SizeRun, width: number): Block {
  const directionOf = ({ stock }: Layer) =>
    job.plan.input.stock.find(({ code }) => fold(code) === fold(stock))?.direction ?? 'any way';
  const wide = Math.min(PICTURE, width - 52);
  const picture = buildPicture(
    { style: run.style, size: sizeWords(sizeRun), foot: 'L', bottom: sizeRun.bottom, figures, directionOf },
    wide,
  );
  const height = Math.max(picture.height + 2, 70);
  return drawingBlock(height, (x, y) => [
    ...movedMarks(picture.marks, 0, x, y),
    ...measured(run, sizeRun, x + wide + 6, y, width - wide - 6),
  ]);
}

/** Heights with room to write what was measured, left and right, and the pairs of each size. */
function measured(run: StyleRun, { bottom, size, system }: SizeRun, x: number, y: number, width: number): Marks {
  const { seatStack, treadStack, last } = bottom;
  const rows: readonly (readonly [string, string])[] = [
    ['Under the seat', decimals(seatStack, 1)],
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
  const below = y + 36;
  const sizes = run.sizes.slice(0, 12).flatMap((one, i): Marks => {
    const [cx, cy] = [x + 6 + (i % 4) * (width / 4 - 0.5), below + 8 + Math.floor(i / 4) * 9];
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

const COLUMNS: readonly PaperColumn[] = [
  { head: 'No.', share: 8, align: 'right' },
  { head: 'Piece', share: 28 },
  { head: 'What to do', share: 66 },
  { head: 'Cut', share: 9, align: 'right' },
  { head: 'Coats', share: 12, align: 'right' },
  { head: 'Open min', share: 11, align: 'right' },
  { head: 'Press min', share: 12, align: 'right' },
  { head: 'Wait min', share: 11, align: 'right' },
  { head: 'Back mm', share: 12, align: 'right' },
  { head: 'Tread mm', share: 12, align: 'right' },
  { head: 'Look for', share: 32 },
  { head: 'Done', share: 10, align: 'middle', tick: true },
];

const told = (value: number | undefined, digits = 0) => (value === undefined ? '' : decimals(value, digits));

function rowOf(one: TicketStep): readonly string[] {
  const { step, sizeRun } = one;
  const alone = step.acts.includes('cut') ? step.pieces[0] : undefined;
  return [
    String(step.number),
    [piecesInWords(step.pieces), alone?.stock].filter(Boolean).join(', '),
    stepInWords(one),
    alone ? String(2 * sizeRun.pairs) : '',
    step.coats.length > 0 ? String(Math.max(...step.coats)) : '',
    told(step.open?.value, 1),
    told(step.pressed?.value, 1),
    told(step.wait?.value),
    told(step.height?.back, 1),
    told(step.height?.tread, 1),
    step.looks.map((look) => LOOK_WORDS[look]).join('; '),
    '',
  ];
}

/** Which general cautions a step's own ones belong to. */
const ABOUT: Readonly<Record<Care, string>> = {
  vapour: 'Adhesives and solvents',
  dust: 'Dust',
  blade: 'Blades',
  heat: 'Adhesives and solvents',
  machine: 'Machines',
  'high build': 'High builds',
};

/** Only what concerns these steps, and what the numbers are. */
function cautionBlocks(steps: readonly TicketStep[], width: number): readonly Block[] {
  const cares = new Set(steps.flatMap(({ step }) => step.cares));
  const about = new Set([...cares].map((care) => ABOUT[care]));
  const short = [...cares].map((care) => CARE_WORDS[care]).join('; ');
  return [
    ...(short ? [paragraph(`Care: ${short}.`, width, 3)] : []),
    ...CAUTIONS.filter((one) => about.has(one.about) || one.about === CAUTIONS.at(-1)?.about).map(
      ({ about: what, say }) => paragraph(`${what}. ${say}`, width, 2.8),
    ),
  ];
}
