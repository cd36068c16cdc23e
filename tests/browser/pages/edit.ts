import type { WorkbookPlan } from '../../../src/workbook/workbook';

/** One input cell of a workbook and what it is to hold instead. Rows and columns count from 0. */
export interface Edit {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly value: string | number;
}

/** A workbook in which one cell holds something else. */
export function withEdit(plan: WorkbookPlan, { sheet, row, column, value }: Edit): WorkbookPlan {
  return {
    ...plan,
    sheets: plan.sheets.map((one) =>
      one.name === sheet
        ? {
            ...one,
            cells: one.cells.map((cell) => (cell.row === row && cell.column === column ? { ...cell, value } : cell)),
          }
        : one,
    ),
  };
}

/**
 * The input cell of a table under a heading, in the row that a code heads.
 * @throws Error where the workbook has no such cell
 */
export function inputCell(plan: WorkbookPlan, table: string, code: string, heading: string): Omit<Edit, 'value'> {
  for (const { name, tables, cells } of plan.sheets) {
    const found = tables.find((one) => one.name === table);
    if (!found) continue;
    const { row: top } = found.area;
    const column = cells.find(({ row, value }) => row === top && String(value).split('\n')[0] === heading)?.column;
    const row = cells.find(({ row, column: at, value }) => at === 0 && row > top && value === code)?.row;
    if (column !== undefined && row !== undefined) return { sheet: name, row, column };
  }
  throw new Error(`The workbook has no cell under ${heading} for ${code} in ${table}.`);
}
