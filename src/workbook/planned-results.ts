import { blank } from './blank';
import type { ResultPlan } from './workbook';

/** A table that a plan function spills. */
export interface PlannedResult extends ResultPlan {
  /** Such as Order. */
  readonly name: string;
}

/** Columns of each table that a plan function spills, by the function's name without its namespace. */
const results: ReadonlyMap<string, PlannedResult> = new Map(
  blank.sheets.flatMap(({ cells, results: all }) =>
    all.flatMap((result) => {
      const anchor = cells.find(({ row, column }) => row === result.area.row && column === result.area.column);
      const name = planFunction(anchor?.formula);
      return name === undefined
        ? []
        : [[name, { ...result, name: `${name.charAt(0)}${name.slice(1).toLowerCase()}` }] as const];
    }),
  ),
);

/** The table that a formula spills, where it is a call of a plan function. */
export function plannedResult(formula: string | undefined): PlannedResult | undefined {
  return results.get(planFunction(formula) ?? '');
}

/** The name of the function that a whole formula is a call of. */
function planFunction(formula: string | undefined): string | undefined {
  const name = /^=\s*SOLEBENCH\.([A-Z][A-Z0-9]*)\(/i.exec(formula ?? '')?.[1]?.toUpperCase();
  return formula?.trimEnd().endsWith(')') ? name : undefined;
}
