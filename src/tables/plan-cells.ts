import type { Cells } from './cell';
import { cellsContent } from './cells-content';
import { INPUT_TABLES } from './input-tables';
import type { PlanCells } from './plan-input';

/** The tables that a plan is made from, by their names in a workbook; one that is not there is empty. */
export function planCells(tables: ReadonlyMap<string, Cells>): PlanCells {
  return Object.fromEntries(
    Object.entries(INPUT_TABLES).map(([argument, { name }]) => [argument, tables.get(name) ?? []]),
  ) as Record<keyof typeof INPUT_TABLES, Cells>;
}

/** Whether two workbooks' input tables say the same. */
export function sameInputs(a: ReadonlyMap<string, Cells>, b: ReadonlyMap<string, Cells>): boolean {
  const content = (tables: ReadonlyMap<string, Cells>, name: string) => cellsContent(tables.get(name) ?? []);
  return Object.values(INPUT_TABLES).every(({ name }) => content(a, name) === content(b, name));
}
