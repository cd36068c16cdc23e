import type { BenchLine, StepRange, StepsOfDay } from '../../core/plan/bench-days/bench-days';
import { leftOutBeside, nameInWords, whyInWords } from '../left-out-in-words';
import { figure, type ResultTable, words } from '../result';
import { GENERAL } from '../schema';
import { WAIT_WORDS, WORK_WORDS } from '../words';

/** What is done on which day at the bench. */
export const benchDaysTable: ResultTable<BenchLine> = {
  name: 'Bench days',
  meaning: 'What is worked at on which day, which lasts are on which style, and what waits',
  columns: [
    figure('Day', ({ day }) => day, { format: '0', width: 44 }),
    figure('Date', ({ date }) => date, { format: 'd mmm yyyy', width: 84 }),
    words('Style', ({ lot }) => lot.run.style.code, { leftOut: nameInWords }),
    words('Last', ({ lot }) => lot.last.code, { leftOut: leftOutBeside('Why left out') }),
    figure('Size', ({ lot }) => lot.size, { format: GENERAL }),
    words('Customer', ({ lot }) => lot.row.customer, { width: 130 }),
    figure('Due', ({ lot }) => lot.row.due, { format: 'd mmm yyyy', width: 84 }),
    figure('Batch', ({ lot }) => lot.batch, { format: '0', width: 58 }),
    figure('Pairs', ({ lot }) => lot.pairs, { unit: 'number', format: '0', width: 58 }),
    figure('Lasts taken', ({ lasts }) => lasts || undefined, { unit: 'pairs', format: '0', width: 58 }),
    words('Steps', ({ steps }) => stepsInWords(steps) || undefined, { width: 118, wraps: true }),
    figure('Work', ({ minutes }) => minutes, { unit: 'min', format: '0' }),
    words('At work', ({ kinds }) => kinds.map((kind) => (kind ? WORK_WORDS[kind] : 'work of no step')).join(', '), {
      width: 250,
      wraps: true,
    }),
    words('Then waits for', ({ waits }) => (waits ? WAIT_WORDS[waits.what] : 'nothing: made'), { width: 150 }),
    figure('Until', ({ waits }) => waits?.until, { unit: 'day', format: '0', width: 58 }),
    figure('Late', ({ late }) => late || undefined, { unit: 'days', format: '0', width: 58 }),
    // The last, so that no neighbour cuts it off.
    words('Why left out', () => undefined, { width: 130, leftOut: whyInWords }),
  ],
};

/** "11–15, 18", and of what goes on on a later day "19 in part"; nothing where no step is worked at. */
export function stepsInWords({ done, inPart }: StepsOfDay): string {
  const list = (ranges: readonly StepRange[]) =>
    ranges.map(({ from, to }) => (from === to ? String(from) : `${from}–${to}`)).join(', ');
  return [list(done), inPart.length > 0 ? `${list(inPart)} in part` : ''].filter(Boolean).join('; ');
}
