import { itemAt } from '../../core/item-at';
import type { SizeRun, StyleRun } from '../../core/plan/runs';
import { decimals } from '../../tables/figures';
import { text } from '../mark';
import { movedMarks } from '../move-marks';
import { type PaperJob, sizeWords } from './chosen';
import { drawingBlock, gap, heading, paragraph } from './blocks';
import { type Block, flowPages, textWidth } from './flow';
import { figuresIn, tableBlocks, wordsIn } from './table-blocks';
import { orderedPairs } from './orders';
import type { Page } from './page';
import { stepsBySize, type StepsBySize } from './steps-by-size';
import { alreadyCut, cautionBlocks, stepColumns, stepRow, ticketBoxes, ticketPicture } from './ticket-parts';

/** Most sizes side by side in a table. */
const MOST = 12;

/** One ticket for all sizes of a style: each step once, and a table of what differs from size to size. */
export function styleTicket(job: PaperJob, run: StyleRun, sizes: readonly SizeRun[]): readonly Page[] {
  const steps = job.plan.ticket(run.style.code).filter(({ sizeRun }) => sizes.includes(sizeRun));
  const width = textWidth(job.paper);
  const groups = stepsBySize(steps);
  const sum = (of: 'pairs' | 'toCut') => sizes.reduce((all, one) => all + one[of], 0);
  const blocks: readonly Block[] = [
    picture(job, run, sizes, width),
    gap(3),
    ...measureBlocks(sizes, width),
    gap(3),
    ...alreadyCut({ pairs: sum('pairs'), toCut: sum('toCut') }, width),
    ...groups.flatMap((group) => stepBlocks(group, groups.length > 1, width)),
    ...cautionBlocks(steps, width),
  ];
  const pairs = sizes.flatMap((size) => orderedPairs(job.plan.input, run, size));
  const boxes = ticketBoxes(run, sizesInWords(sizes), sum('pairs'), pairs);
  return flowPages(job, run.style.code, boxes, blocks);
}

/** The size in the middle. */
function picture(job: PaperJob, run: StyleRun, sizes: readonly SizeRun[], width: number): Block {
  const shown = itemAt(sizes, Math.floor((sizes.length - 1) / 2));
  const wide = Math.min(140, width);
  const { marks, height } = ticketPicture(job, run, shown, wide);
  return drawingBlock(height + 5, (x, y) => [
    ...movedMarks(marks, 0, x + (width - wide) / 2, y),
    text(x + width / 2, y + height + 4, `Shown: ${sizeWords(shown)}`, 'quiet', 'middle', { size: 2.8 }),
  ]);
}

/** What each size must come to, with room for what was measured left and right. */
function measureBlocks(sizes: readonly SizeRun[], width: number): readonly Block[] {
  const blank = [wordsIn('Left', 14), wordsIn('Right', 14)];
  return tableBlocks(
    [
      wordsIn('Size', 20),
      figuresIn('Pairs', 12),
      figuresIn('At the back mm', 22),
      ...blank,
      figuresIn('Under the tread mm', 22),
      ...blank,
      figuresIn('Difference ± 1', 20),
    ],
    sizes.map((size) => {
      const { seatStack, treadStack, last } = size.bottom;
      const seat = [decimals(seatStack, 1), '……', '……'];
      const tread = [decimals(treadStack, 1), '……', '……'];
      return [sizeWords(size), String(size.pairs), ...seat, ...tread, decimals(last.heelHeight, 1)];
    }),
    width,
    { size: 3 },
  );
}

function stepBlocks({ sizes, steps }: StepsBySize, named: boolean, width: number): readonly Block[] {
  const toCut = sizes.reduce((sum, one) => sum + one.toCut, 0);
  const differing = steps.some(({ figures }) => figures.length > 0);
  return [
    ...(named ? [heading(`Steps of ${sizesInWords(sizes)}`)] : []),
    ...tableBlocks(
      stepColumns(false),
      steps.map(({ line, words }) => stepRow(line, words, toCut, false)),
      width,
    ),
    gap(3),
    ...(differing ? differenceBlocks(sizes, steps, width) : []),
    gap(3),
  ];
}

/** Figures of the steps that differ from size to size, and the heights after each. */
function differenceBlocks(sizes: readonly SizeRun[], steps: StepsBySize['steps'], width: number): readonly Block[] {
  const parts = Array.from({ length: Math.ceil(sizes.length / MOST) }, (_, i) => i * MOST);
  return [
    heading('By size, mm'),
    paragraph('A letter in brackets stands for this figure in its step; heights are those after it.', width, 2.8, true),
    ...parts.flatMap((from) =>
      tableBlocks(
        [
          figuresIn('No.', 8),
          wordsIn('Figure', 22),
          ...sizes.slice(from, from + MOST).map((size) => figuresIn(sizeWords(size), 13)),
        ],
        steps.flatMap(({ line, figures }) =>
          figures.map(({ what, values }) => [String(line.step.number), what, ...values.slice(from, from + MOST)]),
        ),
        Math.min(width, 30 + 13 * Math.min(MOST, sizes.length) + 20),
      ),
    ),
  ];
}

/** "EU 36 to 41", "EU 36, 38", "EU 38". */
function sizesInWords(sizes: readonly SizeRun[]): string {
  const [first, last] = [sizes[0], sizes.at(-1)];
  if (!first || !last) return '';
  if (sizes.length === 1) return sizeWords(first);
  return first.system === last.system
    ? `${sizeWords(first)} to ${last.size}`
    : `${sizeWords(first)} to ${sizeWords(last)}`;
}
