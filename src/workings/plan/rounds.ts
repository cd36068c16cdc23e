import type { Round } from '../../core/plan/rounds';
import { Rates } from '../../core/plan/cost/rates';
import { fold } from '../../core/plan/codes';
import { given, step } from '../working';
import { cell, type ColumnWorkings, type Context, pairsOf, rate } from './context';

const lastRow = ({ plan }: Context, code: string) => plan.input.lasts.find((one) => fold(one.code) === fold(code));

/** Pairs of earlier orders on the same lasts. */
function earlier(round: Round, { plan }: Context): number {
  const own = plan.rounds.filter(({ last, size }) => last === round.last && size === round.size);
  return own.slice(0, own.indexOf(round)).reduce((sum, { pairs }) => sum + pairs, 0);
}

function onHand(round: Round, context: Context, symbol?: string) {
  const last = lastRow(context, round.last);
  const own = last?.pairsBySize.has(round.size);
  const from = { argument: 'lasts', row: last?.row, column: own ? String(round.size) : 'Pairs on hand' };
  return given(symbol, 'Pairs of lasts on hand', round.onHand ?? 'blank', undefined, from);
}

function order(round: Round, { plan }: Context) {
  return plan.input.pairage.find(
    (row) => fold(row.style) === fold(round.style) && row.customer === round.customer && row.due === round.due,
  );
}

const turns = (round: Round, context: Context) => [
  step('e', 'Pairs of orders that are due sooner, on the same lasts', undefined, earlier(round, context)),
  step('n', 'Pairs of this order', undefined, round.pairs),
];

export const roundColumns: ColumnWorkings<Round> = {
  Last: ({ last }, context) => ({
    given: [cell(context, 'lasts', lastRow(context, last)?.row ?? 1, 'code')],
    what: 'The last of the style',
  }),
  Size: (round, context) => ({
    given: pairsOf(context, round.style),
    what: 'Size of the pairs, in the last’s own system',
  }),
  Style: (round, context) => ({ given: pairsOf(context, round.style), what: 'The style, as in Pairage' }),
  Customer: (round, context) => ({
    given: [cell(context, 'pairage', order(round, context)?.row ?? 1, 'customer')],
    what: 'Whom the pairs are for',
  }),
  Due: (round, context) => ({
    given: [cell(context, 'pairage', order(round, context)?.row ?? 1, 'due')],
    what: 'Day by which they are to be done',
  }),
  'Pairs number': (round, context) => ({
    given: pairsOf(context, round.style),
    what: 'Pairs of this order in this size',
  }),
  'On hand pairs': (round, context) => ({
    given: [onHand(round, context)],
    what: 'Pairs of lasts in this size, as in Lasts',
  }),
  'Round first': (round, context) => ({
    given: [onHand(round, context, 'h')],
    steps: turns(round, context),
    symbol: 'a',
    what: 'Its first round: orders fill up each other’s last round',
    formula: '⌊e / h⌋ + 1',
  }),
  'Round last': (round, context) => ({
    given: [onHand(round, context, 'h')],
    steps: turns(round, context),
    symbol: 'b',
    what: 'Its last round',
    formula: '⌈(e + n) / h⌉',
  }),
  'Done days': (round, context) => {
    const last = lastRow(context, round.last);
    return {
      given: last ? [cell(context, 'lasts', last.row, 'daysOnLast', 'd', last.daysOnLast)] : [],
      steps: [step('b', 'Its last round', undefined, round.to ?? 0)],
      symbol: 'D',
      what: 'Days from the start until the last pair is off its last',
      formula: 'b · d',
    };
  },
  'Done on': (round, { plan }) => {
    const row = new Rates(plan.input.rates).row('day of start', []);
    return {
      given: rate(row, 's'),
      steps: [step('D', 'Days from the start', undefined, round.days ?? 0)],
      symbol: 'z',
      what: 'The day, as the spreadsheet counts days',
      formula: 's + ⌈D⌉',
    };
  },
};
