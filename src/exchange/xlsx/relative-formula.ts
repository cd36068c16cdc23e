import { tokenize } from '@borgar/fx';
import { columnLetters } from '../../tables/cell-address';
import { MOST } from './book';

/** How far a row or a column is from the cell that refers to it. */
interface Offset {
  readonly of: 'rows' | 'columns';
  readonly by: number;
}

/** A formula in a form that does not depend on the cell it stands in. */
export type RelativeFormula = readonly (string | Offset)[];

/** A side of a reference: a cell, or a whole column or row. */
const SIDE = /^(\$?)([A-Z]{1,3})?(\$?)(\d{1,7})?$/i;

/** A cell's formula in the form that other cells may share. */
export function relativeFormula(formula: string, row: number, column: number): RelativeFormula {
  return tokenize(formula, { mergeRefs: true }).flatMap(({ type, value }) => {
    if (type !== 'range' && type !== 'range_beam' && type !== 'range_ternary') return [value];
    const cells = value.lastIndexOf('!') + 1;
    const sides = value.slice(cells).split(':');
    return [value.slice(0, cells), ...sides.flatMap((side, at) => [at > 0 ? ':' : '', ...steps(side, row, column)])];
  });
}

function steps(side: string, row: number, column: number): RelativeFormula {
  const [, fixedColumn, letters, fixedRow, digits] = SIDE.exec(side) ?? [];
  if (letters === undefined && digits === undefined) return [side];
  // Of a whole row, the first sign is the row's.
  const rowFixed = fixedRow || (letters === undefined && fixedColumn);
  const across =
    letters && (fixedColumn ? `$${letters}` : { of: 'columns' as const, by: columnNumber(letters) - column });
  const down = digits && (rowFixed ? `$${digits}` : { of: 'rows' as const, by: Number(digits) - 1 - row });
  return [across || '', down || ''];
}

function columnNumber(letters: string): number {
  return [...letters.toUpperCase()].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}

/** A shared formula as it stands in a cell; beyond the sheet's edge it goes on at the other. */
export function formulaAt(relative: RelativeFormula, row: number, column: number): string {
  let formula = '';
  for (const part of relative) {
    if (typeof part === 'string') formula += part;
    else if (part.of === 'rows') formula += wrapped(row + part.by, MOST.rows) + 1;
    else formula += columnLetters(wrapped(column + part.by, MOST.columns));
  }
  return formula;
}

function wrapped(at: number, count: number): number {
  return ((at % count) + count) % count;
}
