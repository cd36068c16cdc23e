import type { Batch } from '../../core/plan/batches';
import { Rates } from '../../core/plan/cost/rates';
import { fold } from '../../core/plan/codes';
import { given, step } from '../working';
import { cell, type ColumnWorkings, type Context, pairsOf, rate } from './context';

const lastRow = ({ plan }: Context, code: string) => plan.input.lasts.find((one) => fold(one.code) === fold(code));

/** Pairs of earlier orders on the same lasts. */
function earlier(batch: Batch, { plan }: Context): number {
  const own = plan.batches.filter(({ last, size }) => last === batch.last && size === batch.size);
  return own.slice(0, own.indexOf(batch)).reduce((sum, { pairs }) => sum + pairs, 0);
}

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

const turns = (batch: Batch, context: Context) => [
  step('e', 'Pairs of orders that are due sooner, on the same lasts', undefined, earlier(batch, context)),
  step('n', 'Pairs of this order', undefined, batch.pairs),
];

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
    steps: turns(batch, context),
    symbol: 'a',
    what: 'Its first batch: orders fill up each other’s last batch',
    formula: '⌊e / h⌋ + 1',
  }),
  'To batch': (batch, context) => ({
    given: [onHand(batch, context, 'h')],
    steps: turns(batch, context),
    symbol: 'b',
    what: 'Its last batch',
    formula: '⌈(e + n) / h⌉',
  }),
  'Done days': (batch, context) => {
    const last = lastRow(context, batch.last);
    return {
      given: last ? [cell(context, 'lasts', last.row, 'daysOnLast', 'd', last.daysOnLast)] : [],
      steps: [step('b', 'Its last batch', undefined, batch.to ?? 0)],
      symbol: 'D',
      what: 'Days from the start until the last pair is off its last',
      formula: 'b · d',
    };
  },
  'Done on': (batch, { plan }) => {
    const row = new Rates(plan.input.rates).row('day of start', []);
    return {
      given: rate(row, 's'),
      steps: [step('D', 'Days from the start', undefined, batch.days ?? 0)],
      symbol: 'z',
      what: 'The day, as the spreadsheet counts days',
      formula: 's + ⌈D⌉',
    };
  },
};
