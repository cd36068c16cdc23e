import type { InParts, PaperJob } from '../../../src/drawing/paper/chosen';
import { PAPERS } from '../../../src/drawing/paper/page';
import type { Cells } from '../../../src/tables/cell';
import { type PlanCells, readPlan } from '../../../src/tables/plan-input';
import { demoPlanCells } from '../../demo-cells';
import { demoPlan } from '../demo-plan';

const { plan } = demoPlan();

/** A job for the demo's plan on A4. */
export function demoJob(more: Partial<PaperJob> = {}): PaperJob {
  return { plan, run: 'Midsummer run', date: '14 Jun 2026', paper: PAPERS.A4, ...more };
}

/** The demo with other names in its cells. */
export function renamedJob(names: Readonly<Record<string, string>>, more: Partial<PaperJob> = {}): PaperJob {
  const named = (cells: Cells | undefined): Cells =>
    (cells ?? []).map((line) => line.map((cell) => (typeof cell === 'string' ? (names[cell] ?? cell) : cell)));
  const { pairage, styles, lasts, stock, rates, outlines } = demoPlanCells();
  const renamed: PlanCells = {
    pairage: named(pairage),
    styles: named(styles),
    lasts: named(lasts),
    stock: named(stock),
    rates: named(rates),
    outlines: named(outlines),
  };
  const reading = readPlan(renamed);
  if (reading.problems[0]) throw reading.problems[0];
  return demoJob({ plan: reading.plan, ...more });
}

/** Does all parts of some work. */
export function whole<T>(parts: InParts<T>): T {
  for (;;) {
    const { done, value } = parts.next();
    if (done) return value;
  }
}
