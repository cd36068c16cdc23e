import { readFileSync } from 'node:fs';
import type { Plan } from '../../src/core/plan/plan';
import type { SizeRun, StyleRun } from '../../src/core/plan/runs';
import { readPlan } from '../../src/tables/plan-input';
import { demoPlanCells } from '../demo-cells';

/** The plan of the demo, with the sign of its money. */
export function demoPlan(): { readonly plan: Plan; readonly money: string } {
  const { plan, problems, money } = readPlan(demoPlanCells());
  if (problems[0]) throw problems[0];
  return { plan, money };
}

/** One style of the plan in one size. */
export function built(plan: Plan, style: string, size: number): { readonly run: StyleRun; readonly sizeRun: SizeRun } {
  const run = plan.runs.styles.find((one) => one.style.code === style);
  const sizeRun = run?.sizes.find((one) => one.size === size);
  if (!run || !sizeRun) throw new Error(`The demo has no ${style} in ${size}.`);
  return { run, sizeRun };
}

/** The rules of the drawings. */
export const css = readFileSync('src/drawing/drawing.css', 'utf8');
