import { derived } from '../core/derived';
import { type FillUp, fillUp } from '../core/plan/fill-up';
import type { Plan } from '../core/plan/plan';
import type { Problem } from '../core/problem';
import { finished } from '../core/stepwise';
import { possiblePlan, reading } from '../functions/plan-arguments';
import { isBlank, readNumber, readText } from '../tables/cell';
import { batchesTable } from '../tables/results/batches';
import { benchDaysTable } from '../tables/results/bench-days';
import { checksTable } from '../tables/results/checks';
import { costTable } from '../tables/results/cost';
import { cuttingTable } from '../tables/results/cutting';
import { furtherLines, furtherPairsTable } from '../tables/results/further-pairs';
import { orderTable } from '../tables/results/order';
import { piecesTable } from '../tables/results/pieces';
import { summaryTable } from '../tables/results/summary';
import { ticketTable } from '../tables/results/ticket';
import { sizeWriter } from '../tables/sizes-in-words';
import type { WorkingOf } from './arguments';
import { checkColumns } from './plan/checks';
import { cellWorking, contextOf } from './plan/context';
import { costColumns } from './plan/cost';
import { cuttingColumns } from './plan/cutting';
import { orderColumns } from './plan/order';
import { furtherPairColumns } from './plan/further-pairs';
import { summaryColumns } from './plan/summary';
import { batchColumns } from './plan/batches';
import { benchDayColumns } from './plan/bench-days';
import { pieceColumns, ticketColumns } from './plan/ticket';

const filledBefore = derived<Plan, FillUp>('what fills a plan’s sheets');

/** Found once: each cell of its table asks for it. */
function filledUp(plan: Plan): FillUp {
  return filledBefore(plan, [], () => finished(fillUp(plan)));
}

/** The functions that plan: each cell of their tables, with the inputs that its figure comes from. */
export const plan: Readonly<Record<string, WorkingOf>> = {
  SUMMARY: (args, at) => {
    let slips: readonly Problem[] = [];
    const context = contextOf(args, (given) => {
      const read = reading(given);
      slips = read.problems;
      return read;
    });
    return cellWorking(summaryTable(), [context.plan.summary(slips)], summaryColumns, context, at);
  },
  PIECES: (args, at) => {
    const context = contextOf(args);
    const table = piecesTable(sizeWriter(context.plan.runs.styles));
    return cellWorking(table, context.plan.pieces, pieceColumns, context, at);
  },
  CUTTING: (args, at) => {
    const context = contextOf(args);
    return cellWorking(cuttingTable, context.plan.cutting.stocks, cuttingColumns, context, at);
  },
  FILLUP: (args, at) => {
    const context = contextOf(args);
    const table = furtherPairsTable(sizeWriter(context.plan.runs.styles));
    return cellWorking(table, furtherLines(filledUp(context.plan)), furtherPairColumns, context, at);
  },
  ORDER: (args, at) => {
    const context = contextOf(args, possiblePlan);
    const { orders, notOrdered } = context.plan.possible;
    return cellWorking(orderTable, orders, orderColumns, context, at, notOrdered);
  },
  COST: (args, at) => {
    const context = contextOf(args, possiblePlan);
    const { costs, notCosted } = context.plan.possible;
    return cellWorking(costTable, costs, costColumns, context, at, notCosted);
  },
  CHECKS: (args, at) => {
    const context = contextOf(args);
    return cellWorking(checksTable, context.plan.checks, checkColumns, context, at);
  },
  BATCHES: (args, at) => {
    const context = contextOf(args);
    return cellWorking(batchesTable, context.plan.batches, batchColumns, context, at);
  },
  BENCHDAYS: (args, at) => {
    const context = contextOf(args, reading);
    const { lines, leftOut } = finished(context.plan.benchDays());
    return cellWorking(benchDaysTable, lines, benchDayColumns, context, at, leftOut);
  },
  TICKET: ([style, ...rest], at) => {
    const context = contextOf([...rest.slice(0, 7), ...rest.slice(8)]);
    const size = rest[7];
    const one =
      isBlank(size) || size === 0 ? undefined : readNumber(size, { least: -5, most: 450 }, { argument: 'size' });
    const steps = context.plan.ticket(readText(style, { argument: 'style' }), one);
    return cellWorking(ticketTable(sizeWriter(context.plan.runs.styles)), steps, ticketColumns, context, at);
  },
};
