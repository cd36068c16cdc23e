import type { Layer } from '../../core/bottom/layer';
import { fold } from '../../core/plan/codes';
import type { SizeRun, StyleRun } from '../../core/plan/runs';
import type { TicketStep } from '../../core/plan/ticket';
import type { Care } from '../../core/steps/step';
import { decimals, figuresOf } from '../../tables/figures';
import { piecesInWords } from '../../tables/step-in-words';
import { CARE_WORDS, CAUTIONS, LOOK_WORDS } from '../../tables/words';
import { buildPicture } from '../build-picture';
import type { Picture } from '../svg';
import { type PaperJob, sizeWords } from './chosen';
import { paragraph } from './blocks';
import type { Block } from './flow';
import { figuresIn, type PaperColumn, ticksIn, wordsIn } from './table-blocks';
import { customersInWords, cutInWords, firstDue, type OrderedPair } from './orders';
import type { TitleBox } from './title-block';

const figures = figuresOf('metric');

/** Side view and view from above as in the pane. */
export function ticketPicture(job: PaperJob, { style }: StyleRun, sizeRun: SizeRun, width: number): Picture {
  const directionOf = ({ stock }: Layer) =>
    job.plan.input.stock.find(({ code }) => fold(code) === fold(stock))?.direction ?? 'any way';
  return buildPicture(
    { style, size: sizeWords(sizeRun), foot: 'L', bottom: sizeRun.bottom, figures, directionOf },
    width,
  );
}

/** What heads a ticket. @param size in words */
export function ticketBoxes(
  { style, last }: StyleRun,
  size: string,
  count: number,
  pairs: readonly OrderedPair[],
): readonly TitleBox[] {
  return [
    { head: 'Ticket', say: style.code, share: 4 },
    { head: 'Size', say: size, share: 2 },
    { head: 'Pairs', say: String(count), share: 1.3 },
    { head: 'Last', say: last.code, share: 3 },
    { head: 'Due', say: firstDue(pairs) || '–', share: 2.6 },
    { head: 'For', say: customersInWords(pairs) || '–', share: 5 },
  ];
}

/** Says how many of the pairs are cut already, where some are. */
export function alreadyCut(pairs: Pick<SizeRun, 'pairs' | 'toCut'>, width: number): readonly Block[] {
  const words = cutInWords(pairs);
  return words === '' ? [] : [paragraph(`${words}: Cut has the pieces that are left to cut.`, width, 3)];
}

/** The table of steps. @param heights whether it has those after each step */
export function stepColumns(heights: boolean): readonly PaperColumn[] {
  return [
    figuresIn('No.', 8),
    wordsIn('Piece', 28),
    wordsIn('What to do', heights ? 66 : 90),
    figuresIn('Cut', 9),
    figuresIn('Coats', 12),
    figuresIn('Open min', 11),
    figuresIn('Press min', 12),
    figuresIn('Wait min', 11),
    ...(heights ? [figuresIn('Back mm', 12), figuresIn('Tread mm', 12)] : []),
    wordsIn('Look for', 32),
    ticksIn('Done', 10),
  ];
}

const told = (value: number | undefined, digits = 0) => (value === undefined ? '' : decimals(value, digits));

/**
 * A step as a row of the table.
 * @param words what to do
 * @param toCut pairs for which its piece is still to be cut
 */
export function stepRow({ step }: TicketStep, words: string, toCut: number, heights: boolean): readonly string[] {
  const alone = step.acts.includes('cut') ? step.pieces[0] : undefined;
  return [
    String(step.number),
    [piecesInWords(step.pieces), alone?.stock].filter(Boolean).join(', '),
    words,
    alone ? String(2 * toCut) : '',
    step.coats.length > 0 ? String(Math.max(...step.coats)) : '',
    told(step.open?.value, 1),
    told(step.pressed?.value, 1),
    told(step.wait?.value),
    ...(heights ? [told(step.height?.back, 1), told(step.height?.tread, 1)] : []),
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
export function cautionBlocks(steps: readonly TicketStep[], width: number): readonly Block[] {
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
