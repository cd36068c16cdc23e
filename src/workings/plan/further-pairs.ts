import { ratesOf } from '../../core/plan/cost/rates';
import type { FurtherPair } from '../../core/plan/fill-up';
import type { FurtherLine } from '../../tables/results/further-pairs';
import { below } from '../heights';
import { step } from '../working';
import { adhesivePrice } from './adhesive-price';
import { cell, type ColumnWorking, type ColumnWorkings, type Context, pairsOf, rate } from './context';

type Of = (pair: FurtherPair, context: Context) => ColumnWorking;

/** A line that only says something is worked out from nothing. */
const ofPair =
  (of: Of): ColumnWorkings<FurtherLine>[string] =>
  ({ pair }, context) =>
    pair ? of(pair, context) : { what: 'What was found' };

const row = ({ run }: FurtherPair, { plan }: Context, unit: 'money an hour' | 'share spoiled') =>
  ratesOf(plan.input.rates).row(unit, [run.style.code]);

export const furtherPairColumns: ColumnWorkings<FurtherLine> = {
  Style: ofPair(({ run }, context) => ({
    given: [cell(context, 'styles', run.style.row, 'code')],
    what: 'A pair more of it takes no sheet more of any stock: all of its pieces were laid with those of the run',
    source: 'derived: the plan with this pair, laid anew in quick rows, buys the same',
  })),
  Size: ofPair(({ run, sizeRun }, context) => ({
    given: pairsOf(context, run.style.code, sizeRun.size),
    what: 'The size, as in Pairage',
  })),
  'In the run pairs': ofPair(({ run, sizeRun }, context) => ({
    given: pairsOf(context, run.style.code, sizeRun.size),
    what: 'Its pairs in the run',
  })),
  'Adhesive, paste ¤ a pair': ofPair(({ run, cost: { adhesive = 0, paste = 0 } }, { plan }) =>
    adhesivePrice(ratesOf(plan.input.rates), run.style.code, adhesive, paste),
  ),
  'Sundries ¤ a pair': ofPair(({ run }, { plan }) => {
    const items = ratesOf(plan.input.rates).items('money a pair', [run.style.code]);
    const symbols = items.map((_, i) => `u${below(i + 1)}`);
    return {
      given: items.flatMap((item, i) => rate(item, symbols[i])),
      symbol: 'U',
      what: 'What is counted by the pair, added up',
      formula: items.length > 0 ? symbols.join(' + ') : undefined,
    };
  }),
  'Work min a pair': ofPair(() => ({ symbol: 'T', what: 'Minutes of the steps of its ticket in this size' })),
  'Work ¤ a pair': ofPair((pair, context) => {
    const wage = row(pair, context, 'money an hour');
    return {
      given: rate(wage, 'r'),
      steps: [step('T', 'Minutes of a pair in this size', undefined, pair.cost.minutes, 'min')],
      symbol: 'w',
      what: wage ? 'What they cost' : 'No rate of work is given',
      formula: wage && 'T / 60 · r',
    };
  }),
  'Spoilage ¤ a pair': ofPair((pair, context) => {
    const spoiled = row(pair, context, 'share spoiled');
    return {
      given: rate(spoiled, 'f'),
      steps: [step('g', 'Adhesive of a pair', undefined, pair.cost.adhesiveCost)],
      symbol: 'q',
      what: spoiled ? 'Spoiled, of adhesive' : 'No share spoiled is given',
      formula: spoiled && 'g · f',
    };
  }),
  'Beyond stock ¤ a pair': ofPair(({ cost: { adhesiveCost, sundries, work, spoilage } }) => ({
    steps: [
      step('g', 'Adhesive', undefined, adhesiveCost),
      step('U', 'Sundries', undefined, sundries),
      step('w', 'Work', undefined, work),
      step('q', 'Spoilage', undefined, spoilage),
    ],
    symbol: 'C',
    what: 'Cost of the pair beyond its stock',
    formula: 'g + U + w + q',
  })),
};
