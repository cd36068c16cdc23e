import { Problem } from '../core/problem';
import type { Plan } from '../core/plan/plan';
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
export function soundPlan(args: PlanArguments): { readonly plan: Plan; readonly money: string } {
  const { plan, problems, money } = reading(args);
  const [first, ...others] = problems;
  if (first) {
    const more = others.length === 0 ? '' : `; ${others.length} more in Checks`;
    throw new Problem(first.code, first.place, `${first.reason}${more}`);
  }
  return { plan, money };
}
