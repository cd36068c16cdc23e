import type { BenchLine } from '../../core/plan/bench-days/bench-days';
import { lateOrders } from '../../core/plan/bench-days/late-orders';
import { Problem } from '../../core/problem';
import { type BenchDay, benchDayInWords, dayByDay, lateInWords, thenInWords } from '../../tables/bench-days-in-words';
import { decimals } from '../../tables/figures';
import { stepsInWords } from '../../tables/results/bench-days';
import { gap, heading, paragraph } from './blocks';
import { chosenRuns, type InParts, type PaperJob } from './chosen';
import { type Block, flowPages, textWidth } from './flow';
import { figuresIn, tableBlocks, ticksIn, wordsIn } from './table-blocks';
import type { Page } from './page';

/** What is worked at on which day, for the styles and sizes that are chosen. */
export function* benchDayPages(job: PaperJob): InParts<readonly Page[]> {
  const width = textWidth(job.paper);
  try {
    const making = job.plan.benchDays();
    let made = making.next();
    for (; !made.done; made = making.next()) yield 'days';
    const { leftOut, ...days } = made.value;
    const chosen = new Set(chosenRuns(job).flatMap(({ sizes }) => sizes));
    const all = dayByDay({ lines: days.lines.filter(({ lot }) => chosen.has(lot.sizeRun)) });
    const blocks: readonly Block[] = [
      ...leftOut.map(({ name, why }) => paragraph(`${name} is left out: ${why.message}`, width)),
      ...lateOrders(days).map((late) => paragraph(`Late: ${lateInWords(late)}.`, width, 4)),
      ...all.flatMap((day) => blocksOf(day, width)),
      ...(all.length === 0 ? [paragraph('Nothing is to be made.', width, 4)] : []),
    ];
    return flowPages(job, 'Bench days', boxes(job, all, days.minutesADay), blocks);
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    return flowPages(job, 'Bench days', boxes(job, [], undefined), [paragraph(`${error.message}.`, width, 4)]);
  }
}

function boxes(job: PaperJob, all: readonly BenchDay[], minutesADay: number | undefined) {
  return [
    { head: 'Bench days', say: job.run, share: 5 },
    { head: 'Days', say: String(all.at(-1)?.day ?? 0), share: 1.5 },
    { head: 'Hours a day', say: minutesADay === undefined ? '–' : decimals(minutesADay / 60, 2), share: 2 },
    { head: 'Date', say: job.date || '–', share: 2.5 },
  ];
}

function blocksOf(day: BenchDay, width: number): readonly Block[] {
  const made = day.made > 0 ? `, ${day.made} ${day.made === 1 ? 'pair' : 'pairs'} made` : '';
  return [
    heading(`${benchDayInWords(day)}: ${decimals(day.minutes / 60, 1)} h, ${day.lasts} pairs of lasts taken${made}`),
    ...tableBlocks(
      [
        wordsIn('Style', 26),
        wordsIn('Customer', 30),
        wordsIn('Last', 26),
        figuresIn('Size', 10),
        figuresIn('Pairs', 10),
        wordsIn('Steps', 24),
        figuresIn('min', 12),
        wordsIn('Then waits for', 44),
        ticksIn('Done', 10),
      ],
      day.lines.map(rowOf),
      width,
    ),
    gap(3),
  ];
}

function rowOf(line: BenchLine): readonly string[] {
  const { lot, steps, minutes, lasts } = line;
  return [
    lot.run.style.code,
    lot.row.customer ?? '',
    lasts > 0 ? lot.last.code : `not yet on ${lot.last.code}`,
    String(lot.size),
    String(lot.pairs),
    stepsInWords(steps) || '–',
    minutes > 0 ? decimals(minutes, 1) : '–',
    thenInWords(line),
    '',
  ];
}
