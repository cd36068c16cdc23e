import { demo } from '../../src/workbook/demo';
import type { WorkbookPlan } from '../../src/workbook/workbook';

/** A cell as the office suite hands it over: blank cells of a range are empty text. */
export type SuiteCell = string | number | boolean;

/** Cells of a plan's input tables with their headings, by the table's name; spare rows are blank. */
export function cellsOf(plan: WorkbookPlan): ReadonlyMap<string, SuiteCell[][]> {
  return new Map(
    plan.sheets.flatMap((sheet) =>
      sheet.tables.map(({ name, area }) => {
        const rows = Array.from({ length: area.rows }, () => new Array<SuiteCell>(area.columns).fill(''));
        for (const { row, column, value } of sheet.cells) {
          const line = rows[row - area.row];
          if (value !== undefined && line && column >= area.column && column < area.column + area.columns) {
            line[column - area.column] = value;
          }
        }
        return [name, rows];
      }),
    ),
  );
}

const cells = cellsOf(demo);

/** A table of the demo. */
export function demoCells(name: string): SuiteCell[][] {
  const found = cells.get(name);
  if (!found) throw new Error(`The demo has no table ${name}.`);
  return found;
}
