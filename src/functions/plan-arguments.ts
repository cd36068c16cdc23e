import { Problem } from '../core/problem';
import type { Cells } from '../tables/cell';
import { type PlanCells, type PlanReading, readPlan } from '../tables/plan-input';

/** The arguments that all plan functions take, in this order. */
export type PlanArguments = readonly [
  pairage: Cells,
  styles: Cells,
  lasts: Cells,
  stock: Cells,
  rates: Cells,
  outlines: Cells | null | undefined,
  layouts: Cells | null | undefined,
  offcuts?: Cells | null | undefined,
];

/** Reads the plan's tables, sound or not. */
export function reading([
  pairage,
  styles,
  lasts,
  stock,
  rates,
  outlines,
  layouts,
  offcuts,
]: PlanArguments): PlanReading {
  const cells: PlanCells = {
    pairage,
    styles,
    lasts,
    stock,
    rates,
    outlines: outlines ?? undefined,
    layouts: layouts ?? undefined,
    offcuts: offcuts ?? undefined,
  };
  return readPlan(cells);
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
  const { plan, problems, money } = reading(args);
  const { orders, notOrdered } = plan.possible;
  const all = problems.length > 0 ? problems : notOrdered.map(({ why }) => why);
  if (orders.length === 0 && all.length > 0) throw told(all);
  return { plan, money };
}

function told([first, ...others]: readonly Problem[]): Problem {
  const { code, place, reason, there } = first as Problem;
  return new Problem(code, place, others.length === 0 ? reason : `${reason}; ${others.length} more in Checks`, there);
}
