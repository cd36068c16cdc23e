import { translateFormulaToA1, translateFormulaToR1C1 } from '@borgar/fx';
import { cellAddress } from '../../workbook/address';

/** A formula in a form that does not depend on the cell it stands in. */
export type RelativeFormula = string & { readonly relative: unique symbol };

/** A cell's formula in the form that other cells may share. */
export function relativeFormula(formula: string, row: number, column: number): RelativeFormula {
  return translateFormulaToR1C1(formula, cellAddress(row, column)) as RelativeFormula;
}

/** A shared formula as it stands in a cell. */
export function formulaAt(relative: RelativeFormula, row: number, column: number): string {
  return translateFormulaToA1(relative, cellAddress(row, column), { wrapEdges: true, mergeRefs: true });
}
