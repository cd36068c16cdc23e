import { inTaskOfItsOwn } from '../functions/task';
import type { Host } from '../host/host';
import { INPUT_TABLES } from '../tables/input-tables';
import { type PlanCells, readPlan } from '../tables/plan-input';

/** Longer than this without a pause, and the page would stand still to the eye, ms. */
const SLICE = 30;

/**
 * Plans a workbook's run before its cells are worked out, between whatever else the page has to do: the functions then find
 * it planned, and the page is not kept from anything by the first of them.
 */
export async function planAhead(host: Pick<Host, 'tables'>): Promise<void> {
  const tables = await host.tables();
  const all = Object.entries(INPUT_TABLES).map(([argument, { name }]) => [argument, tables.get(name) ?? []]);
  const cells = Object.fromEntries(all) as Required<PlanCells>;
  if (cells.pairage.length === 0) return;
  let paused = performance.now();
  for (const _ of readPlan(cells).plan.upTo('checks')) {
    if (performance.now() - paused < SLICE) continue;
    await new Promise<void>((resolve) => inTaskOfItsOwn?.(resolve));
    paused = performance.now();
  }
}
