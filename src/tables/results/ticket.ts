import type { TicketStep } from '../../core/plan/ticket';
import type { FurtherWork } from '../../core/steps/times';
import { figure, type ResultTable, words } from '../result';
import { GENERAL } from '../schema';
import { plainSize } from '../sizes-in-words';
import { piecesInWords, stepInWords } from '../step-in-words';
import { CARE, CARE_WORDS, LOOK_WORDS } from '../words';

/** The one piece of a step that is done to one alone: its own measures are shown. */
const alone = ({ step: { pieces, acts } }: TicketStep) => (acts.includes('cut') ? pieces[0] : undefined);

/** Stands below the steps: the caution, after minutes that no step has, so that ticket and Cost agree. */
function belowSteps({ minutes, items }: FurtherWork): string {
  if (items.length === 0) return CARE;
  return `And ${Number(minutes.toFixed(1))} minutes a pair that belong to no step (${items.join(', ')}). ${CARE}`;
}

/**
 * The bench's ticket: a row for each step, in the order in which they are done.
 * @param apart work on the style's pairs that is of no step
 */
export const ticketTable = (
  sizeWords = plainSize,
  apart: FurtherWork = { minutes: 0, items: [] },
): ResultTable<TicketStep> => ({
  name: 'Ticket',
  meaning: 'What to do at the bench, step by step',
  columns: [
    figure('Size', ({ sizeRun }) => sizeWords(sizeRun), { format: GENERAL, width: 84 }),
    figure('Step', ({ step }) => step.number, { format: '0', width: 58 }),
    words('What to do', stepInWords, { width: 420, wraps: true, total: () => belowSteps(apart) }),
    words('Pieces', ({ step }) => piecesInWords(step.pieces), { width: 150, wraps: true }),
    figure('Down to', ({ step }) => step.left, { unit: 'mm', format: '0.0#' }),
    figure('At back', ({ step }) => step.height?.back, { unit: 'mm' }),
    figure('At breast', ({ step }) => step.height?.breast, { unit: 'mm' }),
    figure('At tread', ({ step }) => step.height?.tread, { unit: 'mm' }),
    figure('Coats', ({ step }) => (step.coats.length > 0 ? Math.max(...step.coats) : undefined), {
      format: '0',
      width: 58,
    }),
    figure('Open', ({ step }) => step.open?.value, { unit: 'min', format: GENERAL, width: 58 }),
    figure('Press', ({ step }) => step.pressed?.value, { unit: 'min', format: GENERAL, width: 58 }),
    figure('Wait', ({ step }) => step.wait?.value, { unit: 'min', format: '0', width: 58 }),
    words('Look for', ({ step }) => step.looks.map((look) => LOOK_WORDS[look]).join('; '), { width: 200, wraps: true }),
    words('Care', ({ step }) => step.cares.map((care) => CARE_WORDS[care]).join('; '), { width: 200, wraps: true }),
    words('Stock', (line) => alone(line)?.stock),
    figure('Thick', (line) => alone(line)?.thickness, { unit: 'mm', format: '0.0#' }),
    figure('Length', (line) => alone(line)?.length, { unit: 'mm', format: '0' }),
    figure('Width', (line) => alone(line)?.width, { unit: 'mm', format: '0' }),
    figure('Skive', ({ step }) => step.skive?.width, { unit: 'mm' }),
    figure('Angle', ({ step }) => step.skive?.angle, { unit: '°', format: '0' }),
    figure('Skive to', ({ step }) => step.skive?.edge, { unit: 'mm' }),
    figure('Cut', (line) => (alone(line) ? 2 * line.sizeRun.toCut : undefined), { unit: 'L and R', format: '0' }),
    words('Kind', ({ step }) => step.kind, { width: 70 }),
    figure('Work', ({ step }) => step.minutes || undefined, { unit: 'min a pair', format: '0.0', width: 58 }),
  ],
});
