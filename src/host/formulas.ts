import { Problem } from '../core/problem';
import type { WorkbookPlan } from '../workbook/workbook';
import { fixedReference } from '../workbook/address';

/** Reference of each input table of a plan, by the table's name. */
export function tableReferences(plan: WorkbookPlan): ReadonlyMap<string, string> {
  return new Map(
    plan.sheets.flatMap((sheet) => sheet.tables.map(({ name, area }) => [name, fixedReference(sheet.name, area)])),
  );
}

/**
 * A plan's formula with the tables that it names in braces replaced by their references.
 * @throws Problem where it names a table that the plan does not have.
 */
export function withReferences(formula: string, references: ReadonlyMap<string, string>): string {
  return formula.replace(/\{([^{}]+)\}/g, (whole, name: string) => {
    const reference = references.get(name);
    if (reference) return reference;
    // An array constant such as {1,2;3,4} stays as it is.
    if (/^[\s\d.,;+\-"]|^(TRUE|FALSE)\b/i.test(name)) return whole;
    throw new Problem('invalid', { argument: 'formula' }, `${formula} names the table "${name}", which the plan lacks`);
  });
}
