import { readPlan } from '../../src/tables/plan-input';
import { forgetPlans } from '../core/forget';
import type { Findings } from './main';
import { type Workshop, workshop } from './plan-workshop';
import { referenceLoop } from './reference-loop';

/** Time of the processor on all threads of this process, ms: others who use the machine do not count. */
function processorTime(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/** Plans a workshop to the end, as the functions of a sheet together do. @returns ms of the processor, and how much was planned */
function time(cells: Workshop): { readonly ms: number; readonly pieces: number; readonly sheets: number } {
  const start = processorTime();
  const { plan, problems } = readPlan(cells);
  if (problems[0]) throw problems[0];
  const pieces = plan.pieces.reduce((sum, { count }) => sum + count, 0);
  const sheets = plan.cutting.stocks.reduce((sum, { layout }) => sum + layout.sheets.length, 0);
  if (plan.orders.length + plan.costs.length + plan.checks.length + plan.batches.length === 0)
    throw new Error('Nothing was planned.');
  return { ms: processorTime() - start, pieces, sheets };
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

/** What is asked, in reference loops; a loop took 12.5 ms where it was settled: 1 s cold, 10 s for the largest plan. */
const LOOPS = { cold: 80, largest: 800 } as const;

/**
 * 40 styles in 12 sizes: cold; after a price has changed, which may take a fiftieth at most; and the largest workshop that
 * is accepted, which may take a fifth more for its pieces at most. The engine is warmed up on another workshop first.
 */
export function plan(): Findings {
  const loop = referenceLoop(processorTime);
  time(workshop(8, 3));
  const small = workshop(40, 11);
  const cold = time(small);
  const price = time(repriced(small));
  const styles = mostStyles(12);
  forgetPlans();
  const large = time(workshop(styles, 12));
  const line = (what: string, { ms, pieces, sheets }: ReturnType<typeof time>, most?: number) => ({
    what,
    ms: Math.round(ms * 10) / 10,
    'reference loops': Math.round((ms / loop) * 100) / 100,
    pieces,
    sheets,
    ...(most !== undefined && { 'at most': most }),
  });
  const perWork = large.ms / cold.ms / (large.pieces / cold.pieces);
  return {
    lines: [
      { what: 'reference loop', ms: Math.round(loop * 10) / 10, 'reference loops': 1 },
      line('40 styles × 12 sizes, cold', cold, LOOPS.cold),
      line('after a price has changed', price),
      line(`${styles} styles × 12 sizes, the largest accepted, cold`, large, LOOPS.largest),
      { what: 'price change over cold', ratio: Math.round((price.ms / cold.ms) * 1e4) / 1e4, 'at most': 0.02 },
      { what: 'the largest over 40 styles, by their pieces', ratio: Math.round(perWork * 100) / 100, 'at most': 1.2 },
    ],
    holds:
      cold.ms <= LOOPS.cold * loop && large.ms <= LOOPS.largest * loop && price.ms <= cold.ms / 50 && perWork <= 1.2,
  };
}
