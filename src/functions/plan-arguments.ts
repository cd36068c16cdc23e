import type { BenchDays } from '../core/plan/bench-days/bench-days';
import { Problem } from '../core/problem';
import { finished, type Stepwise } from '../core/stepwise';
import type { Cells } from '../tables/cell';
import { INPUT_TABLES } from '../tables/input-tables';
import { type PlanCells, type PlanReading, readPlan } from '../tables/plan-input';

/** What all plan functions take: the tables in the order of `INPUT_TABLES`; what follows them is passed over. */
export type PlanArguments = readonly (Cells | null | undefined)[];

/** Reads the plan's tables, sound or not. */
export function reading(tables: PlanArguments): PlanReading {
  const names = Object.keys(INPUT_TABLES);
  const cells = Object.fromEntries(names.map((name, at) => [name, tables[at] ?? []]));
  return readPlan(cells as Record<keyof PlanCells, Cells>);
}

/**
 * The plan of sound tables.
 * @throws Problem the first of all slips, with the number of the others.
 */
export function soundPlan(args: PlanArguments): Pick<PlanReading, 'plan' | 'money'> {
  const { plan, problems, money } = reading(args);
  if (problems.length > 0) throw told(problems);
  return { plan, money };
}

/**
 * The plan of what can be planned, whatever slips there are.
 * @throws Problem where that is nothing: the first of all slips, with the number of the others.
 */
export function possiblePlan(args: PlanArguments): Pick<PlanReading, 'plan' | 'money'> {
  return finished(possiblePlanStepwise(args));
}

/** The same, step by step. */
export function* possiblePlanStepwise(args: PlanArguments): Stepwise<Pick<PlanReading, 'plan' | 'money'>> {
  const { plan, problems, money } = reading(args);
  yield* plan.upTo('cost');
  const { orders, notOrdered } = plan.possible;
  const all = problems.length > 0 ? problems : notOrdered.map(({ why }) => why);
  if (orders.length === 0 && all.length > 0) throw told(all);
  return { plan, money };
}

/**
 * The days at the bench of what can be made, step by step.
 * @throws Problem where that is nothing: the first of all slips, with the number of the others.
 */
export function* benchDaysStepwise(args: PlanArguments): Stepwise<BenchDays> {
  const { plan, problems } = reading(args);
  const days = yield* plan.benchDays();
  const all = problems.length > 0 ? problems : days.leftOut.map(({ why }) => why);
  if (days.lines.length === 0 && all.length > 0) throw told(all);
  return days;
}

function told([first, ...others]: readonly Problem[]): Problem {
  const { code, place, reason, there } = first as Problem;
  return new Problem(code, place, others.length === 0 ? reason : `${reason}; ${others.length} more in Checks`, there);
}
