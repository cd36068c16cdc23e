import { readPlan } from '../../src/tables/plan-input';
import { forgetPlans } from '../core/forget';
import { type Workshop, workshop } from './plan-workshop';
import { onceAround } from './reference-loop';

/**
 * What the benchmark of plans measures, in a process of its own as one script without names that are kept: as a page has it.
 * Its only word is `small` or `largest`; it answers with JSON.
 */

/** What something took, ms: as it is waited for, and of the processor on all threads of this process. */
export interface Took {
  readonly wall: number;
  readonly processor: number;
}

export interface Planned extends Took {
  readonly pieces: number;
  readonly sheets: number;
}

/** One process: reference loops before and after, and what was planned between them. */
export interface PlanTimes {
  readonly loops: readonly Took[];
  readonly cold: Planned;
  readonly repriced?: Planned;
  readonly styles: number;
}

function clocks(): Took {
  const { user, system } = process.cpuUsage();
  return { wall: performance.now(), processor: (user + system) / 1000 };
}

function taken<T>(work: () => T): T & Took {
  const start = clocks();
  const done = work();
  const end = clocks();
  return { ...done, wall: end.wall - start.wall, processor: end.processor - start.processor };
}

/** Plans a workshop to the end, as the functions of a sheet together do. */
function time(cells: Workshop): Planned {
  return taken(() => {
    const { plan, problems } = readPlan(cells);
    if (problems[0]) throw problems[0];
    const pieces = plan.pieces.reduce((sum, { count }) => sum + count, 0);
    const sheets = plan.cutting.stocks.reduce((sum, { layout }) => sum + layout.sheets.length, 0);
    if (plan.orders.length + plan.costs.length + plan.checks.length + plan.batches.length === 0)
      throw new Error('Nothing was planned.');
    return { pieces, sheets };
  });
}

/** The same workshop with another price of one sheet. */
function repriced(cells: Workshop): Workshop {
  return {
    ...cells,
    stock: cells.stock.map((row) =>
      row[0] === 'Foam 10' ? row.map((cell, i) => (i === 5 ? Number(cell) + 1 : cell)) : row,
    ),
  };
}

/** The most styles, in whole twenties, that are planned at once. */
function mostStyles(seed: number): number {
  const { plan } = readPlan(workshop(1000, seed));
  return 20 * Math.floor(plan.runs.styles.length / 20);
}

/** The engine is warmed up on another workshop first. */
function small(): PlanTimes {
  const before = around();
  time(workshop(8, 3));
  const cells = workshop(40, 11);
  const cold = time(cells);
  return { cold, repriced: time(repriced(cells)), loops: [...before, ...around()], styles: 40 };
}

function largest(): PlanTimes {
  const before = around();
  const styles = mostStyles(12);
  forgetPlans();
  time(workshop(8, 3));
  return { cold: time(workshop(styles, 12)), loops: [...before, ...around()], styles };
}

function around(): readonly Took[] {
  return Array.from({ length: 3 }, () => taken(() => ({ loop: onceAround() })));
}

console.log(JSON.stringify(process.argv[2] === 'largest' ? largest() : small()));
