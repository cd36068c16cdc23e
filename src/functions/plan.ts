import { fillUp as fillUpStepwise } from '../core/plan/fill-up';
import { furtherLines, furtherPairsTable } from '../tables/results/further-pairs';
import { isBlank, readNumber, readText } from '../tables/cell';
import { writeTable } from '../tables/result';
import { batchesTable } from '../tables/results/batches';
import { benchDaysTable } from '../tables/results/bench-days';
import { checksTable } from '../tables/results/checks';
import { costTable } from '../tables/results/cost';
import { cuttingTable } from '../tables/results/cutting';
import { orderTable } from '../tables/results/order';
import { piecesTable } from '../tables/results/pieces';
import { summaryTable } from '../tables/results/summary';
import { ticketTable } from '../tables/results/ticket';
import { sizeWriter } from '../tables/sizes-in-words';
import { answerStepwise } from './answer-stepwise';
import { benchDaysStepwise, possiblePlanStepwise, reading, soundPlan } from './plan-arguments';

// `tables` are those of src/tables/input-tables.ts: the build puts them, each by its name, into functions.json in its place.

/**
 * The run in one line: pairs, what to buy, what it costs, bench hours, the next day due, and what to do next.
 * @customfunction SUMMARY
 * @returns {any[][]} A table of one row: pairs, money to buy and cost, hours, day, how much is to be put right, next step.
 */
export function summary(...tables: any[][][]) {
  return answerStepwise(tables, function* (where) {
    const { plan, problems, money } = reading(tables);
    yield* plan.upTo('checks');
    const run = plan.summary(problems);
    return writeTable(summaryTable(run), [run], money, [], where);
  });
}

/**
 * Every piece to cut, by style and size: outline, thickness, what it is rasped to, skive, number.
 * @customfunction PIECES
 * @returns {any[][]} A table: style, size, number, piece, stock, measures in mm, skive, pieces to cut.
 */
export function pieces(...tables: any[][][]) {
  return answerStepwise(tables, function* () {
    const { plan, money } = soundPlan(tables);
    yield* plan.upTo('bottoms');
    return writeTable(piecesTable(sizeWriter(plan.runs.styles)), plan.pieces, money);
  });
}

/**
 * How the pieces of all sizes lie on shared sheets, by stock.
 * @customfunction CUTTING
 * @returns {any[][]} A table: sheets, least possible number, area use, what is lost between the pieces and outside of them.
 */
export function cutting(...tables: any[][][]) {
  return answerStepwise(tables, function* () {
    const { plan, money } = soundPlan(tables);
    yield* plan.upTo('cutting');
    return writeTable(cuttingTable, plan.cutting.stocks, money);
  });
}

/**
 * Which further pairs of the run's styles and sizes come out of the sheets that it takes anyway, and what each costs beyond the stock: each by itself, proven by laying the run anew with it.
 * @customfunction FILLUP
 * @returns {any[][]} A table: a row a style and size, those with most pairs in the run first, with adhesive, sundries, work and spoilage.
 */
export function fillUp(...tables: any[][][]) {
  return answerStepwise(tables, function* () {
    const { plan, money } = soundPlan(tables);
    const lines = furtherLines(yield* fillUpStepwise(plan));
    return writeTable(furtherPairsTable(sizeWriter(plan.runs.styles)), lines, money);
  });
}

/**
 * Sheets needed, on hand and to buy, of which offer, with what they cost.
 * @customfunction ORDER
 * @returns {any[][]} A table: a row a stock and offer, and the sum.
 */
export function order(...tables: any[][][]) {
  return answerStepwise(tables, function* (where) {
    const { plan, money } = yield* possiblePlanStepwise(tables);
    return writeTable(orderTable, plan.possible.orders, money, plan.possible.notOrdered, where);
  });
}

/**
 * What a pair and the run cost, by style: stock, adhesive, sundries, work, spoilage; with minutes and weight.
 * @customfunction COST
 * @returns {any[][]} A table: a row a style, and the sum.
 */
export function cost(...tables: any[][][]) {
  return answerStepwise(tables, function* (where) {
    const { plan, money } = yield* possiblePlanStepwise(tables);
    return writeTable(costTable, plan.possible.costs, money, plan.possible.notCosted, where);
  });
}

/**
 * What to put right, what to look at and what holds: slips in the tables, heights, bends, sheets, lasts, prices.
 * @customfunction CHECKS
 * @returns {any[][]} A table: a row a check, what is to be put right first.
 */
export function checks(...tables: any[][][]) {
  return answerStepwise(tables, function* (where) {
    const { plan, problems } = reading(tables);
    yield* plan.upTo('checks');
    return writeTable(checksTable, plan.checksBeside(problems), '', [], where);
  });
}

/**
 * How often the lasts of each size are used, and when each order is done: by lasts, bench hours and nights that steps ask for.
 * @customfunction BATCHES
 * @returns {any[][]} A table: a row a last and size.
 */
export function batches(...tables: any[][][]) {
  return answerStepwise(tables, function* () {
    const { plan } = soundPlan(tables);
    yield* plan.upTo('batches');
    return writeTable(batchesTable, plan.batches);
  });
}

/**
 * What is worked at on which day: the earliest due first, as lasts, press, films that dry and nights let it, with what is late.
 * @customfunction BENCHDAYS
 * @returns {any[][]} A table: a row for each day and what is made together, with lasts taken, steps, minutes, and what it then waits for.
 */
export function benchdays(...tables: any[][][]) {
  return answerStepwise(tables, function* (where) {
    const { lines, leftOut } = yield* benchDaysStepwise(tables);
    return writeTable(benchDaysTable, lines, '', leftOut, where);
  });
}

/**
 * The bench's ticket of a style: every step in the order of the bench, with heights, times, minutes and what to look for.
 * @customfunction TICKET
 * @cancelable
 * @param {any} style Code of the style.
 * @param {any[][]} [outlines]
 * @param {any[][]} [layouts]
 * @param {any} [size] One size of the run; without it, all.
 * @param {any[][]} [offcuts]
 * @param {any[][]} [offers]
 * @param {CustomFunctions.CancelableInvocation} invocation Tells where the tables stand, and when the answer is no longer wanted.
 * @returns {any[][]} A table: a row for each step, with its pieces, measures in mm, skive, heights after it, coats, minutes, what to do, look for and mind.
 */
export function ticket(
  style: any,
  pairage: any[][],
  styles: any[][],
  lasts: any[][],
  stock: any[][],
  rates: any[][],
  outlines: any[][],
  layouts: any[][],
  size: any,
  offcuts: any[][],
  offers: any[][],
  invocation: CustomFunctions.CancelableInvocation,
) {
  const tables = [pairage, styles, lasts, stock, rates, outlines, layouts, offcuts, offers];
  return answerStepwise(
    [...tables, invocation],
    function* () {
      const code = readText(style, { argument: 'style' });
      // Some hosts hand a blank cell over as 0, which is no size of a run.
      const one =
        isBlank(size) || size === 0 ? undefined : readNumber(size, { least: -5, most: 450 }, { argument: 'size' });
      const { plan } = soundPlan(tables);
      yield* plan.upTo('bottoms');
      return writeTable(ticketTable(sizeWriter(plan.runs.styles), plan.workApart(code)), plan.ticket(code, one));
    },
    // Beside the tables stand the style, before them, and the size, after Layouts.
    (told) => [...told.slice(1, 8), ...told.slice(9)],
  );
}
