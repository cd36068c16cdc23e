import type { Cells } from './cell';
import { INPUT_TABLES } from './input-tables';
import type { PlanCells } from './plan-input';

/** The tables that a plan is made from, by their names in a workbook; one that is not there is empty. */
export function planCells(tables: ReadonlyMap<string, Cells>): PlanCells {
  return Object.fromEntries(
    Object.entries(INPUT_TABLES).map(([argument, { name }]) => [argument, tables.get(name) ?? []]),
  ) as Record<keyof typeof INPUT_TABLES, Cells>;
}
