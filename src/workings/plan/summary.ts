import type { RunSummary } from '../../core/plan/summary';
import { told } from '../working';
import type { ColumnWorkings } from './context';

/** What a sum of the run is made up of: each style's or each stock's own figure. */
export const summaryColumns: ColumnWorkings<RunSummary> = {
  Pairs: (_line, { plan }) => ({
    steps: plan.possible.costs.map(({ run }) => told(`Pairs of ${run.style.code}`, run.pairs)),
    what: 'Pairs that can be planned, as in Pairage',
  }),
  'To buy ¤': (_line, { plan }) => ({
    steps: plan.possible.orders.map(({ cutting, toPay }) => told(`To pay for ${cutting.stock.code}`, toPay ?? 0)),
    what: 'Sum of Order: sheets to buy, at their prices',
  }),
  'Cost ¤': (_line, { plan }) => ({
    steps: plan.possible.costs.map(({ run, whole }) => told(`All pairs of ${run.style.code}`, whole)),
    what: 'Sum of Cost: all pairs of all styles',
  }),
  'Bench h': (_line, { plan }) => ({
    steps: plan.possible.costs.map(({ run, hours }) => told(`Hours for ${run.style.code}`, hours, 'h')),
    what: 'Work, the run, of all styles, as in Cost: minutes of a pair × pairs; of pairs that are cut without cutting them out',
  }),
  'Next due': (_line, { plan }) => ({
    given: plan.input.pairage.flatMap((row) => (row.due === undefined ? [] : [cellOf(row.row, row.style, row.due)])),
    what: 'The first day on which pairs are due, as in Pairage',
  }),
  'To put right': () => ({ what: 'Rows of Checks that are to be put right' }),
  'Next step': () => ({ what: 'What is to be put right first; else what to order; else to cut; else to make' }),
};

const cellOf = (row: number, style: string, due: number) => ({
  meaning: `Due, ${style}`,
  value: due,
  from: { argument: 'pairage', row, column: 'Due' },
});
