import { Problem } from '../core/problem';
import { INPUT_TABLES } from '../tables/input-tables';
import { type Columns, partsBlankFromNought, type Table } from '../tables/schema';
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

/** Tables in which a blank cell says something else than 0. */
const apart: ReadonlySet<string> = new Set(
  Object.values<Table<Columns>>(INPUT_TABLES)
    .filter(partsBlankFromNought)
    .map(({ name }) => name),
);

/**
 * A table's reference as formulas of the office suite have it: some of its versions hand the blank cells of a range over as 0
 * (office-js 5262, 1951), so where 0 is an answer of its own they are made text of no length.
 */
export function blanksApart(table: string, reference: string): string {
  return apart.has(table) ? `IF(${reference}="","",${reference})` : reference;
}
