import { INPUT_TABLES } from '../tables/input-tables';
import { demo } from './demo';
import type { WorkbookPlan } from './workbook';

/** Cells of a workbook's input tables by the table's name, headings first, as a host hands them over. */
export function tableCells(plan: WorkbookPlan = demo): Readonly<Record<string, unknown[][]>> {
  const tables: Record<string, unknown[][]> = {};
  for (const { cells, tables: plans } of plan.sheets) {
    for (const { name, area } of plans) {
      const block = Array.from({ length: area.rows }, () => new Array<unknown>(area.columns).fill(''));
      for (const { row, column, value } of cells) {
        const line = block[row - area.row];
        if (line && column >= area.column && column < area.column + area.columns && value !== undefined) {
          line[column - area.column] = value;
        }
      }
      tables[name] = block;
    }
  }
  return tables;
}

/** The demo's tables as the plan functions take them: pairage, styles, lasts, stock, rates, outlines, layouts, offcuts, offers. */
export function planArguments(plan: WorkbookPlan = demo): unknown[][][] {
  const tables = tableCells(plan);
  return Object.values(INPUT_TABLES).map(({ name }) => tables[name] ?? [['']]);
}
