import type { Batch } from '../../core/plan/batches';
import { ratesOf } from '../../core/plan/cost/rates';
import { fold } from '../../core/plan/codes';
import { given, step } from '../working';
import { LIST_SCHEDULING } from './bench-days';
import { cell, type ColumnWorkings, type Context, pairsOf, rate } from './context';

const lastRow = ({ plan }: Context, code: string) => plan.input.lasts.find((one) => fold(one.code) === fold(code));

function onHand(batch: Batch, context: Context, symbol?: string) {
  const last = lastRow(context, batch.last);
  const own = last?.pairsBySize.has(batch.size);
  const from = { argument: 'lasts', row: last?.row, column: own ? String(batch.size) : 'Pairs on hand' };
  return given(symbol, 'Pairs of lasts on hand', batch.onHand ?? 'blank', undefined, from);
}

function order(batch: Batch, { plan }: Context) {
  return plan.input.pairage.find(
    (row) => fold(row.style) === fold(batch.style) && row.customer === batch.customer && row.due === batch.due,
  );
}

const turns = (batch: Batch) => [
  step('e', 'Pairs of orders that are due sooner, on the same lasts', undefined, batch.earlier),
  step('n', 'Pairs of this order', undefined, batch.pairs),
];

const perDay = ({ plan }: Context) => ratesOf(plan.input.rates).row('hours a day', []);

export const batchColumns: ColumnWorkings<Batch> = {
  Last: ({ last }, context) => ({
    given: [cell(context, 'lasts', lastRow(context, last)?.row ?? 1, 'code')],
    what: 'The last of the style',
  }),
  Size: (batch, context) => ({
    given: pairsOf(context, batch.style),
    what: 'Size of the pairs, in the last’s own system',
  }),
  Style: (batch, context) => ({ given: pairsOf(context, batch.style), what: 'The style, as in Pairage' }),
  Customer: (batch, context) => ({
    given: [cell(context, 'pairage', order(batch, context)?.row ?? 1, 'customer')],
    what: 'Whom the pairs are for',
  }),
  Due: (batch, context) => ({
    given: [cell(context, 'pairage', order(batch, context)?.row ?? 1, 'due')],
    what: 'Day by which they are to be done',
  }),
  'Pairs number': (batch, context) => ({
    given: pairsOf(context, batch.style),
    what: 'Pairs of this order in this size',
  }),
  'On hand pairs': (batch, context) => ({
    given: [onHand(batch, context)],
    what: 'Pairs of lasts in this size, as in Lasts',
  }),
  'From batch': (batch, context) => ({
    given: [onHand(batch, context, 'h')],
    steps: turns(batch),
    symbol: 'a',
    what: 'Its first batch: orders fill up each other’s last batch',
    formula: '⌊e / h⌋ + 1',
  }),
  'To batch': (batch, context) => ({
    given: [onHand(batch, context, 'h')],
    steps: turns(batch),
    symbol: 'b',
    what: 'Its last batch',
    formula: '⌈(e + n) / h⌉',
  }),
  'Work h': (batch) => ({
    steps: [
      step('n', 'Pairs of this order', undefined, batch.pairs),
      step(
        'T',
        'Minutes of a pair in this size: its ticket’s, without cutting out where Cut is filled in, and what is counted by the pair',
        undefined,
        batch.minutesAPair ?? 0,
        'min',
      ),
    ],
    symbol: 'H',
    what: 'Hours of work on these pairs',
    formula: 'n · T / 60',
  }),
  'Bench days': (batch, context) => ({
    given: rate(perDay(context), 'h'),
    steps: [
      step('W', 'Minutes of this order and all that are due no later', undefined, batch.minutesThrough ?? 0, 'min'),
    ],
    symbol: 'B',
    what: 'Working days until the bench is through with them',
    formula: 'W / (60 · h)',
  }),
  'Making days': ({ making, minutesAPair = 0 }, context) => ({
    given: rate(perDay(context), 'h'),
    ...(making && {
      steps: [
        step('n', 'Nights of drying and curing that wait for one another', undefined, making.nights),
        step('w', 'Waits by day in the same chain of steps', undefined, making.waits, 'min'),
        step('T', 'Minutes of a pair', undefined, minutesAPair, 'min'),
      ],
      symbol: 'M',
      formula: 'n + (w + T) / (60 · h)',
    }),
    what: 'Working days that one pair is in the making: the longest chain of waits, and its minutes',
    source: 'derived from the steps of its ticket: what does not hang on that chain lies beside it',
  }),
  'Done days': (batch, context) => {
    const last = lastRow(context, batch.last);
    const given = last ? [cell(context, 'lasts', last.row, 'daysOnLast', 'd', last.daysOnLast)] : [];
    const to = step('b', 'Its last batch', undefined, batch.to ?? 0);
    if (batch.benchDays === undefined) {
      return {
        given,
        steps: [to],
        symbol: 'D',
        what: 'Days from the start until the last pair is off its last',
        formula: 'b · d',
      };
    }
    return {
      given,
      steps: [
        ...(to.value ? [to] : []),
        step('B', 'Until the bench is through', undefined, batch.benchDays, 'days'),
        step('M', 'One pair in the making', undefined, batch.makingDays ?? 0, 'days'),
      ],
      what: 'Working days from the start until the last pair is made, as the days at the bench have it: at every moment the bench works at what is due soonest and can be gone on with, and no last is on two pairs. Beside it what all that is due no later takes of the bench, and one pair by itself',
      source: LIST_SCHEDULING,
    };
  },
  'Done on': (batch, { plan }) => {
    const rates = ratesOf(plan.input.rates);
    const week = rates.row('days a week', []);
    const every = week === undefined || week.value >= 7;
    if (rates.row('hours a day', [])) {
      return {
        given: [...rate(rates.row('day of start', []), 's'), ...rate(week)],
        steps: [step('D', 'Working days from the start until the last pair is made', undefined, batch.days ?? 0)],
        what: 'The day of work on which that falls, the first being the day of start: closed days at the end of each week are passed over',
      };
    }
    return {
      given: [...rate(rates.row('day of start', []), 's'), ...rate(week)],
      steps: [step('D', every ? 'Days from the start' : 'Working days from the start', undefined, batch.days ?? 0)],
      symbol: 'z',
      what: every
        ? 'The day, as the spreadsheet counts days'
        : 'The day on which they are over, as the spreadsheet counts days: closed days at the end of each week are passed over',
      formula: every ? 's + ⌈D⌉' : undefined,
    };
  },
};
