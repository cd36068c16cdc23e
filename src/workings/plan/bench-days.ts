import type { BenchLine } from '../../core/plan/bench-days/bench-days';
import { fold } from '../../core/plan/codes';
import { ratesOf } from '../../core/plan/cost/rates';
import { stepsInWords } from '../../tables/results/bench-days';
import { WAIT_WORDS } from '../../tables/words';
import { step, told } from '../working';
import { cell, type ColumnWorkings, type Context, pairsOf, rate } from './context';

export const LIST_SCHEDULING =
  'list scheduling by days due: R. Butterworth, Machine Scheduling, 1.3 Due Dates, for the order; derived for what waits';

const minutesADay = ({ plan }: Context) => rate(ratesOf(plan.input.rates).row('hours a day', []), 'h');
const start = ({ plan }: Context) => {
  const rates = ratesOf(plan.input.rates);
  return [...rate(rates.row('day of start', []), 's'), ...rate(rates.row('days a week', []), 'w')];
};
const order = ({ lot }: BenchLine, context: Context, name: string) => [cell(context, 'pairage', lot.row.row, name)];
const pairs = ({ lot }: BenchLine, context: Context) => pairsOf(context, lot.run.style.code, lot.sizeRun.size);
const onHand = ({ lot }: BenchLine, context: Context) => {
  const last = context.plan.input.lasts.find((one) => fold(one.code) === fold(lot.last.code));
  return [cell(context, 'lasts', last?.row ?? 1, 'pairsOnHand', 'h', lot.onHand)];
};

export const benchDayColumns: ColumnWorkings<BenchLine> = {
  Day: (_line, context) => ({
    given: minutesADay(context),
    what: 'Day of work, counted from the start. Each day the bench works at what is due soonest and can be gone on with',
    source: LIST_SCHEDULING,
  }),
  Date: ({ day }, context) => ({
    given: start(context),
    steps: [step('d', 'Day of work', undefined, day)],
    what: 'The day, as the spreadsheet counts days: closed days at the end of each week are passed over',
  }),
  Style: (line, context) => ({ given: order(line, context, 'style'), what: 'The style, as in Pairage' }),
  Last: ({ lot }, context) => ({
    given: [cell(context, 'lasts', lot.last.row, 'code')],
    what: 'The last of the style',
  }),
  Size: (line, context) => ({
    given: pairs(line, context),
    what: 'Size of the pairs, in the last’s own system',
  }),
  Customer: (line, context) => ({ given: order(line, context, 'customer'), what: 'Whom the pairs are for' }),
  Due: (line, context) => ({ given: order(line, context, 'due'), what: 'Day by which they are to be done' }),
  Batch: (line, context) => ({
    given: onHand(line, context),
    what: 'Which use of these lasts it is, as in Batches: orders take them in turn, the soonest due first',
  }),
  'Pairs number': (line, context) => ({
    given: [...pairs(line, context), ...onHand(line, context)],
    what: 'Pairs of this order that are on these lasts together',
  }),
  'Lasts taken pairs': (line, context) => ({
    given: onHand(line, context),
    what: 'Pairs of lasts that it has on this day: from its first step on the last until it is pulled',
  }),
  Steps: ({ steps }) => ({
    what: `Numbers on the ticket of what is done; in part is what goes on on a later day: ${stepsInWords(steps) || 'none'}`,
  }),
  'Work min': ({ lot, minutesInAll }, context) => ({
    given: minutesADay(context),
    steps: [
      step('n', 'Pairs', undefined, lot.pairs),
      step(
        'T',
        'Minutes of a pair: its ticket’s, without cutting out where Cut is filled in, and what is counted by the pair',
        undefined,
        minutesInAll / lot.pairs,
      ),
      step('W', 'Minutes of all of them, on all days', 'n · T', minutesInAll),
    ],
    what: 'Of these, on this day: as long as it is the soonest due that can be gone on with, and the bench is open',
    source: LIST_SCHEDULING,
  }),
  'At work': () => ({ what: 'Kinds of work of these steps' }),
  'Then waits for': ({ waits }) => ({
    what: waits
      ? `What keeps it from being gone on with when the bench closes: ${WAIT_WORDS[waits.what]}`
      : 'All of its steps are done',
    source: 'derived from the steps of its ticket, their waits, the press and the lasts',
  }),
  'Until day': ({ waits }) => ({
    steps: waits ? [told('It waits for', WAIT_WORDS[waits.what])] : [],
    what: 'Day of work on which that is over',
    source: 'derived: films dry by the clock, what lies eight hours or longer lies through the night',
  }),
  'Late days': ({ lot, date }) => ({
    steps: [
      step('z', 'Day on which it is made', undefined, date ?? 0),
      step('u', 'Day due', undefined, lot.row.due ?? 0),
    ],
    symbol: 'L',
    what: 'Days by which it is late',
    formula: 'z − u',
  }),
};
